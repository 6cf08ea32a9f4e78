import type { SweptPoint } from './terrain-cache.ts'

/** Highest drop known to be taken without steel meeting steel, and the lowest known not to be; null where no drop looked at is. m. */
export interface LandingLimit {
  readonly takes: number | null
  readonly fails: number | null
}

/** @param points of a sweep along the drop, rising */
export function landingLimit(points: readonly SweptPoint[]): LandingLimit {
  const first = points.findIndex(({ bottoms }) => bottoms > 0)
  const before = first < 0 ? points.at(-1) : points[first - 1]
  return { takes: before?.value ?? null, fails: points[first]?.value ?? null }
}

/** The drop to look at next to know the limit within `within` m; null when it is known that well or lies beyond what was looked at. */
export function nextDrop({ takes, fails }: LandingLimit, within: number): number | null {
  if (fails === null) return null
  const from = takes ?? 0
  return fails - from > within ? (from + fails) / 2 : null
}
