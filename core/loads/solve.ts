import { restingPosition } from '../corner/static-position.ts'
import type { AxleId } from '../plan/schema.ts'
import { GRAVITY } from '../units/constants.ts'
import { type LoadedAxle, loadedAxle } from './axle-in-roll.ts'
import type { AxleState, SideState } from './axle-state.ts'
import { carInRoll } from './car-in-roll.ts'
import type { Demand } from './demand.ts'
import type { AxleModel, SetupModel } from './setup-model.ts'

/** One axle under loads. Positions and lengths in m of wheel travel, positions from ride height. */
export interface AxleUnderLoad {
  readonly id: AxleId
  /** Without loads. */
  readonly rest: number
  /** The outer wheel, within the travel; in roll the one that goes up. */
  readonly wheel: number
  /** From static. */
  readonly used: number
  /** The outer stop's position; on a solid axle in roll not the wheel's. */
  readonly atStop: number
  /** What is left before pad and stop meet, negative when they have; null without a stop in the travel. */
  readonly beforeStop: number | null
  /** What is left before something ends the travel, 0 or more. */
  readonly beforeBump: number
  /** Sprung weight on each wheel with its loads, before roll, N. */
  readonly weight: number
  /** Both sides; terrain aside, which asks for travel whatever the forces. */
  readonly state: AxleState
}

export type Solved =
  | {
      readonly outcome: 'settles'
      /** Roll angle, rad, positive when the turn's lateral acceleration is; 0 without cornering. */
      readonly roll: number
      readonly axles: readonly AxleUnderLoad[]
    }
  /** No equilibrium below 20° of roll. */
  | { readonly outcome: 'rolls over' }
  /** Braking moves weight between two axles, and the plan has one. */
  | { readonly outcome: 'needs two axles' }

/** Positions closer than this are one place, m. */
const NEAR = 1e-9

/** A position that is a rounding away from where the stop meets or the travel ends is there. */
function settled(position: number, { model }: AxleModel): number {
  const places = [model.engagement, model.bump, model.droop]
  return places.find(place => place !== null && Math.abs(place - position) < NEAR) ?? position
}

/** Weight on each wheel of an axle, N: its own, the payload's, and what braking brings or takes. */
function weightOf({ axle, weight }: AxleModel, demand: Demand, shift: number): number {
  const payload = (demand.masses[axle.id] * GRAVITY) / 2
  return weight + payload + (axle.id === 'front' ? shift : -shift) / 2
}

/** What braking moves from the rear axle to the front one, N (T. D. Gillespie, Fundamentals of Vehicle Dynamics, SAE 1992, ch. 1: W·a/g·h/L). */
function brakingShift({ axles, vehicle }: SetupModel, demand: Demand): number {
  const mass = axles.reduce((sum, { axle }) => sum + 2 * axle.corner.cornerMass + demand.masses[axle.id], 0)
  return (mass * demand.deceleration * vehicle.cgHeight) / vehicle.wheelbase
}

function underLoad(
  axle: AxleModel,
  loaded: LoadedAxle,
  state: AxleState,
  side: SideState,
  amplitude: number,
): AxleUnderLoad {
  const { model, rest } = axle
  const middle = (state.outer.wheel + state.inner.wheel) / 2
  const slope = (side.wheel - middle) / (axle.axle.track / 2)
  const room = Math.max(0, Math.min(...loaded.stations.map(({ high, arm }) => high - middle - slope * arm)))
  const lift = Math.min(amplitude, room)
  const wheel = settled(Math.min(model.bump, Math.max(model.droop, side.wheel + lift)), axle)
  const atStop = settled(side.atStop + lift, axle)
  return {
    id: axle.axle.id,
    rest,
    wheel,
    used: wheel - rest,
    atStop,
    beforeStop: model.engagement === null ? null : model.engagement - atStop,
    beforeBump: room - lift,
    weight: loaded.weight,
    state,
  }
}

/**
 * A setup under loads taken at once: payload and braking set what each axle carries, cornering finds one roll angle for the chassis with every
 * axle heaved to carry that, and terrain lifts the wheel from there. Slow gas; each axle from its static position, kept to its travel.
 */
export function solve(setup: SetupModel, demand: Demand): Solved {
  const { axles, vehicle } = setup
  if (demand.deceleration !== 0 && axles.length < 2) return { outcome: 'needs two axles' }
  const shift = brakingShift(setup, demand)
  const loaded = axles.map(axle => {
    const weight = weightOf(axle, demand, shift)
    return loadedAxle(axle.axle, axle.model, weight, restingPosition(axle.model, weight, axle.rest))
  })
  const sprung = axles.reduce((sum, axle) => sum + 2 * (axle.weight / GRAVITY) + demand.masses[axle.axle.id], 0)
  const aboveAxis = vehicle.cgHeight - vehicle.rollAxisHeight
  const turn = sprung * aboveAxis * Math.abs(demand.lateral)
  const car = carInRoll(loaded, Math.abs(turn), sprung * aboveAxis * GRAVITY)
  if (car === null) return { outcome: 'rolls over' }
  const outward = turn >= 0
  return {
    outcome: 'settles',
    roll: car.roll === 0 ? 0 : car.roll * (outward ? 1 : -1) * Math.sign(demand.lateral),
    axles: axles.map((axle, i) => {
      const state = car.axles[i]!
      return underLoad(axle, loaded[i]!, state, outward ? state.outer : state.inner, demand.amplitude)
    }),
  }
}
