import { homedir } from 'node:os'
import { type Told, tellBrowser } from './devtools.ts'
import { newProfile, removeProfile } from './launch.ts'

/** Longest a browser may take over one print, ms. */
const PATIENCE = 60_000

const printFlags = (profile: string, isRoot: boolean): string[] => [
  '--headless',
  `--user-data-dir=${profile}`,
  '--no-first-run',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // The browser refuses to run for root otherwise.
  ...(isRoot ? ['--no-sandbox'] : []),
]

/** The page is put into an empty one, where nothing runs: it comes from no place, so that it can show nothing of the machine. */
async function print(told: Told, html: string): Promise<Uint8Array> {
  const { targetId } = await told.ask('Target.createTarget', { url: 'about:blank' })
  const { sessionId } = await told.ask('Target.attachToTarget', { targetId, flatten: true })
  const session = String(sessionId)
  await told.ask('Page.enable', {}, session)
  await told.ask('Emulation.setScriptExecutionDisabled', { value: true }, session)
  const { frameTree } = await told.ask('Page.getFrameTree', {}, session)
  const frameId = (frameTree as { frame: { id: string } }).frame.id
  await told.ask('Page.setDocumentContent', { frameId, html }, session)
  await told.ask('Runtime.evaluate', { expression: 'document.fonts.ready.then(() => 0)', awaitPromise: true }, session)
  const { data } = await told.ask('Page.printToPDF', { preferCSSPageSize: true, printBackground: true }, session)
  return new Uint8Array(Buffer.from(String(data), 'base64'))
}

/**
 * A page as a PDF, by an installed browser without a window; the page decides its own size. Rejects with the end of a sentence, to follow a
 * colon, when the browser cannot.
 * @param html the whole page, nothing fetched
 */
export async function printWithBrowser(browser: string, html: string): Promise<Uint8Array> {
  const profile = await newProfile(browser, homedir())
  const told = tellBrowser(browser, printFlags(profile, process.getuid?.() === 0))
  let late: NodeJS.Timeout | undefined
  try {
    return await Promise.race([
      print(told, html),
      new Promise<never>((_, reject) => {
        late = setTimeout(() => reject(new Error(`the browser ${browser} did not print within a minute`)), PATIENCE)
      }),
    ])
  } finally {
    clearTimeout(late)
    told.end()
    await removeProfile(profile)
  }
}
