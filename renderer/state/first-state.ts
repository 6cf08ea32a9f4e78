import type { Reply } from '../../electron/contract/contract.ts'
import { ready, viewOf, withDocument } from './documents.ts'
import { emptyHistory } from './history.ts'
import type { State } from './state.ts'

/** The first state of the window. */
export function firstState(reply: Reply<'start'>): State {
  const made = ready(reply.document)
  const { plan, document } = made
  const base: State = {
    plan,
    history: emptyHistory,
    view: viewOf(plan),
    document,
    settings: reply.settings,
    recents: reply.recents,
    demos: reply.demos,
    about: reply.about,
    notices: [],
    hostGone: false,
  }
  const first = withDocument(base, reply.document, reply.report, made)
  const { page } = reply.settings
  return page === undefined ? first : { ...first, view: { ...first.view, page } }
}
