import { cornerModel } from '../corner/corner.ts'
import type { CornerModel } from '../corner/corner-model.ts'
import type { AxleId, Plan } from '../plan/schema.ts'
import type { RideOutcome } from './results.ts'
import { ride } from './ride.ts'
import type { RunOptions } from './simulate.ts'
import type { Course } from './terrain.ts'

/** One axle of a setup, driven. */
export interface AxleRide {
  readonly id: AxleId
  readonly model: CornerModel
  readonly outcome: RideOutcome
}

export interface SetupRide {
  readonly id: string
  readonly axles: readonly AxleRide[]
}

/** Every setup and axle of a plan over one course, each axle as a quarter car. */
export const planRides = (plan: Plan, course: Course, options: RunOptions = {}): SetupRide[] =>
  plan.setups.map(({ id, axles }) => ({
    id,
    axles: axles.map(axle => {
      const model = cornerModel(axle.corner)
      return { id: axle.id, model, outcome: ride(model, course, options) }
    }),
  }))
