import { formatPlan } from '../../core/plan/file-text.ts'
import type { Plan } from '../../core/plan/schema.ts'
import type { Reply } from '../../electron/contract/contract.ts'
import { closeGesture } from './edit.ts'
import { type Files, guarded } from './files.ts'
import { notify, withoutNotice } from './notices.ts'
import type { DocumentState } from './state.ts'
import type { Store } from './store.ts'
import { openDialog } from './view.ts'

type Saved = Extract<Reply<'save'>, { kind: 'saved' }>

const patchDocument = (store: Store, change: Partial<DocumentState>): void => {
  const state = store.read()
  store.write({ ...state, document: { ...state.document, ...change } })
}

/** The plan as it was sent is what the file holds; the plan on screen may have moved on meanwhile. */
function settle(store: Store, plan: Plan, { key, token, name, basis, savedAt, report }: Saved): void {
  if (key !== store.read().document.key) store.write(withoutNotice(store.read(), 'shared'))
  patchDocument(store, { key, token, name, basis, savedAt, savedPlan: plan, recovered: false })
  store.write(withoutNotice(withoutNotice(store.read(), 'save'), 'recovered'))
  openDialog(store, null)
  if (report !== undefined) notify(store, { about: 'report', severity: 'news', text: report })
}

const failed = (store: Store, reason: string): void =>
  notify(store, { about: 'save', text: reason, steps: [{ label: 'Save somewhere else', remedy: { kind: 'saveAs' } }] })

/** Runs one save; a second one started meanwhile is left out, for the first has not failed yet. */
async function once(files: Files, work: (plan: Plan, document: DocumentState) => Promise<void>): Promise<void> {
  const { store } = files
  closeGesture(store)
  const { plan, document } = store.read()
  if (document.saving) return
  patchDocument(store, { saving: true })
  await guarded(files, 'save', () => work(plan, document))
  patchDocument(store, { saving: false })
}

export const saveAs = (files: Files): Promise<void> =>
  once(files, async (plan, { key, token, name }) => {
    const { store, host } = files
    const answer = await host.call('saveAs', { key, token, name, text: formatPlan(plan) })
    if (answer.kind === 'saved') settle(store, plan, answer)
    else if (answer.kind === 'choose') openDialog(store, { kind: 'choose', purpose: 'save' })
    else if (answer.kind === 'failed') failed(store, answer.reason)
  })

/** @param replace overwrite what somebody else wrote into the file meanwhile */
export function save(files: Files, replace = false): Promise<void> {
  const { token } = files.store.read().document
  if (token === null) return saveAs(files)
  return once(files, async (plan, { key, basis }) => {
    const { store, host } = files
    const answer = await host.call('save', { key, token, text: formatPlan(plan), basis, replace })
    if (answer.kind === 'saved') settle(store, plan, answer)
    else if (answer.kind === 'failed') failed(store, answer.reason)
    else openDialog(store, { kind: 'changed', savedAt: answer.savedAt })
  })
}

export interface SaveIn {
  readonly folder: string
  readonly name: string
  readonly replace: boolean
}

/** Saves where the window's own chooser stands. Says what stands in the way: a file of that name, or a reason. */
export async function saveIn(files: Files, where: SaveIn): Promise<'saved' | 'exists' | { reason: string }> {
  let end: 'saved' | 'exists' | { reason: string } = { reason: 'A save is under way.' }
  await once(files, async (plan, { key, token }) => {
    const answer = await files.host.call('saveIn', { key, token, ...where, text: formatPlan(plan) })
    if (answer.kind === 'saved') settle(files.store, plan, answer)
    end = answer.kind === 'failed' ? { reason: answer.reason } : answer.kind
  })
  return end
}
