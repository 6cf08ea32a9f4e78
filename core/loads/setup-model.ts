import { sprungWeight } from '../budget/budget.ts'
import { cornerModel } from '../corner/corner.ts'
import type { CornerModel } from '../corner/corner-model.ts'
import { restingPosition } from '../corner/static-position.ts'
import type { Axle, Plan, Setup, Vehicle } from '../plan/schema.ts'

/** One axle of a setup with its corner put together and where it rests without loads. */
export interface AxleModel {
  readonly axle: Axle
  readonly model: CornerModel
  /** Sprung weight on one wheel, N. */
  readonly weight: number
  /** Static position, m. */
  readonly rest: number
}

/** A setup ready to be loaded, as often as wanted. */
export interface SetupModel {
  readonly id: string
  readonly vehicle: Vehicle
  readonly axles: readonly AxleModel[]
}

/** @param models of the setup's axles in their order, if already at hand */
export function setupModel(plan: Plan, setup: Setup, models?: readonly CornerModel[]): SetupModel {
  const axles = setup.axles.map((axle, i): AxleModel => {
    const model = models?.[i] ?? cornerModel(axle.corner)
    const weight = sprungWeight(model)
    return { axle, model, weight, rest: restingPosition(model, weight) }
  })
  return { id: setup.id, vehicle: plan.vehicle, axles }
}
