import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'

const program = path.join(import.meta.dirname, '../../dist/start.js')
const patience = 15_000

export interface Served {
  /** Lets one browser in, once. */
  address: string
  /** The home of the person at the window, where the file chooser begins. */
  home: string
  /** The application's own folder: its kept copies, recent plans and settings. */
  data: string
  end(): Promise<void>
  /** Ends the program as a power cut would: nothing is written or tidied any more. */
  kill(): Promise<void>
}

/**
 * The built program, serving its window to whoever holds the address.
 * @param file the plan it opens first
 * @param folder where home and data are, to start where another run was left; it stays. Without one, both are new and are removed.
 * @param newcomer the first look around is shown, as it is the first time
 */
export async function serveWindow(file?: string, folder?: string, newcomer = false): Promise<Served> {
  if (!existsSync(program)) throw new Error('dist/start.js is not there. Run npm run build first.')
  const place = folder ?? (await mkdtemp(path.join(tmpdir(), 'stopgap-window-')))
  const [home, data] = [path.join(place, 'home'), path.join(place, 'data')]
  await mkdir(home, { recursive: true })
  if (!newcomer && folder === undefined) await putGuideAway(data)
  const child = spawn(process.execPath, [program, '--serve', ...(file === undefined ? [] : [file])], {
    env: { ...process.env, STOPGAP_DATA: data, HOME: home, USERPROFILE: home },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const ended = new Promise<void>(resolve => child.once('close', () => resolve()))
  const stop = async (signal: NodeJS.Signals) => {
    child.kill(signal)
    await ended
    if (folder === undefined) await rm(place, { recursive: true, force: true })
  }
  const end = () => stop('SIGTERM')
  try {
    return { address: await addressFrom(child), home, data, end, kill: () => stop('SIGKILL') }
  } catch (problem) {
    await end()
    throw problem
  }
}

function addressFrom(child: ReturnType<typeof spawn>): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = ''
    const fail = (what: string) => reject(new Error(`The program ${what}; it said: ${said.trim() || 'nothing'}`))
    const late = setTimeout(() => fail(`gave no address in ${patience / 1000} s`), patience)
    const listen = (chunk: Buffer) => {
      said += chunk.toString()
      const found = /http:\/\/127\.0\.0\.1:\d+\/\S+/.exec(said)
      if (found === null) return
      clearTimeout(late)
      resolve(found[0])
    }
    child.stdout?.on('data', listen)
    child.stderr?.on('data', listen)
    child.once('close', code => {
      clearTimeout(late)
      fail(`ended with code ${code}`)
    })
  })
}

/** Settings as they are once the first look around was put away. */
async function putGuideAway(data: string): Promise<void> {
  await mkdir(data, { recursive: true })
  const window = { width: 1440, height: 900 }
  const settings = { format: 'stopgap-settings', version: 1, theme: 'system', lookedAround: true, window, folder: null }
  await writeFile(path.join(data, 'settings.json'), JSON.stringify(settings))
}
