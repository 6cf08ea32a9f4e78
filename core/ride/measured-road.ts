import { evenTable } from '../numerics/even-table.ts'
import { LEAD_IN, LONGEST_STEP, lookedAt, type Road, RUN_OUT, type Under } from './road.ts'

/** A road somebody measured: heights at rising distances, m, at least two of each. */
export interface RoadProfile {
  readonly distance: readonly number[]
  readonly height: readonly number[]
}

/** A measured road driven at `speed` m/s. */
export interface MeasuredCourse {
  readonly id: string
  readonly name?: string
  readonly kind: 'measured'
  readonly profile: RoadProfile
  readonly speed: number
}

/** How long a measured road lasts with the level road before and after it, s. */
export const measuredTime = ({ profile: { distance }, speed }: Pick<MeasuredCourse, 'profile' | 'speed'>): number =>
  LEAD_IN + (distance.at(-1)! - distance[0]!) / speed + RUN_OUT

/** Places a rolled profile is worked out at: so many on a tire's radius, and no more than so many in all. */
const PER_RADIUS = 20
const MOST_PLACES = 200_000

/** Of a step higher than it can roll a wheel sees this much of an upright wall, in shares of its radius. */
const STEEPEST = 0.995

/**
 * How high the axle of a round wheel rides over a profile of straight pieces: the highest place at which the circle touches any of it,
 * less the radius. Derived here from plane geometry: over a straight piece of slope m the axle is r·√(1 + m²) above the line, over a corner
 * √(r² − dx²) above it.
 * @param radius m, more than 0
 * @returns heights every `step` m from the first distance on
 */
export function rolledProfile({ distance, height }: RoadProfile, radius: number): { step: number; heights: number[] } {
  const [first, last] = [distance[0]!, distance.at(-1)!]
  const count = Math.min(MOST_PLACES, Math.max(2, Math.ceil(((last - first) / radius) * PER_RADIUS)))
  const step = (last - first) / count
  const reach = STEEPEST * radius
  let behind = 0
  const heights = Array.from({ length: count + 1 }, (_, place) => {
    const x = first + place * step
    while (behind < distance.length - 1 && distance[behind + 1]! < x - radius) behind += 1
    let most = -Infinity
    for (let i = behind; i < distance.length && distance[i]! <= x + radius; i += 1) {
      const ahead = distance[i]! - x
      if (Math.abs(ahead) <= reach) most = Math.max(most, height[i]! + Math.sqrt(radius ** 2 - ahead ** 2) - radius)
      if (i === distance.length - 1) break
      const slope = (height[i + 1]! - height[i]!) / (distance[i + 1]! - distance[i]!)
      const touch = x - (radius * slope) / Math.hypot(1, slope)
      if (touch < distance[i]! || touch > distance[i + 1]!) continue
      most = Math.max(most, height[i]! + slope * (x - distance[i]!) + radius * (Math.hypot(1, slope) - 1))
    }
    return most
  })
  return { step, heights }
}

/** Slopes at evenly spaced places that keep a curve from overshooting: the harmonic mean of the chords on either side (F. N. Fritsch and J. Butland, 1984). */
function shapedSlopes(heights: readonly number[], step: number): number[] {
  return heights.map((here, i) => {
    if (i === 0 || i === heights.length - 1) return 0
    const [before, after] = [(here - heights[i - 1]!) / step, (heights[i + 1]! - here) / step]
    return before * after <= 0 ? 0 : (2 * before * after) / (before + after)
  })
}

/** A measured road as a wheel of `radius` m rolls it, level for 1 s before and 2 s after. */
export function measuredRoad({ profile, speed }: MeasuredCourse, radius: number): Road {
  const { step, heights } = rolledProfile(profile, radius)
  const relative = heights.map(each => each - heights[0]!)
  const table = evenTable(0, step, relative, shapedSlopes(relative, step))
  const length = step * (heights.length - 1)
  const end = LEAD_IN + length / speed
  const look = (time: number, under: Under): void => {
    table.at = (time - LEAD_IN) * speed
    table.look()
    under.road = table.found
    under.roadRise = table.rising * speed
  }
  return {
    duration: end + RUN_OUT,
    ...lookedAt(look),
    look,
    breaks: [LEAD_IN, end],
    longestStep: from => (from < LEAD_IN || from >= end ? LONGEST_STEP : Math.min(LONGEST_STEP, (4 * step) / speed)),
  }
}
