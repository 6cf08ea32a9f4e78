import { GENERIC_SHELF, type Shelf } from '../../core/changes/shelf.ts'
import type { Problem } from '../../core/plan/problem.ts'
import { formatShelf, parseShelf, readShelf } from '../../core/plan/shelf-file.ts'
import { type Files, guarded } from './files.ts'
import { dismiss, notify } from './notices.ts'
import { watched } from './watched.ts'

export interface ShelfView {
  /** The generic sizes until somebody has put something on it. */
  readonly shelf: Shelf
  /** `unread`: the host could not be asked; nothing is changed then, so that nothing is written over. */
  readonly state: 'reading' | 'ready' | 'unread'
  /** What undo would take back, and redo make again; null: nothing. */
  readonly undo: string | null
  readonly redo: string | null
}

/** The shelf of a window: read once, kept with the host after every change. Undone by itself, apart from the plan. */
export interface KeptShelf {
  read(): ShelfView
  subscribe(hear: () => void): () => void
  /** Asks the host, where it has not answered yet. */
  begin(): void
  /** @param label what was done, for undo: `spring added`. @returns why it cannot be; empty when it is done */
  change(label: string, next: Shelf): readonly Problem[]
  undo(): void
  redo(): void
}

/** A shelf before a change, and what the change was. */
interface Step {
  readonly shelf: Shelf
  readonly label: string
}

const MOST_STEPS = 100

const known = new WeakMap<Files['store'], KeptShelf>()

/** What would be wrong with a shelf, each at its path. */
export const shelfProblems = (shelf: Shelf): readonly Problem[] => {
  const parsed = parseShelf(JSON.parse(formatShelf(shelf)))
  return parsed.ok ? [] : parsed.problems
}

/** The one shelf of a window. */
export function shelfOf(files: Files): KeptShelf {
  const before = known.get(files.store)
  if (before !== undefined) return before
  const made = keptShelf(files)
  known.set(files.store, made)
  return made
}

function keptShelf(files: Files): KeptShelf {
  let [past, future]: [readonly Step[], readonly Step[]] = [[], []]
  let shelf = GENERIC_SHELF
  let state: ShelfView['state'] = 'unread'
  const { read, write, subscribe } = watched<ShelfView>({ shelf, state, undo: null, redo: null })
  let sending: Promise<void> = Promise.resolve()

  const show = (): void => write({ shelf, state, undo: past.at(-1)?.label ?? null, redo: future.at(-1)?.label ?? null })

  const ask = async (): Promise<void> => {
    const reply = await guarded(files, 'shelf', () => files.host.call('shelf', {}))
    state = reply === null ? 'unread' : 'ready'
    if (reply?.report !== undefined) notify(files.store, { about: 'shelf', text: reply.report })
    if (reply !== null && reply.text !== null) {
      const parsed = readShelf(reply.text)
      if (parsed.ok) shelf = parsed.shelf
      else state = 'unread'
    }
    show()
  }

  const keep = async (text: string): Promise<void> => {
    const reply = await guarded(files, 'shelf', () => files.host.call('keepShelf', { text }))
    if (reply?.kind === 'kept') dismiss(files.store, 'shelf')
    else if (reply !== null) notify(files.store, { about: 'shelf', text: reply.reason })
  }

  /** One after the other, so that the last one stays. */
  const set = (next: Shelf): void => {
    shelf = next
    show()
    const text = formatShelf(next)
    sending = sending.then(() => keep(text))
  }

  return {
    read,
    subscribe,
    begin: () => {
      if (state !== 'unread') return
      state = 'reading'
      show()
      void ask()
    },
    change: (label, next) => {
      if (state !== 'ready') return [{ path: '', found: 'a shelf that is not read yet', wanted: 'to wait until it is' }]
      const problems = shelfProblems(next)
      if (problems.length > 0 || formatShelf(next) === formatShelf(shelf)) return problems
      past = [...past.slice(1 - MOST_STEPS), { shelf, label }]
      future = []
      set(next)
      return []
    },
    undo: () => {
      const step = past.at(-1)
      if (step === undefined) return
      past = past.slice(0, -1)
      future = [...future, { shelf, label: step.label }]
      set(step.shelf)
    },
    redo: () => {
      const step = future.at(-1)
      if (step === undefined) return
      future = future.slice(0, -1)
      past = [...past, { shelf, label: step.label }]
      set(step.shelf)
    },
  }
}
