import type { Store } from './store.ts'
import { showPage } from './view.ts'

interface Bringing {
  /** Brought while the page of recordings was not there to take it. */
  file: File | null
  readonly takers: Set<(file: File) => void>
}

const known = new WeakMap<Store, Bringing>()

function bringingOf(store: Store): Bringing {
  const before = known.get(store)
  if (before !== undefined) return before
  const made: Bringing = { file: null, takers: new Set() }
  known.set(store, made)
  return made
}

/** Shows the page of recordings with a file that was chosen or dropped somewhere else; the last one counts. */
export function bringRecording(store: Store, file: File): void {
  const bringing = bringingOf(store)
  if (bringing.takers.size === 0) bringing.file = file
  else for (const take of bringing.takers) take(file)
  showPage(store, 'logs')
}

/** Takes what is brought from now on, and what was brought before anybody was there. The result stops it. */
export function takeRecordings(store: Store, take: (file: File) => void): () => void {
  const bringing = bringingOf(store)
  bringing.takers.add(take)
  const { file } = bringing
  bringing.file = null
  if (file !== null) take(file)
  return () => bringing.takers.delete(take)
}

/** Endings of tables as text, for choosers and for what is dropped. */
export const RECORDING_ENDINGS = '.csv,.tsv,.txt,.asc,.dat,.log'

/** Whether a file dropped somewhere may be a recording, and not a plan. */
export const looksLikeRecording = ({ name }: File): boolean => /\.(csv|tsv|txt|asc|dat|log)$/i.test(name)

/** Asks for a recording. Where the browser will not ask, for nobody pressed anything, the page that has the button is shown. */
export function askForRecording(store: Store): void {
  if (!navigator.userActivation.isActive) {
    showPage(store, 'logs')
    return
  }
  const input = document.createElement('input')
  input.type = 'file'
  input.accept = `${RECORDING_ENDINGS},text/csv,text/plain`
  input.addEventListener('change', () => {
    const file = input.files?.[0]
    if (file !== undefined) bringRecording(store, file)
  })
  input.click()
}
