import { measurementPaths } from '../../core/plan/measurements.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { isAssumed, placeIn } from './place.ts'

export interface Counts {
  readonly taken: number
  readonly assumed: number
}

const VEHICLE = ['vehicle.wheelbase', 'vehicle.cgHeight', 'vehicle.rollAxisHeight']

/** How many measurements of one axle and the vehicle were taken, and how many are assumed. */
export function countMeasurements(plan: Plan, setup: number, axle: number): Counts {
  const fields = [...measurementPaths(plan.setups[setup]!.axles[axle]!), ...VEHICLE]
  const assumed = fields.filter(field => isAssumed(plan, placeIn(field, setup, axle))).length
  return { taken: fields.length - assumed, assumed }
}
