import type { CornerModel } from '../../../core/corner/corner-model.ts'
import { minus, size } from '../../../core/linkage/vector.ts'
import type { Axle, AxleLinkage, Point } from '../../../core/plan/schema.ts'
import { clamp, directionOf, type Flat } from './flat.ts'
import type { Skeleton } from './skeleton.ts'

/** How far a mount may stand from the axle's centre line before the tire radius is no longer believed to be its height, m. */
const BRACKET = { below: 0.1, above: 0.3 }

/** Height of the axle's centre, in the plan's own z: the tire's radius when the mounts stand about it, else just under the pad. */
function centreHeight({ shockLower, stopPad }: AxleLinkage, radius: number): number {
  const low = Math.min(shockLower[2], stopPad[2])
  const high = Math.max(shockLower[2], stopPad[2])
  return radius > low - BRACKET.above && radius < high + BRACKET.below ? radius : stopPad[2] - 0.12 * radius
}

/** A solid axle in heave, seen along the car: the tube from the cut at the left to the wheel, mounts as the plan gives them. */
export function axleSkeleton(linkage: AxleLinkage, axle: Axle, model: CornerModel): Skeleton {
  const { shockLower, shockUpper, stopPad, stopAxis } = linkage
  const side = shockLower[1] + stopPad[1] < 0 ? -1 : 1
  const height = centreHeight(linkage, axle.corner.tire.radius)
  const seen = (point: Point): Flat => [side * point[1] - axle.track / 2, point[2] - height]
  const lower = seen(shockLower)
  const upper = seen(shockUpper)
  const pad = seen(stopPad)
  const direction: Flat = [side * stopAxis[1], stopAxis[2]]
  const axis = Math.hypot(...direction) > 0.05 * size(stopAxis) ? directionOf(direction) : ([0, 1] as const)
  const cut = Math.min(lower[0], upper[0], pad[0]) - clamp(0.16 * axle.track, 0.02, 0.3)
  const right: Flat = [axis[1], -axis[0]]
  return {
    kind: 'axle',
    view: 'front',
    hand: side < 0 ? 'right' : 'left',
    pivots: [],
    upper,
    shockLength: size(minus(shockUpper, shockLower)),
    pad,
    stopAxis: axis,
    at: wheel => {
      const risen = clamp(wheel, model.linkage.lowest, model.linkage.highest)
      return {
        hub: [0, risen],
        lower: [lower[0], lower[1] + risen],
        drift: risen * right[1],
        turned: 0,
        members: [
          [
            [cut, risen],
            [0, risen],
          ],
        ],
      }
    },
  }
}
