import type { Plan } from '../../core/plan/schema.ts'
import type { Opened } from '../../electron/contract/shapes.ts'
import { newDocument, viewOf, withOpened } from './documents.ts'
import { type Files, guarded, leave } from './files.ts'
import { emptyHistory } from './history.ts'
import { withoutNotice } from './notices.ts'
import { fetchChecks } from './plan-checks.ts'
import { openDialog } from './view.ts'

/** Shows what was opened, or tells why not. */
export async function arrive({ store }: Pick<Files, 'store'>, answer: Parameters<typeof withOpened>[1]): Promise<void> {
  await fetchChecks()
  store.write(withOpened(store.read(), answer))
}

export async function refreshRecents(files: Files): Promise<void> {
  const reply = await guarded(files, 'recents', () => files.host.call('recents', {}))
  if (reply !== null) files.store.write({ ...files.store.read(), recents: reply.recents })
}

export const open = (files: Files) =>
  guarded(files, 'open', async () => {
    await leave(files)
    const answer = await files.host.call('open', {})
    if (answer.kind === 'cancelled') return
    if (answer.kind === 'choose') openDialog(files.store, { kind: 'choose', purpose: 'open' })
    else await arrive(files, answer)
  })

export const openToken = (files: Files, token: string) =>
  guarded(files, 'open', async () => {
    await leave(files)
    await arrive(files, await files.host.call('openFile', { token }))
  })

export const openDropped = (files: Files, file: File) =>
  guarded(files, 'open', async () => {
    await leave(files)
    await arrive(files, await files.host.drop(file))
  })

/** Shows what is here already: what could be read of a damaged file. */
export const show = (files: Files, opened: Opened) =>
  guarded(files, 'open', async () => {
    await leave(files)
    await arrive(files, opened)
    files.keeper.touch()
  })

/** Shows a plan that is not in a file yet. */
export async function startPlan(files: Files, plan: Plan): Promise<void> {
  await leave(files)
  const { store } = files
  store.write({ ...store.read(), plan, history: emptyHistory, document: newDocument(plan), view: viewOf(plan) })
  files.keeper.touch()
}

/** Back to what the file holds: the kept copy is what the person does not want. */
export const backToFile = (files: Files) =>
  guarded(files, 'recovered', async () => {
    const { store, host } = files
    const { document, view } = store.read()
    const plan = document.savedPlan
    if (plan === null) return
    await host.call('forget', { key: document.key })
    const next = { ...store.read(), plan, history: emptyHistory, document: { ...document, recovered: false } }
    store.write(withoutNotice({ ...next, view: { ...viewOf(plan), page: view.page } }, 'recovered'))
  })

/** Shows what somebody else wrote into the file meanwhile. What is here is kept, and the host puts it among the recent plans. */
export const takeTheirs = (files: Files) =>
  guarded(files, 'open', async () => {
    const { store, host } = files
    const { token } = store.read().document
    openDialog(store, null)
    if (token === null) return
    files.keeper.touch()
    await files.keeper.flush()
    await arrive(files, await host.call('openFile', { token }))
  })
