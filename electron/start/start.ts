import { homedir } from 'node:os'
import { resolve } from 'node:path'
import { browserPlaces, hasDisplay, installedBrowser } from '../browser-host/browsers.ts'
import { run } from '../browser-host/run.ts'
import { printable } from '../cli/printable.ts'
import { appFolder } from '../services/app-folder.ts'
import { electronBinary, fetchElectron, runElectron } from './electron-binary.ts'
import { type Interruption, interruption } from './interruption.ts'
import { budgetOf } from './terminal.ts'

const say = (line: string) => void process.stdout.write(`${line}\n`)
const fault = (error: unknown) => void process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`)

/**
 * Shows the window by the best means there is: Electron, an installed browser, or any browser the person opens at the
 * address printed. STOPGAP_HOST (electron, browser, terminal) takes one of them only; `--serve` prints the address and
 * nothing else. The result is the exit code.
 */
export async function start(args: readonly string[]): Promise<number> {
  const serveOnly = args.includes('--serve')
  const names = args.filter(argument => argument !== '--serve')
  const wrong = wrongWith(names)
  if (wrong !== null) {
    process.stderr.write(`${wrong}\n`)
    return 2
  }
  const app = appFolder(import.meta.url)
  const file = names[0] === undefined ? null : resolve(process.env.INIT_CWD ?? process.cwd(), names[0])
  const only = process.env.STOPGAP_HOST
  const takes = (host: string) => !serveOnly && (only === undefined || only === host)

  const interrupted = interruption()
  if (takes('electron') && (await inElectron(app, file, interrupted))) return 0
  if (interrupted.happened()) return 0
  if (only === 'electron' && !serveOnly) return 1

  const common = { app, file, env: process.env, say, fault, interrupted: interrupted.promise }
  if (takes('browser')) {
    const browser = findBrowser()
    if (browser !== null) {
      const outcome = await run({ ...common, browser })
      if (outcome.shown) return 0
      say(`The browser ${browser} did not show the window: ${outcome.why}.`)
    }
    if (only === 'browser') return 1
  }
  if (!serveOnly) say(printable(await budgetOf(app, file)))
  await run({ ...common, browser: null })
  return 0
}

function wrongWith(args: readonly string[]): string | null {
  const odd = args.find(argument => argument.startsWith('-'))
  if (odd !== undefined) return `${odd} is not known here: give one plan file, or nothing.`
  if (args.length > 1) return `${args.length} files were given (${args.join(', ')}): give one plan file, or nothing.`
  const host = process.env.STOPGAP_HOST
  if (host === undefined || ['electron', 'browser', 'terminal'].includes(host)) return null
  return `STOPGAP_HOST is ${host}; it can be electron, browser or terminal.`
}

/** Whether it was shown; if not, a line has said why. */
async function inElectron(app: string, file: string | null, { promise, happened }: Interruption): Promise<boolean> {
  if (!hasDisplay(process.platform, process.env)) {
    say('There is no display here, so Electron is not started.')
    return false
  }
  if (electronBinary(app) === null) {
    say('Electron’s program is not here yet; fetching it once (up to a minute) …')
    const why = await fetchElectron(app, promise)
    if (happened()) return false
    if (why !== null) {
      say(`Electron could not be fetched: ${why}. The window will be shown without it.`)
      return false
    }
  }
  const program = electronBinary(app)
  if (program === null) {
    say('Electron was fetched, but its program is not where it should be. The window will be shown without it.')
    return false
  }
  const { why } = await runElectron(program, app, file, promise)
  if (why !== null) say(`Electron did not show the window: ${why}. The window will be shown without it.`)
  return why === null
}

function findBrowser(): string | null {
  if (!hasDisplay(process.platform, process.env)) {
    say('There is no display here, so no browser is started.')
    return null
  }
  const browser = installedBrowser(browserPlaces(process.platform, process.env, homedir()))
  if (browser === null) say('No Chrome, Chromium, Edge or Brave was found in the usual places.')
  return browser
}
