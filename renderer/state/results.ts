import { axleBudget } from '../../core/budget/budget.ts'
import type { AxleBudget } from '../../core/budget/results.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import type { CornerModel } from '../../core/corner/corner-model.ts'
import type { Axle, Corner, Plan } from '../../core/plan/schema.ts'
import { onceFor } from './once-for.ts'

/** Plans are never changed in place, so an axle that is the same object has the same results: they are worked out once. */

export const modelOf: (corner: Corner) => CornerModel = onceFor(cornerModel)

export interface AxleResults {
  readonly budget: AxleBudget
  readonly model: CornerModel
}

type Asked = Pick<Plan, 'units' | 'targets'>

const results = new WeakMap<Axle, { asked: Asked; found: AxleResults }>()

/** @param asked units the findings speak in, and what is aimed at */
export function axleResults(axle: Axle, { units, targets }: Asked): AxleResults {
  const known = results.get(axle)
  if (known !== undefined && known.asked.units === units && known.asked.targets === targets) return known.found
  const model = modelOf(axle.corner)
  const asked = { units, targets }
  const found = { model, budget: axleBudget(axle, asked, model) }
  results.set(axle, { asked, found })
  return found
}
