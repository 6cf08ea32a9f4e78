import type { AxleId, ChosenRanges } from '../../core/plan/schema.ts'
import { edit, type Outcome } from './edit.ts'
import type { Store } from './store.ts'

/**
 * Keeps what may be changed on an axle in the plan, for every setup of it; null goes back to what is usual.
 * @param label what was chosen, for undo: `spacers 1/8 in to 2 in`
 */
export const chooseRanges = (store: Store, axle: AxleId, chosen: ChosenRanges | null, label: string): Outcome =>
  edit(store, `may be changed: ${label}`, plan => {
    const ranges = { ...plan.ranges }
    if (chosen === null) delete ranges[axle]
    else ranges[axle] = { ...chosen, stops: [...chosen.stops], springs: [...chosen.springs] }
    if (Object.keys(ranges).length === 0) delete plan.ranges
    else plan.ranges = ranges
  })
