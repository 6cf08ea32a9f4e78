import { cornerModel } from '../corner/corner.ts'
import type { Corner } from '../plan/schema.ts'
import { INCH } from '../units/constants.ts'

/** What a saw and a file hold without a lathe, m either way: common practice. */
export const CUT_TOLERANCE = INCH / 32

/** How far an end may be off square, m across its face, before the tube cocks on its shaft: common practice. */
export const SQUARENESS = 0.005 * INCH

export interface CutError {
  /** Length off, m, positive too long. */
  readonly off: number
  /** Engagement with that, m of wheel travel; null when the stop is then not met. */
  readonly engagement: number | null
  /** Of bump travel, 0 to 1; null likewise. */
  readonly share: number | null
  /** How far engagement moves, m of wheel travel. */
  readonly moves: number | null
}

/**
 * What a spacer cut too short or too long does to engagement: the gap is off by as much, the closed position stays.
 * @param corner with the spacer in, as planned
 * @param off m, positive too long; less than the stroke left
 */
export function cutError(corner: Corner, off: number): CutError {
  const { stop } = corner
  const nothing = { off, engagement: null, share: null, moves: null }
  if (stop?.kind !== 'hydraulic' || off >= stop.stroke) return nothing
  const planned = cornerModel(corner)
  const made = cornerModel({ ...corner, stop: { ...stop, stroke: stop.stroke - off, gap: stop.gap + off } })
  const { engagement, bump } = made
  if (engagement === null || planned.engagement === null) return nothing
  return {
    off,
    engagement,
    share: bump === 0 ? 0 : Math.max(0, engagement) / bump,
    moves: engagement - planned.engagement,
  }
}
