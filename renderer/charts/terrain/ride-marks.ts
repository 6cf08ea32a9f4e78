import type { Finding } from '../../../core/budget/results.ts'
import type { Box } from '../placement/box.ts'
import { MARK_RADIUS, type MarkPlace } from '../plate/labels/mark-places.ts'
import type { TerrainScene } from './terrain-scene.ts'

const SIZE = 2 * MARK_RADIUS + 4

/** Every finding of a ride at the wheel position it speaks of, beside the histogram; those of one place stand in a row. */
export function rideMarks({ frame, axis, travel }: TerrainScene, findings: readonly Finding[]): MarkPlace[] {
  const places: MarkPlace[] = []
  for (const [i, finding] of findings.entries()) {
    const y = axis.y(Math.min(travel.bump, Math.max(travel.droop, finding.at)))
    const inRow = places.filter(place => Math.abs(place.y - y) < SIZE).length
    places.push({ finding, number: i + 1, x: frame.histogram.right - SIZE * (0.6 + inRow), y })
  }
  return places
}

/** What a mark covers. */
export const markBox = ({ x, y }: MarkPlace): Box => ({ x: x - SIZE / 2, y: y - SIZE / 2, width: SIZE, height: SIZE })
