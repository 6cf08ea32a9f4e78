import { EventEmitter } from 'node:events'
import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type {
  BrowserWindowConstructorOptions,
  MenuItemConstructorOptions,
  OpenDialogOptions,
  Rectangle,
  WebContents,
} from 'electron'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { pageHeaders } from '../../../electron/contract/page.ts'
import { newFolder } from '../folder.ts'
import { planText } from '../plan.ts'

/** A stand-in for Electron: it records what it is told, and its events are emitted by hand. */
const shell = vi.hoisted(() => ({
  app: null as unknown as EventEmitter,
  ready: null as unknown as () => void,
  hasLock: true,
  calls: [] as string[],
  windows: [] as FakeWindow[],
  menu: [] as MenuItemConstructorOptions[],
  schemes: new Map<string, (request: Request) => Promise<Response>>(),
  permissions: {} as { request?: unknown; check?: unknown; device?: unknown },
  displays: [] as { workArea: Rectangle }[],
  doors: new Map<string, (event: unknown, ...args: unknown[]) => unknown>(),
  /** What the next dialog to open gives, and what those before were asked. */
  chosen: [] as string[],
  asked: [] as OpenDialogOptions[],
}))

interface FakeWindow extends EventEmitter {
  options: BrowserWindowConstructorOptions
  address: string
  sent: unknown[][]
  close(): void
}

vi.mock('electron', async () => {
  const { EventEmitter } = await import('node:events')
  class BrowserWindow extends EventEmitter implements FakeWindow {
    readonly options: BrowserWindowConstructorOptions
    address = ''
    readonly sent: unknown[][] = []
    readonly webContents = { send: (...what: unknown[]) => void this.sent.push(what) }
    constructor(options: BrowserWindowConstructorOptions) {
      super()
      this.options = options
      shell.windows.push(this)
    }
    loadURL(address: string) {
      this.address = address
      return Promise.resolve()
    }
    show() {}
    focus() {
      shell.calls.push('focus')
    }
    isMinimized = () => false
    isMaximized = () => true
    maximize() {}
    getNormalBounds = (): Rectangle => ({ x: 10, y: 20, width: 1200, height: 800 })
    close() {
      this.emit('close', {})
      this.emit('closed')
    }
  }
  const record = (name: string) => () => void shell.calls.push(name)
  return {
    app: {
      on: (name: string, hear: (...args: unknown[]) => void) => shell.app.on(name, hear),
      setPath: record('setPath'),
      getPath: () => '/documents',
      requestSingleInstanceLock: () => shell.hasLock,
      enableSandbox: record('enableSandbox'),
      quit: record('quit'),
      exit: record('exit'),
      whenReady: () => new Promise<void>(resolve => Object.assign(shell, { ready: resolve })),
      isPackaged: true,
    },
    BrowserWindow,
    dialog: {
      showOpenDialog: (_parent: unknown, asked: OpenDialogOptions) => {
        shell.asked.push(asked)
        return Promise.resolve({ canceled: shell.chosen.length === 0, filePaths: shell.chosen })
      },
    },
    ipcMain: { handle: (channel: string, handler: never) => void shell.doors.set(channel, handler) },
    Menu: {
      buildFromTemplate: (template: MenuItemConstructorOptions[]) => template,
      setApplicationMenu: (menu: MenuItemConstructorOptions[]) => Object.assign(shell, { menu }),
    },
    nativeTheme: { themeSource: 'system' },
    protocol: {
      registerSchemesAsPrivileged: record('registerSchemes'),
      handle: (scheme: string, handler: never) => void shell.schemes.set(scheme, handler),
    },
    screen: { getAllDisplays: () => shell.displays },
    session: {
      defaultSession: {
        setPermissionRequestHandler: (request: unknown) => Object.assign(shell.permissions, { request }),
        setPermissionCheckHandler: (check: unknown) => Object.assign(shell.permissions, { check }),
        setDevicePermissionHandler: (device: unknown) => Object.assign(shell.permissions, { device }),
      },
    },
  }
})

let data: string

beforeEach(async () => {
  Object.assign(shell, {
    app: new EventEmitter(),
    hasLock: true,
    calls: [],
    windows: [],
    permissions: {},
    chosen: [],
    asked: [],
  })
  shell.displays = [{ workArea: { x: 0, y: 0, width: 1920, height: 1080 } }]
  data = join(await newFolder(), 'data')
  vi.stubEnv('STOPGAP_DATA', data)
  return () => vi.unstubAllEnvs()
})

async function started() {
  const { start } = await import('../../../electron/main/application.ts')
  start()
  shell.ready()
  await vi.waitFor(() => expect(shell.windows).toHaveLength(1))
  return shell.windows[0]!
}

const ourPage = () => {
  const frame = { url: 'stopgap://window/' }
  return { senderFrame: frame, sender: { mainFrame: frame } }
}
const ask = (name: string, request: unknown) => shell.doors.get('stopgap:call')!(ourPage(), name, request)

describe('the application in Electron', () => {
  it('does nothing on import, and leaves at once when it runs already', async () => {
    const { start } = await import('../../../electron/main/application.ts')
    expect(shell.calls).toEqual([])
    shell.hasLock = false
    start()
    expect(shell.calls).toEqual(['setPath', 'quit'])
  })

  it('shuts the window in: sandbox, isolation, no Node', async () => {
    const window = await started()
    expect(shell.calls).toContain('enableSandbox')
    expect(window.options.webPreferences).toMatchObject({
      preload: expect.stringMatching(/dist[/\\]preload\.cjs$/),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webviewTag: false,
    })
    expect(window.address).toBe('stopgap://window/')
  })

  it('lets no page lead away, open windows, embed pages or get permissions', async () => {
    await started()
    const contents = Object.assign(new EventEmitter(), { setWindowOpenHandler: vi.fn() })
    shell.app.emit('web-contents-created', {}, contents as unknown as WebContents)
    const prevented = (name: string, url: string, isMainFrame = true) => {
      const event = { url, isMainFrame, preventDefault: vi.fn() }
      contents.emit(name, event)
      return event.preventDefault.mock.calls.length > 0
    }
    for (const url of ['https://example.org/', 'file:///etc/passwd', 'stopgap://other/', 'javascript:0']) {
      expect([url, prevented('will-navigate', url), prevented('will-frame-navigate', url)]).toEqual([url, true, true])
    }
    expect(prevented('will-navigate', 'stopgap://window/')).toBe(false)
    expect(prevented('will-frame-navigate', 'stopgap://window/', false)).toBe(true)
    expect(prevented('will-attach-webview', '')).toBe(true)
    expect(contents.setWindowOpenHandler.mock.calls[0]![0]()).toEqual({ action: 'deny' })
    const { request, check, device } = shell.permissions as Record<string, (...args: unknown[]) => unknown>
    const decide = vi.fn()
    request!({}, 'geolocation', decide)
    expect(decide).toHaveBeenCalledExactlyOnceWith(false)
    expect([check!({}, 'clipboard-read'), device!({})]).toEqual([false, false])
  })

  it('serves the window’s files, and only those, under strict headers', async () => {
    await started()
    const serve = shell.schemes.get('stopgap')!
    for (const url of ['stopgap://window/../package.json', 'stopgap://window/..%2f..%2fpackage.json', 'stopgap://x/']) {
      const response = await serve(new Request(url))
      expect([url, response.status]).toEqual([url, 404])
      expect(response.headers.get('content-security-policy')).toBe(pageHeaders['content-security-policy'])
    }
  })

  it('hands a file of a second start to the window that is there', async () => {
    const window = await started()
    await ask('start', {})
    const file = join(data, '..', 'Rear.stopgap')
    await writeFile(file, planText('A plan'))
    shell.app.emit('second-instance', {}, ['/usr/bin/stopgap', '--some-switch', 'Rear.stopgap'], join(data, '..'))
    await vi.waitFor(() => expect(window.sent).toHaveLength(1))
    expect(window.sent[0]).toMatchObject(['stopgap:event', 'opened', { kind: 'document', document: { name: 'Rear' } }])
    expect(shell.calls).toContain('focus')
    expect(shell.windows).toHaveLength(1)
  })

  it('opens first what the system asked for before it was ready', async () => {
    const file = join(data, '..', 'Early.stopgap')
    await writeFile(file, planText('A plan'))
    const { start } = await import('../../../electron/main/application.ts')
    start()
    shell.app.emit('open-file', { preventDefault: () => undefined }, file)
    shell.ready()
    await vi.waitFor(() => expect(shell.windows).toHaveLength(1))
    expect(await ask('start', {})).toMatchObject({ kind: 'reply', value: { document: { name: 'Early' } } })
  })

  const item = (label: string) =>
    shell.menu.flatMap(menu => menu.submenu as MenuItemConstructorOptions[]).find(each => each.label === label)!

  it('asks for a recording from the menu in a dialog, and hands it over in pieces', async () => {
    const window = await started()
    await ask('start', {})
    ;(item('Open a &recording…').click as () => void)()
    expect(window.sent).toEqual([['stopgap:event', 'menu', { command: 'record' }]])
    expect(await ask('openRecording', {})).toEqual({ kind: 'reply', value: { kind: 'cancelled' } })
    shell.chosen = [join(data, '..', 'pit.csv')]
    await writeFile(shell.chosen[0]!, 'time;mm')
    const opened = (await ask('openRecording', {})) as { value: { token: string } }
    expect(opened).toMatchObject({ value: { kind: 'recording', name: 'pit.csv', size: 7 } })
    expect(JSON.stringify(opened)).not.toContain(data)
    const piece = await ask('recordingPiece', { token: opened.value.token, at: 5 })
    expect(piece).toMatchObject({ value: { kind: 'piece', base64: btoa('mm') } })
    expect(shell.asked).toHaveLength(2)
    expect(shell.asked[0]).toMatchObject({
      properties: ['openFile'],
      filters: [{ name: 'Recording' }, { name: 'All files' }],
    })
    expect(shell.asked[0]!.filters![0]!.extensions).toContain('csv')
  })

  it('changes colors from the menu, and the menu with them', async () => {
    const window = await started()
    ;(item('Dark').click as () => void)()
    await vi.waitFor(() => expect(window.sent).toEqual([['stopgap:event', 'settings', { theme: 'dark' }]]))
    expect(item('Dark').checked).toBe(true)
  })

  it('comes back where it was left, once everything is written', async () => {
    const window = await started()
    window.close()
    const event = { preventDefault: vi.fn() }
    shell.app.emit('will-quit', event)
    expect(event.preventDefault).toHaveBeenCalled()
    await vi.waitFor(() => expect(shell.calls).toContain('quit'))
    const stored = JSON.parse(await readFile(join(data, 'settings.json'), 'utf8'))
    expect(stored.window).toEqual({ x: 10, y: 20, width: 1200, height: 800, maximized: true })
    shell.windows.length = 0
    expect((await started()).options).toMatchObject({ x: 10, y: 20, width: 1200, height: 800 })
  })

  it('does not come back on a screen that is not there any more', async () => {
    await mkdir(data, { recursive: true })
    const window = { x: 5000, y: 20, width: 1200, height: 300 }
    const settings = { format: 'stopgap-settings', version: 1, theme: 'system', window, folder: null }
    await writeFile(join(data, 'settings.json'), JSON.stringify(settings))
    const { options } = await started()
    expect(options).toMatchObject({ width: 1200, height: 700, minWidth: 1024, minHeight: 700 })
    expect(options.x).toBe(undefined)
  })
})
