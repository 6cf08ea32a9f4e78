import { homedir } from 'node:os'
import { join } from 'node:path'
import { appVersion } from '../services/app-folder.ts'
import { dataFolder } from '../services/data-folder.ts'
import { faultLine, logIn } from '../services/log.ts'
import { createServices } from '../services/services.ts'
import { type Launched, launch } from './launch.ts'
import { printWithBrowser } from './print.ts'
import { type Served, serve } from './serve.ts'
import { createWindows } from './windows.ts'

const graceForReload = 5000

export interface RunOptions {
  /** Folder of the whole application. */
  app: string
  file: string | null
  /** A browser to show the window in; null: only serve it. */
  browser: string | null
  env: NodeJS.ProcessEnv
  say(line: string): void
  fault(error: unknown): void
  /** Settles when the person or the system asks the program to end. */
  interrupted: Promise<void>
}

/** Shows the window without Electron, until it is closed. The outcome says why the browser never showed it, if so. */
export async function run(options: RunOptions): Promise<{ shown: true } | { shown: false; why: string }> {
  let served: Served | null = null
  const data = dataFolder(process.platform, options.env, homedir())
  const log = logIn(data)
  const fault = (error: unknown) => {
    options.fault(error)
    void log.write(faultLine(error))
  }
  const windows = createWindows()
  const services = createServices({
    tell: (name, payload, window) => served?.tell(name, payload, window),
    isHere: windows.isHere,
    host: 'browser',
    version: await appVersion(options.app),
    data,
    home: homedir(),
    demos: join(options.app, 'seeds'),
    file: options.file,
    dialogs: null,
    ...(options.browser !== null && { print: (html: string) => printWithBrowser(options.browser!, html) }),
  })
  void services.prepare().catch(fault)
  const files = join(options.app, 'dist', 'renderer')
  served = await serve({
    handlers: services.forWindow,
    windows,
    files,
    fault,
    grace: graceForReload,
    closed: window => void services.windowClosed(window).catch(fault),
  })
  let launched: Launched | null = null
  try {
    if (options.browser === null) {
      options.say(`Open this address in a browser on this machine; it lets one in, once:\n${served.newAddress()}`)
      await Promise.race([served.abandoned, options.interrupted])
      return { shown: true }
    }
    const { window } = await services.settings()
    launched = await launch(options.browser, served.newAddress(), window, homedir())
    const ended = await Promise.race([launched.ended, served.abandoned, options.interrupted])
    if (served.hadWindow() || ended === undefined) return { shown: true }
    return { shown: false, why: ended.why ?? 'it closed at once' }
  } finally {
    launched?.stop()
    const left = (await launched?.ended)?.left
    if (left !== undefined && left !== null) options.say(left)
    await served.end()
    await services.settled()
  }
}
