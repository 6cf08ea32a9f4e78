import { measurementPaths } from '../../core/plan/measurements.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { startingPlan } from '../../core/plan/starting.ts'
import type { Reply } from '../../electron/contract/contract.ts'
import { newDocument, ready, viewOf, withDocument } from './documents.ts'
import { emptyHistory } from './history.ts'
import type { State } from './state.ts'

/** Stands in where there is nothing to show: plausible values of a rear corner, all assumed. */
const blankPlan = (): Plan => {
  const plan = startingPlan({
    title: '',
    units: 'inch',
    axle: 'rear',
    suspension: 'independent',
    cornerMass: 500,
    shockStroke: 0.3048,
    shaftShowing: 0.16,
    ratio: { shock: 0.7, stop: 0.6 },
    springRates: [44_000, 61_000],
    stop: { stroke: 0.0762, gap: 0.06 },
  })
  for (const setup of plan.setups) for (const axle of setup.axles) axle.assumed = measurementPaths(axle)
  return plan
}

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
