import type { CornerModel } from '../../../core/corner/corner-model.ts'
import { WATCHES } from '../../../core/ride/modes.ts'
import { cornerInMotion } from '../../../core/ride/ride.ts'
import { beginning } from '../../../core/ride/start.ts'
import { type Course, roadOf } from '../../../core/ride/terrain.ts'
import { STATE, Vehicle } from '../../../core/ride/vehicle.ts'
import { happen, watch } from '../../../core/ride/watches.ts'

/**
 * The same ride by the classical Runge–Kutta method of order 4 in even steps, over the same forces: what happens is seen at the end of a step.
 * @returns wheel positions at even samples, and how often forces were asked for
 */
export function fixedSteps(model: CornerModel, course: Course, length: number, sample: number) {
  const corner = cornerInMotion(model)
  const vehicle = new Vehicle({
    corners: [corner],
    roads: [roadOf(course, model.corner.tire.radius)],
    answers: [1 / corner.sprung],
  })
  const { duration } = vehicle.roads[0]!
  const state = beginning(vehicle, course.kind === 'landing' ? course.drop : null)
  const size = vehicle.size
  const [k1, k2, k3, k4, trial] = Array.from({ length: 5 }, () => new Float64Array(size)) as Float64Array[]
  const watches = new Float64Array(WATCHES)
  const nothing = (): void => undefined
  const every = Math.round(sample / length)
  const steps = Math.floor(duration / length + 1e-9)
  const wheel = [state[STATE.wheel]! - state[STATE.chassis]!]
  let evaluations = 0
  const ask = (time: number, at: Float64Array, slopes: Float64Array): void => {
    vehicle.slopes(time, at, slopes)
    evaluations += 1
  }
  const go = (share: number, slopes: Float64Array): void => {
    for (let i = 0; i < size; i += 1) trial![i] = state[i]! + share * length * slopes[i]!
  }
  for (let n = 0; n < steps; n += 1) {
    const time = n * length
    ask(time, state, k1!)
    go(0.5, k1!)
    ask(time + length / 2, trial!, k2!)
    go(0.5, k2!)
    ask(time + length / 2, trial!, k3!)
    go(1, k3!)
    ask(time + length, trial!, k4!)
    for (let i = 0; i < size; i += 1) state[i]! += (length / 6) * (k1![i]! + 2 * k2![i]! + 2 * k3![i]! + k4![i]!)
    vehicle.look(time + length, state)
    if (corner.modes.stop === 'touching') state[STATE.stop] = Math.max(0, corner.pad)
    watch(corner, state[STATE.stop]!, watches, 0)
    for (let place = 0; place < WATCHES; place += 1)
      if (watches[place]! >= 0)
        happen(vehicle, place, state, time + length, { touch: nothing, part: nothing, bottom: nothing })
    if ((n + 1) % every === 0) wheel.push(corner.wheel)
  }
  return { wheel, evaluations }
}
