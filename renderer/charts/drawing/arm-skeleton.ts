import type { CornerModel } from '../../../core/corner/corner-model.ts'
import { dot, minus, plus, size, times } from '../../../core/linkage/vector.ts'
import type { ArmLinkage, Point } from '../../../core/plan/schema.ts'
import { directionOf, type Flat, dot as flatDot, minus as flatMinus, rightOf } from './flat.ts'
import type { Skeleton } from './skeleton.ts'

/** The point of the pivot axis beside the wheel. */
function besideWheel({ pivot, wheel }: ArmLinkage): Point {
  const axis = minus(pivot[1], pivot[0])
  const square = dot(axis, axis)
  return square > 0 ? plus(pivot[0], times(axis, dot(minus(wheel, pivot[0]), axis) / square)) : pivot[0]
}

/** Part of a direction that must lie in the drawing plane for it to be drawn there. */
const IN_PLANE = 0.05

/**
 * An arm seen from where it shows longest: from the side when it reaches fore and aft, from the front when it reaches across.
 * Seen from the side of the car that puts the wheel to the right.
 */
export function armSkeleton(arm: ArmLinkage, { linkage }: CornerModel): Skeleton {
  const { move } = linkage
  if (move === null) throw new Error('An arm’s linkage must move points: linkage.move is null.')
  const centre = besideWheel(arm)
  const reach = minus(arm.wheel, centre)
  const across = Math.abs(reach[1]) > Math.abs(reach[0]) ? 1 : 0
  const sign = reach[across] < 0 ? -1 : 1
  const seen = (point: Point): Flat => [sign * (point[across] - arm.wheel[across]), point[2] - arm.wheel[2]]

  const axis: Flat = [sign * arm.stopAxis[across], arm.stopAxis[2]]
  const inPlane = Math.hypot(...axis) > IN_PLANE * size(arm.stopAxis)
  const stopAxis = inPlane ? directionOf(axis) : ([0, 1] as const)
  const pad = seen(arm.stopPad)
  const pivots = arm.pivot.map(seen)
  const pivot = seen(centre)
  const angle = (hub: Flat): number => Math.atan2(hub[1] - pivot[1], hub[0] - pivot[0])
  const atRide = angle([0, 0])

  return {
    kind: 'arm',
    view: across === 1 ? 'front' : 'side',
    hand: sign < 0 ? 'left' : 'right',
    pivots,
    upper: seen(arm.shockUpper),
    shockLength: size(minus(arm.shockUpper, arm.shockLower)),
    pad,
    stopAxis,
    at: wheel => {
      const hub = seen(move(arm.wheel, wheel))
      const turned = angle(hub) - atRide
      return {
        hub,
        lower: seen(move(arm.shockLower, wheel)),
        drift: flatDot(flatMinus(seen(move(arm.stopPad, wheel)), pad), rightOf(stopAxis)),
        turned: turned > Math.PI ? turned - 2 * Math.PI : turned < -Math.PI ? turned + 2 * Math.PI : turned,
        members: pivots.map(joint => [joint, hub]),
      }
    },
  }
}
