import { sizesOf } from '../../state/demands.ts'
import { shownAxle } from '../../state/selectors.ts'
import type { Store } from '../../state/store.ts'
import { goToField } from './go-to-field.ts'

/** Puts the keyboard on the size of a load; on the axle shown, where it has one for each. */
export function goToLoad(store: Store, id: string): void {
  const state = store.read()
  const at = state.plan.loads.findIndex(load => load.id === id)
  const load = state.plan.loads[at]
  if (load === undefined) return
  const sizes = sizesOf[load.kind]
  const size = sizes.find(each => each.endsWith(`.${shownAxle(state).axle.id}`)) ?? sizes[0]
  goToField(store, `loads.${at}.${size}`)
}
