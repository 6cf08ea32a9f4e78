import type { ArmLinkage, Point } from '../plan/schema.ts'
import type { LinkageModel } from './linkage-model.ts'
import { cross, dot, minus, plus, size, times } from './vector.ts'

/** A point turning about an axis: point(angle) = centre + cos(angle)·radius + sin(angle)·ahead (Rodrigues' rotation formula). */
interface Orbit {
  readonly centre: Point
  readonly radius: Point
  readonly ahead: Point
}

function orbit(point: Point, pivot: Point, axis: Point): Orbit {
  const centre = plus(pivot, times(axis, dot(minus(point, pivot), axis)))
  const radius = minus(point, centre)
  return { centre, radius, ahead: cross(axis, radius) }
}

const placed = ({ centre, radius, ahead }: Orbit, cosine: number, sine: number): Point =>
  plus(centre, plus(times(radius, cosine), times(ahead, sine)))

/** How the wheel point moves about the pivots: `height`·cos + `lift`·sin is its z above the pivot axis, m. Both 0: it does not move. */
export function wheelCircle({ pivot, wheel }: ArmLinkage): { height: number; lift: number } {
  const axis = minus(pivot[1], pivot[0])
  const { radius, ahead } = orbit(wheel, pivot[0], times(axis, 1 / size(axis)))
  return { height: radius[2], lift: ahead[2] }
}

/**
 * An arm: wheel, lower shock mount and stop pad turn together about the axis through the two pivots.
 * Wheel position is the rise of the wheel point; shock movement the fall of the distance between its mounts; stop movement the pad's
 * movement along the unit stop axis. Ends where the wheel stops rising or falling.
 * Needs two pivots apart, a wheel point that can rise, shock mounts apart and a stop axis of some length (sense.ts sees to it).
 */
export function armLinkage(arm: ArmLinkage): LinkageModel {
  const [pivot] = arm.pivot
  const along = minus(arm.pivot[1], pivot)
  const axis = times(along, 1 / size(along))
  const stopAxis = times(arm.stopAxis, 1 / size(arm.stopAxis))
  const lower = orbit(arm.shockLower, pivot, axis)
  const pad = orbit(arm.stopPad, pivot, axis)
  const { height, lift } = wheelCircle(arm)
  const reach = Math.hypot(height, lift)
  const top = Math.atan2(lift, height)
  const rideLength = size(minus(arm.shockUpper, arm.shockLower))

  const angleAt = (wheel: number): number => {
    const share = Math.min(1, Math.max(-1, (wheel + height) / reach))
    return top - Math.sign(lift) * Math.acos(share)
  }
  const at = (wheel: number) => {
    const angle = angleAt(wheel)
    const [cosine, sine] = [Math.cos(angle), Math.sin(angle)]
    const rise = lift * cosine - height * sine
    const mount = placed(lower, cosine, sine)
    const mountSpeed = minus(times(lower.ahead, cosine), times(lower.radius, sine))
    const shaft = minus(arm.shockUpper, mount)
    const length = size(shaft)
    const padSpeed = minus(times(pad.ahead, cosine), times(pad.radius, sine))
    return {
      shock: rideLength - length,
      stop: dot(minus(placed(pad, cosine, sine), arm.stopPad), stopAxis),
      shockRatio: length === 0 || rise === 0 ? 0 : dot(shaft, mountSpeed) / length / rise,
      stopRatio: rise === 0 ? 0 : dot(padSpeed, stopAxis) / rise,
    }
  }
  return {
    lowest: -reach - height,
    highest: reach - height,
    at,
    knots: [],
    move: (point, wheel) => {
      const angle = angleAt(wheel)
      return placed(orbit(point, pivot, axis), Math.cos(angle), Math.sin(angle))
    },
  }
}
