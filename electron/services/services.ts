import { mkdir } from 'node:fs/promises'
import { basename, dirname } from 'node:path'
import type { Handlers } from '../contract/answer.ts'
import type { Reply, Tell } from '../contract/contract.ts'
import type { Recents, Settings } from '../contract/shapes.ts'
import { showFolder } from './chooser.ts'
import { openDemo, openPath, realPathOf } from './documents.ts'
import { keeperFor } from './keeping.ts'
import { isUnsaved } from './kept.ts'
import { gatherLeftBehind } from './left-behind.ts'
import { logIn, withoutQuotes } from './log.ts'
import { pdfOf } from './pdf.ts'
import { chosenRecording, pieceOf } from './recordings.ts'
import { keepRun, openRun } from './runs-beside.ts'
import { runsOn } from './runs-on.ts'
import { save, saveAt, saveIn } from './saving.ts'
import { together } from './sentences.ts'
import type { StoredSettings } from './settings.ts'
import { type Shelves, shelvesIn } from './shelves.ts'
import { demosIn, firstDocument, namedDemos, openToken } from './start.ts'
import { workUnderWay } from './work-under-way.ts'

/** A native file dialog, where the host has one. null: the person thought better of it. */
export interface Dialogs {
  open(): Promise<string | null>
  save(suggestedName: string): Promise<string | null>
  /** For a recorded run. */
  recording(): Promise<string | null>
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
  /** Speaks to the windows unasked, or to one of them. */
  tell: Tell
  /** Whether a window is still there, in a host that can have several. */
  isHere?: (window: string) => boolean
}

export interface Services {
  /** Goes ahead with what the first window will ask for, while it is on its way: on a new start most of that is getting going. */
  prepare(): Promise<void>
  /** What the only window may ask. */
  handlers: Handlers
  /** What one of several windows may ask; each goes by a name of its own. */
  forWindow(window: string): Handlers
  /** A file that came from outside: a double click, a second start. A window that has not asked what to show gets it then. */
  openOutside(path: string): Promise<void>
  /** A window is gone, the only one when none is named; a new one will ask what to show. */
  windowClosed(window?: string): Promise<void>
  /** The token for a file the person dropped on the window. */
  tokenFor(path: string): Promise<string>
  settings(): Promise<StoredSettings>
  changeSettings(part: Partial<StoredSettings>): Promise<Settings>
  /** When everything asked for is on the disk. */
  settled(): Promise<void>
}

/** The name of a window where there is never another. */
const onlyWindow = 'window'

/** What the window may ask, carried out the same in every host. */
export function createServices(options: ServiceOptions): Services {
  const shelves = shelvesIn(options.data, options.isHere, (window, key) => options.tell('shared', { key }, window))
  const busy = workUnderWay()
  const log = logIn(options.data)
  let file = options.file
  let shown = false
  let prepared: Promise<void> | null = null

  /** With what the person has yet to be told. */
  function told<T extends { kind: string }>(opened: T): T {
    if (opened.kind !== 'document') return opened
    const own = (opened as { report?: string }).report
    const report = together([...(own === undefined ? [] : [own]), ...shelves.takeReports()])
    return report === undefined ? opened : { ...opened, report }
  }

  /** Finds out, before the first change has to be kept, whether that can be done at all. */
  async function madeReady(): Promise<void> {
    await shelves.attempt(mkdir(options.data, { recursive: true, mode: 0o700 }))
    await Promise.all([shelves.attempt(shelves.settings.change({})), shelves.attempt(shelves.kept.tidy(Date.now()))])
  }

  async function prepare(): Promise<void> {
    prepared = madeReady()
    const [demo] = await demosIn(options.demos)
    if (demo !== undefined) await openDemo(demo)
    await prepared
  }

  /** The window waits for this with nothing to show: what can go on at once, does. */
  async function start(window: string): Promise<Reply<'start'>> {
    const ready = prepared ?? madeReady()
    prepared = null
    const demos = await demosIn(options.demos)
    const [{ document, reports }, names] = await Promise.all([
      firstDocument(file, demos, window, shelves),
      namedDemos(demos, shelves),
    ])
    file = null
    shown = true
    await ready
    const left = await attempted(gatherLeftBehind(shelves))
    await shelves.marks.tidy()
    const report = together([...reports, ...left, ...shelves.takeReports()])
    return {
      document,
      recents: await recents(shelves),
      demos: names,
      settings: shownSettings(await shelves.settings.read()),
      about: { version: options.version, host: options.host, runsOn },
      report,
    }
  }

  /** What bookkeeping found; nothing where the system refuses, which is told. */
  async function attempted(work: Promise<string[]>): Promise<string[]> {
    const found: string[] = []
    await shelves.attempt(work.then(sentences => found.push(...sentences)))
    return found
  }

  const change = busy.tracked(async (part: Partial<StoredSettings>): Promise<Settings> => {
    await shelves.attempt(shelves.settings.change(part))
    const settings = shownSettings(await shelves.settings.read())
    if (part.theme !== undefined) options.tell('settings', settings)
    return settings
  })

  const windows = new Map<string, Handlers>()
  const forWindow = (window: string): Handlers => {
    const known = windows.get(window) ?? handlersOf(window)
    windows.set(window, known)
    return known
  }

  const handlersOf = (window: string): Handlers => {
    const keep = keeperFor(window, shelves)
    return {
      start: () => start(window),
      keep: busy.tracked(keep),
      open: async () => {
        if (options.dialogs === null) return { kind: 'choose' }
        const path = await options.dialogs.open()
        return path === null ? { kind: 'cancelled' } : told(await openPath(path, window, shelves))
      },
      openFile: async ({ token }) => told(await openToken(token, window, shelves)),
      recents: async () => ({ recents: await recents(shelves) }),
      folder: request => showFolder(request, options.home, shelves),
      save: busy.tracked(request => save(request, window, shelves)),
      saveAs: busy.tracked(async request => {
        if (options.dialogs === null) return { kind: 'choose' }
        const path = await options.dialogs.save(request.name)
        return path === null ? { kind: 'cancelled' } : saveAt(path, request, window, shelves)
      }),
      saveIn: busy.tracked(request => saveIn(request, window, shelves)),
      keepRun: busy.tracked(request => keepRun(request, shelves)),
      openRun: request => openRun(request, shelves),
      openRecording: async () => {
        if (options.dialogs === null) return { kind: 'choose' }
        const path = await options.dialogs.recording()
        return path === null ? { kind: 'cancelled' } : chosenRecording(path, shelves.tokens)
      },
      recordingPiece: request => pieceOf(request, shelves.tokens),
      recipes: async () => {
        const text = await shelves.recipes.read()
        return { text, report: together(shelves.takeReports()) }
      },
      keepRecipes: busy.tracked(shelves.recipes.keep),
      forget: busy.tracked(async ({ key }) => {
        const place = await shelves.claims.placeFor(key, window)
        await shelves.attempt(shelves.kept.forget(place.key))
        const entry = (await shelves.recents.list()).find(each => each.key === key)
        if (entry?.path === null && !place.isSecond) await shelves.attempt(shelves.recents.drop(key))
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
        return { text, report: together(shelves.takeReports()) }
      },
      keepShelf: busy.tracked(request => shelves.parts.keep(request)),
      pdf: ({ html }) => pdfOf(html, options.print),
    }
  }

  return {
    prepare,
    handlers: forWindow(onlyWindow),
    forWindow,
    openOutside: async path => {
      if (shown) options.tell('opened', told(await openPath(path, onlyWindow, shelves)))
      else file = path
    },
    windowClosed: async (window = onlyWindow) => {
      shown = false
      windows.delete(window)
      await shelves.claims.gone(window)
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
