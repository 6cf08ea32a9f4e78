import { blankPlan } from '../../core/plan/starting.ts'
import type { Reply } from '../../electron/contract/contract.ts'
import { newDocument, ready, viewOf, withDocument } from './documents.ts'
import { emptyHistory } from './history.ts'
import type { State } from './state.ts'

/** The first state of the window. A document that cannot be read is told of, with a plan to start from in its place. */
export function firstState(reply: Reply<'start'>): State {
  const made = ready(reply.document)
  const plan = made.ok ? made.plan : blankPlan()
  const base: State = {
    plan,
    history: emptyHistory,
    view: viewOf(plan),
    document: made.ok ? made.document : newDocument(plan),
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
