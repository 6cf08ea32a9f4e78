import { recordingEndings } from '../../electron/contract/recording.ts'
import { fileOf } from './chosen-recording.ts'
import { type Files, guarded } from './files.ts'
import { notify } from './notices.ts'
import { onceFor } from './once-for.ts'
import type { Store } from './store.ts'
import { showPage } from './view.ts'

interface Bringing {
  /** Brought while the page of recordings was not there to take it. */
  file: File | null
  readonly takers: Set<(file: File) => void>
}

const bringingOf = onceFor((_: Store): Bringing => ({ file: null, takers: new Set() }))

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

/** What a chooser of the page offers. */
export const RECORDING_TYPES = [...recordingEndings.map(ending => `.${ending}`), 'text/csv', 'text/plain'].join()

/** Whether a file dropped somewhere may be a recording, and not a plan. */
export const looksLikeRecording = ({ name }: File): boolean =>
  recordingEndings.some(ending => name.toLowerCase().endsWith(`.${ending}`))

/** Asks for a recording: the page itself where somebody pressed something in it, else the host, as from its own menu. */
export async function askForRecording(files: Files): Promise<void> {
  if (navigator.userActivation.isActive) askInPage(files.store)
  else await guarded(files, 'recording', () => askHost(files))
}

function askInPage(store: Store): void {
  const input = document.createElement('input')
  input.type = 'file'
  input.accept = RECORDING_TYPES
  input.addEventListener('change', () => {
    const file = input.files?.[0]
    if (file !== undefined) bringRecording(store, file)
  })
  input.click()
}

/** A host without a dialog leaves it to the button on the page of recordings. */
async function askHost({ store, host }: Files): Promise<void> {
  const answer = await host.call('openRecording', {})
  if (answer.kind === 'failed') notify(store, { about: 'recording', text: answer.reason })
  else if (answer.kind === 'choose') showPage(store, 'logs')
  else if (answer.kind === 'recording') bringRecording(store, await fileOf(host, answer))
}
