import { cornerModel } from '../../../core/corner/corner.ts'
import type { CornerInMotion } from '../../../core/ride/corner-in-motion.ts'
import { cornerInMotion } from '../../../core/ride/ride.ts'
import type { Road } from '../../../core/ride/road.ts'
import { drive, type Moment, type RunOptions } from '../../../core/ride/simulate.ts'
import { beginning } from '../../../core/ride/start.ts'
import { STATES, Vehicle } from '../../../core/ride/vehicle.ts'
import { type Linear, linearCorner } from './corners.ts'

/** What is heard of a linear quarter car: its corner holds the forces of the moment, `state` its chassis and wheel. */
export type Heard = (time: number, state: Float64Array, corner: CornerInMotion, kind: Moment) => void

/**
 * Drives a linear quarter car over any road, from rest and so much besides (chassis height and speed, wheel height and speed).
 * @returns how far its state is from rest at the end
 */
export function drivenLinear(
  linear: Linear,
  road: Road,
  {
    besides = [0, 0, 0, 0],
    heard = () => undefined,
    ...options
  }: RunOptions & { besides?: readonly number[]; heard?: Heard },
): number[] {
  const corner = cornerInMotion(cornerModel(linearCorner(linear)))
  const vehicle = new Vehicle({ corners: [corner], roads: [road], answers: [1 / corner.sprung] })
  const rest = beginning(vehicle, null)
  const start = rest.slice()
  besides.forEach((value, i) => {
    start[i]! += value
  })
  const nothing = (): void => undefined
  const listener = {
    moment: (time: number, state: Float64Array, kind: Moment) => heard(time, state, corner, kind),
    worked: nothing,
    touch: nothing,
    part: nothing,
    bottom: nothing,
  }
  const outcome = drive(vehicle, start, listener, options)
  if (!outcome.ok) throw new Error(outcome.reason)
  return Array.from(outcome.end.subarray(0, STATES - 1), (value, i) => value - rest[i]!)
}
