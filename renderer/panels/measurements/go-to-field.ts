import { normal } from '../../state/place.ts'
import type { Store } from '../../state/store.ts'
import { fold } from '../../state/view.ts'
import { focusField } from './focus-field.ts'
import { groupOf } from './groups.ts'
import { column } from './late-column.ts'

/** Opens the group a field is in and puts the keyboard there; a path of several fields means the first of them. */
export function goToField(store: Store, path: string): void {
  const field = normal(path)
  const group = groupOf(field)
  if (group !== null) fold(store, { [group.id]: true })
  const focus = (): void =>
    focusField(field, group === null ? undefined : `#group-${group.id} button, #group-${group.id} input`)
  if (column.loaded() !== null) focus()
  // The fields are on their way: they are drawn in the frame before. Where they cannot be fetched, their column says so.
  else
    column.load().then(
      () => requestAnimationFrame(focus),
      () => undefined,
    )
}
