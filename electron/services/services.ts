import { mkdir } from 'node:fs/promises'
import { basename, dirname } from 'node:path'
import type { Handlers } from '../contract/answer.ts'
import type { Recents, Reply, Request, Settings, Tell } from '../contract/contract.ts'
import { whyNotPlan } from '../contract/plan-text.ts'
import { showFolder } from './chooser.ts'
import { keyOf, openPath, realPathOf } from './documents.ts'
import { isUnsaved } from './kept.ts'
import { logIn, withoutQuotes } from './log.ts'
import { pdfOf } from './pdf.ts'
import { reason } from './reason.ts'
import { keepRun, openRun } from './runs-beside.ts'
import { runsOn } from './runs-on.ts'
import { save, saveAt, saveIn } from './saving.ts'
import type { StoredSettings } from './settings.ts'
import { type Shelves, shelvesIn } from './shelves.ts'
import { demosIn, firstDocument, namedDemos, openToken } from './start.ts'
import { workUnderWay } from './work-under-way.ts'

/** A native file dialog, where the host has one. null: the person thought better of it. */
export interface Dialogs {
  open(): Promise<string | null>
  save(suggestedName: string): Promise<string | null>
}

export interface ServiceOptions {
  /** Makes a PDF of a page, where the host can; its failures follow a colon. */
  print?: (html: string) => Promise<Uint8Array>
  host: 'electron' | 'browser'
  version: string
  /** The application's own folder. */
  data: string
  home: string
  /** Folder of the demo plans. */
  demos: string
  /** Absolute path of the file to open first. */
  file: string | null
  dialogs: Dialogs | null
  /** Shows a file where it lies, where the host can. */
  reveal?: (path: string) => void
  /** Speaks to the window unasked. */
  tell: Tell
}

export interface Services {
  handlers: Handlers
  /** A file that came from outside: a double click, a second start. A window that has not asked what to show gets it then. */
  openOutside(path: string): Promise<void>
  /** The window is gone; a new one will ask what to show. */
  windowClosed(): void
  /** The token for a file the person dropped on the window. */
  tokenFor(path: string): Promise<string>
  settings(): Promise<StoredSettings>
  changeSettings(part: Partial<StoredSettings>): Promise<Settings>
  /** When everything asked for is on the disk. */
  settled(): Promise<void>
}

/** What the window may ask, carried out the same in every host. */
export function createServices(options: ServiceOptions): Services {
  const shelves = shelvesIn(options.data)
  const busy = workUnderWay()
  const log = logIn(options.data)
  let file = options.file
  let lastKept = ''
  let shown = false

  /** With what the person has yet to be told. */
  function told<T extends { kind: string }>(opened: T): T {
    if (opened.kind !== 'document') return opened
    const own = (opened as { report?: string }).report
    const sentences = [...(own === undefined ? [] : [own]), ...shelves.takeReports()]
    return sentences.length === 0 ? opened : { ...opened, report: sentences.join(' ') }
  }

  /** Finds out, before the first change has to be kept, whether that can be done at all. */
  async function madeReady(): Promise<void> {
    await shelves.attempt(mkdir(options.data, { recursive: true, mode: 0o700 }))
    await Promise.all([shelves.attempt(shelves.settings.change({})), shelves.attempt(shelves.kept.tidy(Date.now()))])
  }

  /** The window waits for this with nothing to show: what can go on at once, does. */
  async function start(): Promise<Reply<'start'>> {
    const ready = madeReady()
    const demos = await demosIn(options.demos)
    const [{ document, reports }, names] = await Promise.all([
      firstDocument(file, demos, shelves),
      namedDemos(demos, shelves),
    ])
    file = null
    shown = true
    await ready
    const sentences = [...reports, ...shelves.takeReports()]
    return {
      document,
      recents: await recents(shelves),
      demos: names,
      settings: shownSettings(await shelves.settings.read()),
      about: { version: options.version, host: options.host, runsOn },
      report: sentences.length === 0 ? undefined : sentences.join(' '),
    }
  }

  async function keep(request: Request<'keep'>): Promise<Reply<'keep'>> {
    const failed = (why: string): Reply<'keep'> => ({
      kind: 'failed',
      reason: `The latest changes to “${request.name}” could not be kept: ${why}. Save the plan.`,
    })
    const wrong = whyNotPlan(request.text)
    if (wrong !== null) return failed(wrong)
    const thing = request.token === null ? null : shelves.tokens.find(request.token)
    const path = thing?.kind === 'file' ? thing.path : null
    const key = path === null ? request.key : keyOf(path)
    const { name, text, basis, history } = request
    const at = new Date().toISOString()
    try {
      await shelves.kept.keep({ key, name, path, basis, text, history, at })
    } catch (error) {
      return failed(reason(error))
    }
    if (key !== lastKept) await shelves.attempt(shelves.recents.touch({ key, path, name, at }))
    lastKept = key
    return { kind: 'kept' }
  }

  const change = busy.tracked(async (part: Partial<StoredSettings>): Promise<Settings> => {
    await shelves.attempt(shelves.settings.change(part))
    const settings = shownSettings(await shelves.settings.read())
    if (part.theme !== undefined) options.tell('settings', settings)
    return settings
  })

  return {
    handlers: {
      start,
      keep: busy.tracked(keep),
      open: async () => {
        if (options.dialogs === null) return { kind: 'choose' }
        const path = await options.dialogs.open()
        return path === null ? { kind: 'cancelled' } : told(await openPath(path, shelves))
      },
      openFile: async ({ token }) => told(await openToken(token, shelves)),
      recents: async () => ({ recents: await recents(shelves) }),
      folder: request => showFolder(request, options.home, shelves),
      save: busy.tracked(request => save(request, shelves)),
      saveAs: busy.tracked(async request => {
        if (options.dialogs === null) return { kind: 'choose' }
        const path = await options.dialogs.save(request.name)
        return path === null ? { kind: 'cancelled' } : saveAt(path, request, shelves)
      }),
      saveIn: busy.tracked(request => saveIn(request, shelves)),
      keepRun: busy.tracked(request => keepRun(request, shelves)),
      openRun: request => openRun(request, shelves),
      recipes: async () => {
        const text = await shelves.recipes.read()
        const sentences = shelves.takeReports()
        return { text, report: sentences.length === 0 ? undefined : sentences.join(' ') }
      },
      keepRecipes: busy.tracked(shelves.recipes.keep),
      forget: busy.tracked(async ({ key }) => {
        await shelves.attempt(shelves.kept.forget(key))
        const entry = (await shelves.recents.list()).find(each => each.key === key)
        if (entry?.path === null) await shelves.attempt(shelves.recents.drop(key))
        return {}
      }),
      fault: busy.tracked(async ({ about, message }) => {
        await log.write(`window, ${about}: ${withoutQuotes(message)}`)
        return {}
      }),
      showLog: async () => {
        await log.write(`Stopgap ${options.version} was asked for its log`)
        options.reveal?.(log.path)
        return { shown: options.reveal !== undefined, place: log.place }
      },
      settings: change,
      shelf: async () => {
        const text = await shelves.parts.read()
        const sentences = shelves.takeReports()
        return { text, report: sentences.length === 0 ? undefined : sentences.join(' ') }
      },
      keepShelf: busy.tracked(request => shelves.parts.keep(request)),
      pdf: ({ html }) => pdfOf(html, options.print),
    },
    openOutside: async path => {
      if (shown) options.tell('opened', told(await openPath(path, shelves)))
      else file = path
    },
    windowClosed: () => {
      shown = false
    },
    tokenFor: async path => shelves.tokens.give({ kind: 'file', path: await realPathOf(path) }),
    settings: () => shelves.settings.read(),
    changeSettings: change,
    settled: busy.settled,
  }
}

/** Of all that is remembered, what the window may know. */
const shownSettings = ({ theme, lookedAround, page }: StoredSettings): Settings => ({ theme, lookedAround, page })

async function recents(shelves: Shelves): Promise<Recents> {
  const entries = await shelves.recents.list()
  return Promise.all(
    entries.map(async ({ key, path, name, at }) => {
      const copy = await shelves.kept.find(key)
      return {
        token: shelves.tokens.give(path === null ? { kind: 'kept', key } : { kind: 'file', path }),
        name,
        folder: path === null ? null : basename(dirname(path)),
        unsaved: path === null || (copy !== null && isUnsaved(copy)),
        at,
      }
    }),
  )
}
