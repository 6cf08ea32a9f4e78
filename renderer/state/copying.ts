import { edit, type Outcome } from './edit.ts'
import { assumedList, isAssumed, isAtTop, placeIn, putAt, valueAt } from './place.ts'
import { placeOf, shownAxle, shownSetup } from './selectors.ts'
import type { State } from './state.ts'
import type { Store } from './store.ts'

export interface Elsewhere {
  readonly setup: string
  readonly name: string
  readonly value: unknown
}

/** What the other setups have where a field of the shown one stands, where it differs. */
export function elsewhere(state: State, field: string): Elsewhere[] {
  if (isAtTop(field)) return []
  const here = valueAt(state.plan, placeOf(state, field))
  const { axle } = shownAxle(state)
  const { setup: shown } = shownSetup(state)
  return state.plan.setups.flatMap((setup, i) => {
    const at = setup.axles.findIndex(({ id }) => id === axle.id)
    const value = valueAt(state.plan, placeIn(field, i, at))
    return setup === shown || at < 0 || value === undefined || Object.is(value, here)
      ? []
      : [{ setup: setup.id, name: setup.name, value }]
  })
}

/** Gives another setup what the shown one has in a field, and the mark whether it was measured. */
export function copyTo(store: Store, name: string, field: string, to: string): Outcome {
  const state = store.read()
  const from = placeOf(state, field)
  const { axle } = shownAxle(state)
  const setup = state.plan.setups.findIndex(({ id }) => id === to)
  const target = state.plan.setups[setup]
  if (target === undefined) return []
  const place = placeIn(
    field,
    setup,
    target.axles.findIndex(({ id }) => id === axle.id),
  )
  return edit(store, `${name} in ${target.name}`, plan => {
    putAt(plan, place, valueAt(state.plan, from))
    const list = assumedList(state.plan, place)
    if (list === null) return
    const kept = ((valueAt(plan, `${list.holder}.assumed`) ?? []) as string[]).filter(entry => entry !== list.name)
    const next = isAssumed(state.plan, from) ? [...kept, list.name] : kept
    putAt(plan, `${list.holder}.assumed`, next.length === 0 ? undefined : next)
  })
}
