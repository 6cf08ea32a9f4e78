import { createContext, useContext, useSyncExternalStore } from 'react'
import { type Files, guarded } from '../../state/files.ts'
import { notify } from '../../state/notices.ts'
import type { RecipeShelf } from '../../state/recipe-memory.ts'
import type { RecordingsView } from '../../state/recording-list.ts'
import { Recordings } from '../../state/recordings.ts'
import type { Store } from '../../state/store.ts'
import { useFiles } from '../../window-context.ts'
import { RunClient } from '../../workers/run-client.ts'

/** Recipes through the host. What could not be read or kept is told; runs are read without them. */
const hostShelf = (files: Files): RecipeShelf => ({
  read: async () => {
    const reply = await guarded(files, 'recipes', () => files.host.call('recipes', {}))
    if (reply?.report !== undefined) notify(files.store, { about: 'recipes', text: reply.report })
    return reply?.text ?? ''
  },
  keep: async text => {
    const reply = await guarded(files, 'recipes', () => files.host.call('keepRecipes', { text }))
    if (reply?.kind === 'failed') notify(files.store, { about: 'recipes', text: reply.reason })
  },
})

const known = new WeakMap<Store, Recordings>()

/** The recorded runs of a window: they outlive a look at another page. */
function windowRecordings(files: Files): Recordings {
  const before = known.get(files.store)
  if (before !== undefined) return before
  const client = new RunClient(
    () => new Worker(new URL('../../workers/run-worker.ts', import.meta.url), { type: 'module', name: 'runs' }),
    () => made.lost(),
  )
  const made = new Recordings(client, hostShelf(files))
  known.set(files.store, made)
  return made
}

/** Other recordings than the window's own. */
export const RecordingsContext = createContext<Recordings | null>(null)

export function useRecordings(): { readonly recordings: Recordings; readonly view: RecordingsView } {
  const files = useFiles()
  const given = useContext(RecordingsContext)
  const recordings = given ?? windowRecordings(files)
  return { recordings, view: useSyncExternalStore(recordings.subscribe, recordings.read) }
}
