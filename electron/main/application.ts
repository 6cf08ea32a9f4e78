import { mkdirSync, mkdtempSync } from 'node:fs'
import { homedir, tmpdir } from 'node:os'
import { join } from 'node:path'
import { app, type BrowserWindow, Menu, nativeTheme, session, shell } from 'electron'
import { channels } from '../contract/bridge.ts'
import { events, type Tell } from '../contract/contract.ts'
import type { Settings } from '../contract/shapes.ts'
import { appFolder, appVersion } from '../services/app-folder.ts'
import { dataFolder } from '../services/data-folder.ts'
import { faultLine, logIn } from '../services/log.ts'
import { refusal } from '../services/reason.ts'
import { createServices, type Services } from '../services/services.ts'
import { askedFile } from './asked-file.ts'
import { nativeDialogs } from './dialogs.ts'
import { openDoors } from './doors.ts'
import { fenceContents, fenceSession } from './fences.ts'
import { menuTemplate } from './menu.ts'
import { printHidden } from './print.ts'
import { createWindow, placeOf } from './window.ts'
import { announceScheme, serveScheme } from './window-scheme.ts'

const ownData = () => dataFolder(process.platform, process.env, homedir())

function fault(error: unknown): void {
  process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`)
  void logIn(ownData()).write(faultLine(error))
}

/** Electron's application, from first to last. */
export function start(): void {
  const data = ownData()
  app.setPath('userData', ownFolder(join(data, 'electron')))
  if (!app.requestSingleInstanceLock()) {
    app.quit()
    return
  }
  app.enableSandbox()
  announceScheme()
  fenceContents()
  const skip = app.isPackaged ? 1 : 2
  const early: string[] = [askedFile(process.argv, skip, process.cwd())].filter(path => path !== null)
  let open = (path: string): void => void early.push(path)
  app.on('open-file', (event, path) => {
    event.preventDefault()
    open(path)
  })
  let show = (): void => undefined
  app.on('second-instance', (_event, argv, folder) => {
    const path = askedFile(argv, skip, folder)
    if (path !== null) open(path)
    show()
  })
  app
    .whenReady()
    .then(async () => {
      const running = await run(data, early.at(-1) ?? null)
      open = running.open
      show = running.show
    })
    .catch((error: unknown) => {
      fault(error)
      app.exit(1)
    })
}

async function run(data: string, file: string | null) {
  const root = appFolder(import.meta.url)
  let window: BrowserWindow | null = null

  const tell: Tell = (name, payload) => {
    window?.webContents.send(channels.event, name, events[name].parse(payload))
    if (name === 'settings') dress((payload as Settings).theme)
  }
  const services = createServices({
    host: 'electron',
    version: await appVersion(root),
    data,
    home: homedir(),
    demos: join(root, 'seeds'),
    file,
    dialogs: nativeDialogs(() => window),
    print: printHidden,
    tell,
    reveal: path => shell.showItemInFolder(path),
  })

  function dress(theme: Settings['theme']): void {
    nativeTheme.themeSource = theme
    const choices = {
      command: (command: Parameters<typeof tell<'menu'>>[1]['command']) => tell('menu', { command }),
      theme: (chosen: Settings['theme']) => void services.changeSettings({ theme: chosen }).catch(fault),
    }
    Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(process.platform, theme, choices)))
  }

  async function show(): Promise<void> {
    if (window !== null) {
      if (window.isMinimized()) window.restore()
      window.focus()
      return
    }
    const opened = createWindow(join(root, 'dist', 'preload.cjs'), (await services.settings()).window)
    window = opened
    opened.on('close', () => void services.changeSettings({ window: placeOf(opened) }).catch(fault))
    opened.on('closed', () => {
      window = null
      void services.windowClosed().catch(fault)
    })
  }

  void services.prepare().catch(fault)
  fenceSession(session.defaultSession)
  serveScheme(join(root, 'dist', 'renderer'))
  openDoors(services, fault)
  dress((await services.settings()).theme)
  endWhenWritten(services)
  await show()
  app.on('activate', () => void show().catch(fault))
  return {
    open: (path: string) => void services.openOutside(path).then(show).catch(fault),
    show: () => void show().catch(fault),
  }
}

/** What the window sent last is on the disk before the program ends. On macOS a program outlives its window. */
function endWhenWritten(services: Services): void {
  let written = false
  app.on('window-all-closed', () => {
    if (process.platform !== 'darwin') app.quit()
  })
  app.on('will-quit', event => {
    if (written) return
    event.preventDefault()
    services
      .settled()
      .catch(fault)
      .finally(() => {
        written = true
        app.quit()
      })
  })
}

/** Electron will not start without a folder of its own it can write in; a passing one will do. */
function ownFolder(wanted: string): string {
  try {
    mkdirSync(wanted, { recursive: true, mode: 0o700 })
    return wanted
  } catch (error) {
    if (refusal(error) === null) throw error
    return mkdtempSync(join(tmpdir(), 'stopgap-electron-'))
  }
}
