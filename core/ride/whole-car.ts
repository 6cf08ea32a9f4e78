import type { CornerModel } from '../corner/corner-model.ts'
import type { AxleId } from '../plan/schema.ts'
import type { CarOutcome } from './results.ts'
import { cornerInMotion, driven } from './ride.ts'
import type { Road } from './road.ts'
import type { RunOptions } from './simulate.ts'
import { type Course, roadOf } from './terrain.ts'

/**
 * Dynamic index of the sprung body in pitch, k²/(a·b), assumed: k its radius of gyration, a and b from its center of gravity to the axles.
 * At 1 front and rear would not feel each other; cars lie between 0.8 and 1 (T. D. Gillespie, Fundamentals of Vehicle Dynamics, SAE 1992, ch. 5; from memory).
 */
export const DYNAMIC_INDEX = 0.85

/** One axle of the car, ready to be driven. */
export interface CarAxle {
  readonly id: AxleId
  readonly model: CornerModel
}

export interface CarOptions extends RunOptions {
  /** Dynamic index of the sprung body in pitch, more than 0. */
  readonly dynamicIndex?: number
}

/** Time from the front wheels' coming to a place to the rear wheels' coming there, s. */
const behind = (course: Course, wheelbase: number): number => (course.kind === 'landing' ? 0 : wheelbase / course.speed)

/** A road met later: before it, what lies before its start. */
const later = (road: Road, delay: number): Road => ({
  duration: road.duration + delay,
  height: time => road.height(time - delay),
  rise: time => road.rise(time - delay),
  look: (time, under) => road.look(time - delay, under),
  breaks: [delay, ...road.breaks.map(at => at + delay)],
  longestStep: from => road.longestStep(from - delay),
})

/**
 * How fast the body answers over each axle, 1/kg, from the sprung masses over them: 1/m + l²/(m·k²) over an axle l from the center of gravity, 1/m − a·b/(m·k²)
 * across. Derived here: heave and pitch of a rigid body, angles small.
 */
export function bodyAnswers(sprung: readonly [number, number], dynamicIndex: number): [number, number, number, number] {
  const [one, other] = sprung
  const mass = one + other
  const across = (1 - 1 / dynamicIndex) / mass
  return [(1 + other / one / dynamicIndex) / mass, across, across, (1 + one / other / dynamicIndex) / mass]
}

/**
 * Drives one side of the whole car in heave and pitch: both corners under one rigid body, rear wheels over the same road as the front ones, the wheelbase
 * later. The corners are the quarter car's own. Both stand, or hang, as each would by itself.
 * @param axles one or two; one cannot pitch, and that is the outcome
 * @param wheelbase m, more than 0
 */
export function rideCar(
  axles: readonly CarAxle[],
  wheelbase: number,
  course: Course,
  options: CarOptions = {},
): CarOutcome {
  if (axles.length !== 2) return { ok: false, reason: 'needs two axles', time: 0 }
  const delay = behind(course, wheelbase)
  const corners = axles.map(({ model }) => cornerInMotion(model))
  const roads = axles.map(({ id, model }) => {
    const road = roadOf(course, model.corner.tire.radius)
    return id === 'rear' && delay > 0 ? later(road, delay) : road
  })
  const sprung = [corners[0]!.sprung, corners[1]!.sprung] as const
  const answers = bodyAnswers(sprung, options.dynamicIndex ?? DYNAMIC_INDEX)
  const outcome = driven({ corners, roads, answers }, course, options)
  if (!outcome.ok) return outcome
  const { corners: rides, ...ran } = outcome
  const place = (id: AxleId): number => axles.findIndex(axle => axle.id === id)
  const risen = (id: AxleId): Float64Array => {
    const { chassis } = rides[place(id)]!.trace
    return chassis.map(height => height - chassis[0]!)
  }
  const [front, rear] = [risen('front'), risen('rear')]
  return { ...ran, axles: rides, pitch: rear.map((height, i) => (height - front[i]!) / wheelbase) }
}
