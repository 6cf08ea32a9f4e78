import type { Ridden } from '../workers/messages.ts'
import { landingLimit, nextDrop } from './landing-limit.ts'
import type { RideCache, SweptPoint } from './terrain-cache.ts'
import type { DrivenCorner } from './terrain-driven.ts'
import type { RideRequest } from './terrain-request.ts'

/** A landing limit is looked for until it is known this well, m. */
export const LIMIT_WITHIN = 0.0064

/** What a sweep keeps of a ride; null where there was none. */
export const pointOf = (value: number, ridden: Ridden): SweptPoint | null =>
  ridden.ok ? { value, onStop: ridden.share.onStop, wheelMax: ridden.wheelMax, bottoms: ridden.bottoms } : null

/** The points of a sweep known so far, rising; of a landing also those looked at to narrow its limit down. */
export function sweptPoints(cache: RideCache, { sweep, terrain }: RideRequest, corner: DrivenCorner): SweptPoint[] {
  if (sweep === null) return []
  const points = [terrain, ...sweep.values.map(value => sweep.at(value))]
    .map(each => cache.point(corner, each))
    .filter(point => point !== null && point !== undefined)
    .sort((a, b) => a.value - b.value)
  if (sweep.by !== 'drop') return points
  for (;;) {
    const next = nextDrop(landingLimit(points), LIMIT_WITHIN)
    const point = next === null ? null : cache.point(corner, sweep.at(next))
    if (point === null || point === undefined) return points
    points.push(point)
    points.sort((a, b) => a.value - b.value)
  }
}
