import { axleBudget } from '../../core/budget/budget.ts'
import type { AxleBudget } from '../../core/budget/results.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import type { CornerModel } from '../../core/corner/corner-model.ts'
import type { Axle, Corner, UnitSystem } from '../../core/plan/schema.ts'

/** Plans are never changed in place, so an axle that is the same object has the same results: they are worked out once. */

const models = new WeakMap<Corner, CornerModel>()

export function modelOf(corner: Corner): CornerModel {
  const known = models.get(corner)
  if (known !== undefined) return known
  const model = cornerModel(corner)
  models.set(corner, model)
  return model
}

export interface AxleResults {
  readonly budget: AxleBudget
  readonly model: CornerModel
}

const results: Record<UnitSystem, WeakMap<Axle, AxleResults>> = { inch: new WeakMap(), metric: new WeakMap() }

/** @param system units the findings speak in */
export function axleResults(axle: Axle, system: UnitSystem): AxleResults {
  const known = results[system].get(axle)
  if (known !== undefined) return known
  const model = modelOf(axle.corner)
  const found = { model, budget: axleBudget(axle, system, model) }
  results[system].set(axle, found)
  return found
}
