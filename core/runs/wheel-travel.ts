import type { CornerModel } from '../corner/corner-model.ts'

/** Pieces a path is cut into between the ends of the travel: a thousandth of it is far below what a sensor tells. */
const PIECES = 1024

const wheelPlaces = ({ droop, bump }: CornerModel): Float64Array =>
  Float64Array.from({ length: PIECES + 1 }, (_, i) => droop + ((bump - droop) * i) / PIECES)

/**
 * Wheel travel from shaft travel, both m from ride height, by the linkage of the plan; straight between 1024 places of the travel, and on
 * past its ends as it was there, so that a reading that cannot be stays visible as one. Null when the shaft turns back within the travel: one
 * shaft position is then two wheel positions.
 */
export function wheelFromShaft(model: CornerModel): ((shaft: number) => number) | null {
  const { droop, bump, linkage } = model
  const wheel = wheelPlaces(model)
  const shaft = wheel.map(at => linkage.at(at).shock)
  if (bump <= droop || shaft.some((here, i) => i > 0 && here <= shaft[i - 1]!)) return null
  let near = 0
  return at => {
    while (near > 0 && at < shaft[near]!) near -= 1
    while (near < PIECES - 1 && at >= shaft[near + 1]!) near += 1
    const [low, high] = [shaft[near]!, shaft[near + 1]!]
    return wheel[near]! + ((at - low) / (high - low)) * (wheel[near + 1]! - wheel[near]!)
  }
}

/** The movement of the shock's shaft or of the pad along the stop, m from ride height, at a wheel position; in the same pieces. */
export function movementAt(model: CornerModel, of: 'shock' | 'stop'): (wheel: number) => number {
  const { droop, bump, linkage } = model
  if (bump <= droop) return () => linkage.at(droop)[of]
  const moved = wheelPlaces(model).map(at => linkage.at(at)[of])
  const perMetre = PIECES / (bump - droop)
  return wheel => {
    const at = (wheel - droop) * perMetre
    const near = Math.min(PIECES - 1, Math.max(0, Math.floor(at)))
    return moved[near]! + (at - near) * (moved[near + 1]! - moved[near]!)
  }
}
