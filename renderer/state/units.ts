import type { UnitSystem } from '../../core/plan/schema.ts'
import { edit } from './edit.ts'
import type { Store } from './store.ts'

export const showUnits = (store: Store, units: UnitSystem) =>
  edit(store, units === 'inch' ? 'inches' : 'metric', plan => {
    plan.units = units
  })
