import type { CornerModel } from '../corner/corner-model.ts'

/** Pieces the shaft's path is cut into between the ends of the travel: a thousandth of it is far below what a sensor tells. */
const PIECES = 1024

/**
 * Wheel travel from shaft travel, both m from ride height, by the linkage of the plan; straight between 1024 places of the travel, and on
 * past its ends as it was there, so that a reading that cannot be stays visible as one. Null when the shaft turns back within the travel: one
 * shaft position is then two wheel positions.
 */
export function wheelFromShaft(model: CornerModel): ((shaft: number) => number) | null {
  const { droop, bump, linkage } = model
  const wheel = Float64Array.from({ length: PIECES + 1 }, (_, i) => droop + ((bump - droop) * i) / PIECES)
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
