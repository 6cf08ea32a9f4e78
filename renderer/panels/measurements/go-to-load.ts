import type { Store } from '../../state/store.ts'
import { goToField } from './go-to-field.ts'
import { sizeOfLoad } from './size-of-load.ts'

/** Puts the keyboard on the size of a load. */
export function goToLoad(store: Store, id: string): void {
  const field = sizeOfLoad(store, id)
  if (field !== null) goToField(store, field)
}
