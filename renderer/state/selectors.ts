import type { Axle, Setup } from '../../core/plan/schema.ts'
import { normal, placeIn } from './place.ts'
import { type AxleResults, axleResults } from './results.ts'
import type { State } from './state.ts'

/** The setup shown, and its number in the plan. */
export function shownSetup({ plan, view }: State): { setup: Setup; index: number } {
  const index = Math.max(
    0,
    plan.setups.findIndex(({ id }) => id === view.setup),
  )
  return { setup: plan.setups[index]!, index }
}

const axleIndex = (setup: Setup, { view }: State): number =>
  Math.max(
    0,
    setup.axles.findIndex(({ id }) => id === view.axle),
  )

/** The axle shown, and its number in the setup. */
export function shownAxle(state: State): { axle: Axle; index: number } {
  const { setup } = shownSetup(state)
  const index = axleIndex(setup, state)
  return { axle: setup.axles[index]!, index }
}

export const resultsShown = (state: State): AxleResults => axleResults(shownAxle(state).axle, state.plan)

/** The setup drawn as a ghost, if it has the axle shown. */
export function comparedSetup(state: State): { setup: Setup; axle: Axle; results: AxleResults } | null {
  const { plan, view } = state
  const present = shownSetup(state).setup
  const { axle: shown } = shownAxle(state)
  const setup = plan.setups.find(({ id }) => id === view.compared)
  const axle = setup?.axles.find(({ id }) => id === shown.id)
  if (setup === undefined || axle === undefined || setup === present) return null
  return { setup, axle, results: axleResults(axle, plan) }
}

/** The wheel position shown, kept to the travel of the axle shown. */
export function shownWheel(state: State): number {
  const { model } = resultsShown(state)
  return Math.min(model.bump, Math.max(model.droop, state.view.wheel))
}

/** Where a field of the axle shown stands in the plan. */
export const placeOf = (state: State, field: string): string =>
  placeIn(field, shownSetup(state).index, shownAxle(state).index)

/** The finding pointed at, with its field's name as fields have it. */
export function focusedFinding(state: State): { id: string; field: string } | null {
  const { finding } = state.view
  if (finding === null) return null
  const found = resultsShown(state).budget.findings.find(({ id }) => id === finding)
  return found === undefined ? null : { id: found.id, field: normal(found.field) }
}
