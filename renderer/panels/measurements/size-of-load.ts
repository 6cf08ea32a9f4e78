import { sizesOf } from '../../state/demands.ts'
import { shownAxle } from '../../state/selectors.ts'
import type { Store } from '../../state/store.ts'

/** The field of a load's size, on the axle shown where it has one for each; null when the plan has no such load. */
export function sizeOfLoad(store: Store, id: string): string | null {
  const state = store.read()
  const at = state.plan.loads.findIndex(load => load.id === id)
  const load = state.plan.loads[at]
  if (load === undefined) return null
  const sizes = sizesOf[load.kind]
  return `loads.${at}.${sizes.find(each => each.endsWith(`.${shownAxle(state).axle.id}`)) ?? sizes[0]}`
}
