import { formatMeasure } from '../../../core/units/format.ts'
import { plainName } from '../../fields/field-spec.ts'
import { fieldTable, generic } from '../../fields/field-table.ts'
import { stepped } from '../../fields/stepping.ts'
import { put } from '../../state/edit.ts'
import { valueAt } from '../../state/place.ts'
import type { Store } from '../../state/store.ts'
import { sizeOfLoad } from './size-of-load.ts'

/**
 * The size of a load a mark larger or smaller, by the marks its field steps by; nothing where it would make no sense.
 * @param gesture steps of one hold or drag share it, and are undone as one
 */
export function stepLoad(store: Store, id: string, direction: 1 | -1, big: boolean, gesture: string): void {
  const { plan } = store.read()
  const field = sizeOfLoad(store, id)
  const spec = field === null ? undefined : fieldTable[generic(field)]
  if (field === null || spec === undefined) return
  const value = valueAt(plan, field)
  const next = stepped(typeof value === 'number' ? value : 0, spec.quantity, plan.units, direction, big)
  put(
    store,
    `${plainName(spec)} ${formatMeasure(next, spec.quantity, plan.units, { unit: true })}`,
    field,
    next,
    gesture,
  )
}
