import { measuredTime } from '../../core/ride/measured-road.ts'
import { type Course, roadOf } from '../../core/ride/terrain.ts'

/** The one number of a terrain that a sweep varies. */
export type SweptBy = 'speed' | 'drop'

export interface Sweep {
  readonly by: SweptBy
  /** SI: m/s or m. */
  readonly present: number
  /** Rising, without the present one. */
  readonly values: readonly number[]
  at(value: number): Course
}

/** How many values a sweep looks at, more or less. */
const COUNT = 13
/** A terrain without a value to speak of is swept as far as this: m/s and m. */
const LEAST: Readonly<Record<SweptBy, number>> = { speed: 0.5, drop: 0.25 }
/** Rides longer than this are left out of a sweep, unless the present one is about as long, s. */
const LONGEST = 45

const STEPS = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10]

/** The smallest round number that is no smaller. */
function roundUp(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value))
  const step = STEPS.find(each => each * power >= value * (1 - 1e-9)) ?? 10
  return step * power
}

/** How long a ride lasts, s; a rough road and a landing last as long at any speed or height. */
const lasting = (terrain: Course, tireRadius: number): number =>
  terrain.kind === 'measured'
    ? measuredTime(terrain)
    : terrain.kind === 'whoops' || terrain.kind === 'ledge'
      ? roadOf(terrain, tireRadius).duration
      : 0

const known = new WeakMap<Course, { tireRadius: number; sweep: Sweep | null }>()

/** What a terrain can be swept along: how fast it is driven, or how high the drop is. The same one for the same terrain. */
export function sweepOf(terrain: Course, tireRadius: number): Sweep | null {
  const before = known.get(terrain)
  if (before?.tireRadius === tireRadius) return before.sweep
  const sweep = planSweep(terrain, tireRadius)
  known.set(terrain, { tireRadius, sweep })
  return sweep
}

function planSweep(terrain: Course, tireRadius: number): Sweep | null {
  const by: SweptBy | null = terrain.kind === 'landing' ? 'drop' : 'speed' in terrain ? 'speed' : null
  if (by === null) return null
  const present = terrain.kind === 'landing' ? terrain.drop : terrain.speed
  const at = (value: number): Course => ({ ...terrain, [by]: value }) as Course
  const far = 2 * Math.max(present, LEAST[by])
  const step = roundUp(far / COUNT)
  const lasts = (value: number): number => lasting(at(value), tireRadius)
  const longest = Math.max(LONGEST, 1.5 * lasts(present))
  const values = Array.from({ length: Math.floor(far / step + 1e-9) }, (_, i) => (i + 1) * step).filter(
    value => Math.abs(value - present) > 0.05 * step && lasts(value) <= longest,
  )
  return { by, present, values, at }
}

/** The same values in an order that shows the whole range early: ends and middle first, then what lies between. */
export function coarseFirst<T>(values: readonly T[]): T[] {
  const order: T[] = []
  const left = new Set(values.keys())
  for (let step = values.length; left.size > 0; step = Math.max(1, Math.floor(step / 2)))
    for (let i = values.length - 1; i >= 0; i -= step) if (left.delete(i)) order.push(values[i]!)
  return order
}
