import type { BrowserWindow, BrowserWindowConstructorOptions, PrintToPDFOptions, WebContents } from 'electron'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import type { Plan } from '../../../core/plan/schema.ts'
import { answer } from '../../../electron/contract/answer.ts'
import { printHidden } from '../../../electron/main/print.ts'
import { createServices } from '../../../electron/services/services.ts'
import { usualAxle, usualPair } from '../../../renderer/sheets/request.ts'
import { sheetHtml } from '../../../renderer/sheets/sheet-file.tsx'
import { seed } from '../../seeds/seed.ts'
import { newFolder } from '../folder.ts'

interface Shown {
  readonly options: BrowserWindowConstructorOptions
  address: string
  printed: PrintToPDFOptions | null
  gone: boolean
}

/** What a window does, in place of Electron's. */
const stage = vi.hoisted(() => ({
  windows: [] as Shown[],
  load: async (): Promise<void> => undefined,
  print: async (): Promise<Buffer> => Buffer.from('%PDF-1.4'),
}))

vi.mock('electron', () => ({
  BrowserWindow: class implements Pick<BrowserWindow, 'loadURL' | 'destroy'> {
    readonly shown: Shown
    constructor(options: BrowserWindowConstructorOptions) {
      this.shown = { options, address: '', printed: null, gone: false }
      stage.windows.push(this.shown)
    }
    loadURL(address: string): Promise<void> {
      this.shown.address = address
      return stage.load()
    }
    readonly webContents = {
      printToPDF: (options: PrintToPDFOptions): Promise<Buffer> => {
        this.shown.printed = options
        return stage.print()
      },
    } satisfies Pick<WebContents, 'printToPDF'>
    destroy(): void {
      this.shown.gone = true
    }
  },
}))

beforeEach(() => {
  Object.assign(stage, { windows: [], load: async () => undefined, print: async () => Buffer.from('%PDF-1.4') })
})

const pageIn = (address: string): string => {
  const [, base64] = /^data:text\/html;charset=utf-8;base64,(.*)$/.exec(address)!
  return Buffer.from(base64!, 'base64').toString()
}

describe('printing in Electron', () => {
  it('is done by a window nobody sees, where nothing runs and nothing of the machine can be reached', async () => {
    await printHidden('<p>“Rear” 2 7/8″</p>')
    const [window] = stage.windows
    expect(window!.options).toEqual({
      show: false,
      webPreferences: { sandbox: true, contextIsolation: true, nodeIntegration: false, javascript: false },
    })
    expect(pageIn(window!.address)).toBe('<p>“Rear” 2 7/8″</p>')
    expect(window!.printed).toEqual({ preferCSSPageSize: true, printBackground: true })
    expect(window!.gone).toBe(true)
  })

  it.each(['load', 'print'] as const)('that fails at its %s leaves no window behind', async at => {
    Object.assign(stage, { [at]: () => Promise.reject(new Error('no printing today')) })
    await expect(printHidden('<p>')).rejects.toThrow('no printing today')
    expect(stage.windows.map(({ gone }) => gone)).toEqual([true])
  })
})

describe('a sheet asked for by the window, over Electron’s printing', () => {
  const plan: Plan = seed('before-and-after.stopgap')
  const pair = usualPair(plan)
  const made = sheetHtml({ plan, axle: usualAxle(plan, pair.before, pair.after), ...pair, paper: 'a4', date: null }, [
    'shop',
  ])
  if (!made.ok) throw new Error(made.problem)

  const asked = async (html: string) => {
    const folder = await newFolder()
    const services = createServices({
      host: 'electron',
      version: '0.0.0',
      data: folder,
      home: folder,
      demos: folder,
      file: null,
      dialogs: null,
      tell: () => undefined,
      print: printHidden,
    })
    return answer(services.handlers, 'pdf', { html }, error => {
      throw error
    })
  }

  it('comes back as the PDF of that very page', async () => {
    expect(await asked(made.text)).toMatchObject({
      value: { kind: 'pdf', base64: Buffer.from('%PDF-1.4').toString('base64') },
    })
    expect(pageIn(stage.windows[0]!.address)).toBe(made.text)
  })

  it('is told in a sentence when it cannot be printed', async () => {
    stage.print = () => Promise.reject(new Error('Printing failed'))
    expect(await asked(made.text)).toMatchObject({
      value: {
        kind: 'failed',
        reason: 'The PDF could not be made: Printing failed. Print it, and save it as PDF there.',
      },
    })
  })
})
