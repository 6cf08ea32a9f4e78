import type { Axle, Plan, Setup } from '../../core/plan/schema.ts'
import { placeIn } from './place.ts'
import { type AxleResults, axleResults, modelOf } from './results.ts'
import type { State, View } from './state.ts'

/** As much of the state as results are worked out from. */
export interface Looked {
  readonly plan: Plan
  readonly view: Pick<View, 'setup' | 'axle' | 'compared' | 'loadsOff'>
}

export const lookedAt = ({ plan, view: { setup, axle, compared, loadsOff } }: State): Looked => ({
  plan,
  view: { setup, axle, compared, loadsOff },
})

export const sameLooked = (a: Looked, b: Looked): boolean =>
  a.plan === b.plan &&
  a.view.setup === b.view.setup &&
  a.view.axle === b.view.axle &&
  a.view.compared === b.view.compared &&
  a.view.loadsOff === b.view.loadsOff

interface Here {
  readonly setup: { readonly setup: Setup; readonly index: number }
  readonly axle: { readonly axle: Axle; readonly index: number }
}

/** What was found last: every field asks at every keystroke, and they all ask the same. */
let last: { plan: Plan; setup: string; axle: string; here: Here } | null = null

const placed = (items: readonly { readonly id: string }[], id: string): number =>
  Math.max(
    0,
    items.findIndex(item => item.id === id),
  )

function here({ plan, view }: Looked): Here {
  if (last !== null && last.plan === plan && last.setup === view.setup && last.axle === view.axle) return last.here
  const atSetup = placed(plan.setups, view.setup)
  const setup = plan.setups[atSetup]!
  const atAxle = placed(setup.axles, view.axle)
  const found = { setup: { setup, index: atSetup }, axle: { axle: setup.axles[atAxle]!, index: atAxle } }
  last = { plan, setup: view.setup, axle: view.axle, here: found }
  return found
}

/** The setup shown, and its number in the plan. */
export const shownSetup = (state: Looked): Here['setup'] => here(state).setup

/** The axle shown, and its number in the setup. */
export const shownAxle = (state: Looked): Here['axle'] => here(state).axle

export const resultsShown = (state: Looked): AxleResults => axleResults(shownAxle(state).axle, state.plan)

/** The setup drawn as a ghost, if it has the axle shown. */
export function comparedSetup(state: Looked): { setup: Setup; axle: Axle; results: AxleResults } | null {
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
  const model = modelOf(shownAxle(state).axle.corner)
  return Math.min(model.bump, Math.max(model.droop, state.view.wheel))
}

/** Where a field of the axle shown stands in the plan. */
export const placeOf = (state: State, field: string): string =>
  placeIn(field, shownSetup(state).index, shownAxle(state).index)

/** What a setup or an axle is called by, whatever is measured in it. */
interface Named {
  readonly id: string
  readonly name?: string
}

export const sameNames = (a: readonly Named[], b: readonly Named[]): boolean =>
  a === b || (a.length === b.length && a.every(({ id, name }, i) => id === b[i]!.id && name === b[i]!.name))
