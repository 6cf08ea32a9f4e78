import type { CornerModel } from '../corner/corner-model.ts'
import { CornerInMotion, type CornerParts, cornerParts } from './corner-in-motion.ts'
import { CornerLog } from './corner-log.ts'
import type { CornerRide, NoRide, RideOutcome } from './results.ts'
import { drive, type RunOptions, SAMPLE } from './simulate.ts'
import { beginning } from './start.ts'
import { type Course, roadOf } from './terrain.ts'
import { type Rig, Vehicle } from './vehicle.ts'

const known = new WeakMap<CornerModel, CornerParts>()

/** A corner ready to be driven. Its tables are worked out once for each model. */
export function cornerInMotion(model: CornerModel): CornerInMotion {
  let parts = known.get(model)
  if (parts === undefined) {
    parts = cornerParts(model)
    known.set(model, parts)
  }
  return new CornerInMotion(model, parts)
}

export interface Driven {
  readonly ok: true
  readonly corners: readonly CornerRide[]
  readonly broughtAlong: number
  readonly steps: number
  readonly evaluations: number
}

/** Drives a body on its corners over a course, from rest or as it lands, and keeps what each corner did. */
export function driven(rig: Rig, course: Course, options: RunOptions): Driven | NoRide {
  const vehicle = new Vehicle(rig)
  const start = beginning(vehicle, course.kind === 'landing' ? course.drop : null)
  const duration = Math.max(...vehicle.roads.map(road => road.duration))
  const samples = Math.ceil(duration / (options.sample ?? SAMPLE)) + 2
  const logs = vehicle.corners.map((corner, i) => new CornerLog(corner, i, vehicle.steered, samples))
  const outcome = drive(
    vehicle,
    start,
    {
      moment: (time, state, moment) => {
        for (let i = 0; i < logs.length; i += 1) logs[i]!.moment(time, state, moment === 'sample')
      },
      worked: state => {
        for (let i = 0; i < logs.length; i += 1) logs[i]!.worked(state)
      },
      touch: (i, time, pushedIn, state) => logs[i]!.touch(time, pushedIn, state),
      part: i => logs[i]!.part(),
      bottom: i => logs[i]!.bottom(),
    },
    options,
  )
  if (!outcome.ok) return outcome
  const { end, steps, evaluations } = outcome
  return {
    ok: true,
    corners: logs.map(log => log.result(end, duration)),
    broughtAlong: vehicle.mechanical(start) - vehicle.mechanical(end),
    steps,
    evaluations,
  }
}

/**
 * Drives one corner over a course and says what it did: a quarter car, F from the fast gas law, dampers through the motion ratio, the stop as a
 * state of its own, a tire that leaves the ground, steel beyond full bump and droop. Starts at rest; a landing at full droop, its tire
 * just touching.
 */
export function ride(model: CornerModel, course: Course, options: RunOptions = {}): RideOutcome {
  const corner = cornerInMotion(model)
  const road = roadOf(course, model.corner.tire.radius)
  const outcome = driven({ corners: [corner], roads: [road], answers: [1 / corner.sprung] }, course, options)
  if (!outcome.ok) return outcome
  const { corners, ...ran } = outcome
  return { ...corners[0]!, ...ran }
}
