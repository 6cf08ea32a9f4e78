import { evenTable } from '../numerics/even-table.ts'
import type { Terrain } from '../plan/schema.ts'
import { type MeasuredCourse, measuredRoad } from './measured-road.ts'
import { asRoad, LEAD_IN, LONGEST_STEP, lookedAt, type Road, RUN_OUT, type Under } from './road.ts'
import { rough } from './rough.ts'

/** What can be driven: a terrain of the plan, or a road somebody measured. */
export type Course = Terrain | MeasuredCourse

const LANDING_TIME = 3

/** A level road. */
export const flat = (duration: number): Road =>
  asRoad({ duration, height: () => 0, rise: () => 0, breaks: [], longestStep: () => LONGEST_STEP })

/** One wave over its length, ½·(1 − cos 2πx), at so many places: its height is good to 10⁻⁹ of itself, its rise to 10⁻⁶. */
const WAVE_PLACES = 256
const WAVE = evenTable(
  0,
  1 / WAVE_PLACES,
  Array.from({ length: WAVE_PLACES + 1 }, (_, i) => (1 - Math.cos((2 * Math.PI * i) / WAVE_PLACES)) / 2),
  Array.from({ length: WAVE_PLACES + 1 }, (_, i) => Math.PI * Math.sin((2 * Math.PI * i) / WAVE_PLACES)),
)

/** ½·height·(1 − cos 2πx/spacing) over `count` waves, 1 s lead-in, 2 s run-out. */
function whoops({ spacing, height, speed, count }: Extract<Terrain, { kind: 'whoops' }>): Road {
  const perSecond = speed / spacing
  const period = spacing / speed
  const end = LEAD_IN + count * period
  const rise = height * perSecond
  const look = (time: number, under: Under): void => {
    if (time <= LEAD_IN || time >= end) {
      under.road = 0
      under.roadRise = 0
      return
    }
    const waves = (time - LEAD_IN) * perSecond
    WAVE.at = waves - (waves | 0)
    WAVE.look()
    under.road = height * WAVE.found
    under.roadRise = rise * WAVE.rising
  }
  return {
    duration: end + RUN_OUT,
    ...lookedAt(look),
    look,
    breaks: [LEAD_IN, end],
    longestStep: from => (from < LEAD_IN || from >= end ? LONGEST_STEP : Math.min(LONGEST_STEP, period / 4)),
  }
}

/** A step is met by a wheel at least this many times as large in radius as the step is high, so that no road stands upright. */
const ROLLABLE = 1.25

/**
 * A step up, level for `length`, and down again, as the axle of a round wheel follows it: an arc of the tire's radius about each edge
 * (of a larger one where the step is too high for that wheel to roll).
 */
function ledge({ height, length, speed }: Extract<Terrain, { kind: 'ledge' }>, tireRadius: number): Road {
  const radius = Math.max(tireRadius, ROLLABLE * height)
  const reach = Math.sqrt(2 * radius * height - height * height)
  const start = LEAD_IN * speed
  const up = start + reach
  const down = up + length
  const end = down + reach
  const arc = (distance: number): number => Math.sqrt(radius * radius - distance * distance)
  return asRoad({
    duration: end / speed + RUN_OUT,
    height: time => {
      const x = speed * time
      if (x <= start || x >= end) return 0
      return x > up && x < down ? height : arc(x - (x <= up ? up : down)) - (radius - height)
    },
    rise: time => {
      const x = speed * time
      if (x <= start || x >= end || (x > up && x < down)) return 0
      const across = x - (x <= up ? up : down)
      return (-across / arc(across)) * speed
    },
    breaks: [start, up, down, end].map(place => place / speed),
    longestStep: () => LONGEST_STEP,
  })
}

/** The road of a course under a wheel of `radius` m. */
export function roadOf(course: Course, radius: number): Road {
  switch (course.kind) {
    case 'whoops':
      return whoops(course)
    case 'landing':
      return flat(LANDING_TIME)
    case 'ledge':
      return ledge(course, radius)
    case 'rough':
      return rough(course)
    case 'measured':
      return measuredRoad(course, radius)
  }
}
