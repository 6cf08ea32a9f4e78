import type { Axle } from '../../core/plan/schema.ts'
import { undo } from './history.ts'
import { shownAxle, shownSetup } from './selectors.ts'
import type { State } from './state.ts'

/** The axle shown as it was when it last had something, as far back as the steps to undo go; null if it never had. */
export function axleWhen(state: State, had: (axle: Axle) => boolean): Axle | null {
  const setup = shownSetup(state).setup.id
  const id = shownAxle(state).axle.id
  for (let at = undo(state.plan, state.history); at !== null; at = undo(at.plan, at.history)) {
    const axle = at.plan.setups.find(each => each.id === setup)?.axles.find(each => each.id === id)
    if (axle !== undefined && had(axle)) return axle
  }
  return null
}
