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

/** Least rise per radian a motion ratio is taken with, in shares of the reach: at the dead points, where the ratio is infinite, it stays a number. */
const LEAST_RISE = 1e-6

/**
 * An arm: wheel, lower shock mount and stop pad turn together about the axis through the two pivots.
 * Wheel position is the rise of the wheel point; shock movement the fall of the distance between its mounts; stop movement the pad's
 * movement along the unit stop axis; all in m (the turn about an axis is Rodrigues' formula, any mechanics text). Ends where the wheel stops rising or falling.
 * Needs two pivots apart, a wheel point that can rise, shock mounts apart and a stop axis of some length (core/plan/corner-sense.ts sees to it).
 */
export function armLinkage(arm: ArmLinkage): LinkageModel {
  const [pivot] = arm.pivot
  const along = minus(arm.pivot[1], pivot)
  const axis = times(along, 1 / size(along))
  const stopAxis = times(arm.stopAxis, 1 / size(arm.stopAxis))
  const { height, lift } = wheelCircle(arm)
  const squareReach = height ** 2 + lift ** 2
  const reach = Math.sqrt(squareReach)
  const lowest = -reach - height
  const highest = reach - height

  /** Cosine and sine of the turn from ride height, and the wheel's rise per radian, m: exactly 1, 0 and `lift` at ride height. */
  const turn = (wheel: number) => {
    const w = Math.min(highest, Math.max(lowest, wheel))
    const beside = Math.sqrt(Math.max(0, lift ** 2 - w * (2 * height + w)))
    const rise = Math.sign(lift) * beside
    return {
      cosine: (height * (height + w) + lift * rise) / squareReach,
      sine: (lift * (height + w) - height * rise) / squareReach,
      rise: Math.sign(lift) * Math.max(beside, LEAST_RISE * reach),
    }
  }

  // Everything asked of the arm is a dot product of a turning point with a fixed direction, so it comes down to two numbers each.
  const lower = orbit(arm.shockLower, pivot, axis)
  const toUpper = minus(arm.shockUpper, lower.centre)
  const [near, ahead] = [dot(toUpper, lower.radius), dot(toUpper, lower.ahead)]
  const squares = dot(toUpper, toUpper) + dot(lower.radius, lower.radius)
  const lengthAt = (cosine: number, sine: number): number =>
    Math.sqrt(Math.max(0, squares - 2 * (near * cosine + ahead * sine)))
  const rideLength = lengthAt(1, 0)
  const pad = orbit(arm.stopPad, pivot, axis)
  const [padNear, padAhead] = [dot(pad.radius, stopAxis), dot(pad.ahead, stopAxis)]

  return {
    lowest,
    highest,
    at: wheel => {
      const { cosine, sine, rise } = turn(wheel)
      const length = lengthAt(cosine, sine)
      return {
        shock: rideLength - length,
        stop: padNear * (cosine - 1) + padAhead * sine,
        shockRatio: length === 0 ? 0 : (ahead * cosine - near * sine) / length / rise,
        stopRatio: (padAhead * cosine - padNear * sine) / rise,
      }
    },
    // A movement m(angle) of ratio r has the slope (m″ + r·z)/rise², z = the wheel's height over the pivot axis, rise = dw/dangle.
    ratioSlopes: wheel => {
      const { cosine, sine, rise } = turn(wheel)
      const length = lengthAt(cosine, sine)
      const shortening = length === 0 ? 0 : (ahead * cosine - near * sine) / length
      const shockBend = length === 0 ? 0 : (shortening ** 2 - near * cosine - ahead * sine) / length
      const stopBend = -padNear * cosine - padAhead * sine
      const slope = (bend: number, ratio: number): number => (bend + ratio * (height + wheel)) / rise ** 2
      return {
        shock: slope(shockBend, shortening / rise),
        stop: slope(stopBend, (padAhead * cosine - padNear * sine) / rise),
      }
    },
    rises: false,
    knots: [],
    move: (point, wheel) => {
      const { cosine, sine } = turn(wheel)
      return placed(orbit(point, pivot, axis), cosine, sine)
    },
  }
}
