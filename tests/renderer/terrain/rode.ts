import { axleBudget } from '../../../core/budget/budget.ts'
import { cornerModel } from '../../../core/corner/corner.ts'
import type { Axle, Terrain } from '../../../core/plan/schema.ts'
import { ride } from '../../../core/ride/ride.ts'
import type { RiddenSetup } from '../../../renderer/charts/terrain/terrain-scene.ts'
import type { MeasureText } from '../../../renderer/charts/text/span.ts'

export const terrains = {
  whoops: { id: 'whoops', name: 'Whoops', kind: 'whoops', spacing: 6, height: 0.25, speed: 9, count: 4 },
  landing: { id: 'landing', name: 'Landing', kind: 'landing', drop: 0.5 },
  ledge: { id: 'ledge', name: 'Ledge', kind: 'ledge', height: 0.15, length: 1, speed: 8 },
  rough: { id: 'rough', name: 'Rough road', kind: 'rough', isoClass: 'E', speed: 15, duration: 20, seed: 3 },
} as const satisfies Record<Terrain['kind'], Terrain>

/** A text as wide as most fonts make it. */
export const measure: MeasureText = (text, size, weight) => text.length * size * (weight === 600 ? 0.6 : 0.55)

/** An axle with what it did on a terrain. */
export function rode(name: string, axle: Axle, terrain: Terrain): RiddenSetup {
  const model = cornerModel(axle.corner)
  const outcome = ride(model, terrain)
  if (!outcome.ok) throw new Error(`The sample could not be ridden: ${outcome.reason}.`)
  return {
    name,
    model,
    budget: axleBudget(axle, { units: 'inch' }, model),
    ride: { ...outcome, car: null, pitch: null },
  }
}
