import { cornerModel } from '../corner/corner.ts'
import type { CornerModel } from '../corner/corner-model.ts'
import type { AxleId, Corner, Plan } from '../plan/schema.ts'
import type { CarOutcome, CarRide, CornerRide } from './results.ts'
import { ride } from './ride.ts'
import type { RunOptions } from './simulate.ts'
import type { Course } from './terrain.ts'
import { rideCar } from './whole-car.ts'

/** What came of one axle: its ride, or why there is none. */
export type AxleOutcome = ({ readonly ok: true } & CornerRide) | Exclude<CarOutcome, CarRide>

/** One axle of a setup, driven. */
export interface AxleRide {
  readonly id: AxleId
  readonly model: CornerModel
  readonly outcome: AxleOutcome
  /** The same again with another corner on this axle. */
  readonly again: (corner: Corner) => AxleOutcome
}

export interface SetupRide {
  readonly id: string
  readonly axles: readonly AxleRide[]
  /** How far the body turned, nose down positive, rad: least and most; null where each axle moved by itself. */
  readonly pitch: { readonly least: number; readonly most: number } | null
}

const modelled = (plan: Plan) =>
  plan.setups.map(({ id, axles }) => ({
    id,
    axles: axles.map(axle => ({ id: axle.id, model: cornerModel(axle.corner) })),
  }))

/** Every setup and axle of a plan over one course, each axle as a quarter car. */
export const planRides = (plan: Plan, course: Course, options: RunOptions = {}): SetupRide[] =>
  modelled(plan).map(({ id, axles }) => ({
    id,
    axles: axles.map(axle => ({
      ...axle,
      outcome: ride(axle.model, course, options),
      again: corner => ride(cornerModel(corner), course, options),
    })),
    pitch: null,
  }))

/** Every setup of a plan over one course, its axles under one body in heave and pitch. */
export const planCarRides = (plan: Plan, course: Course, options: RunOptions = {}): SetupRide[] =>
  modelled(plan).map(({ id, axles }) => {
    const drive = (driven: typeof axles) => rideCar(driven, plan.vehicle.wheelbase, course, options)
    const of = (outcome: CarOutcome, i: number): AxleOutcome =>
      outcome.ok ? { ok: true, ...outcome.axles[i]! } : outcome
    const outcome = drive(axles)
    return {
      id,
      axles: axles.map((axle, i) => ({
        ...axle,
        outcome: of(outcome, i),
        again: corner => of(drive(axles.with(i, { id: axle.id, model: cornerModel(corner) })), i),
      })),
      pitch: outcome.ok
        ? {
            least: outcome.pitch.reduce((least, now) => Math.min(least, now), 0),
            most: outcome.pitch.reduce((most, now) => Math.max(most, now), 0),
          }
        : null,
    }
  })
