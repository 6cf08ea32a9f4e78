import type { AxleLinkage } from '../plan/schema.ts'
import type { LinkageModel } from './linkage-model.ts'
import { minus, plus, size, times } from './vector.ts'

/**
 * A solid axle in pure heave: lower shock mount and stop pad rise with the wheel; the upper mount and the stop's axis belong to the chassis.
 * Lengths in m, wheel and shock positive in bump. From the plan's points alone: shock = length at ride height − length, pad = its rise along the axis.
 * Needs shock mounts apart and a stop axis of some length (core/plan/corner-sense.ts sees to it).
 */
export function axleLinkage({ shockLower, shockUpper, stopAxis }: AxleLinkage): LinkageModel {
  const shaftAtRide = minus(shockUpper, shockLower)
  const [ahead, aside, height] = shaftAtRide
  const level = ahead ** 2 + aside ** 2
  const lengthAt = (wheel: number): number => Math.sqrt(level + (height - wheel) ** 2)
  const rideLength = lengthAt(0)
  const stopRatio = times(stopAxis, 1 / size(stopAxis))[2]
  return {
    lowest: -Infinity,
    highest: Infinity,
    at: wheel => {
      const length = lengthAt(wheel)
      return {
        shock: rideLength - length,
        stop: stopRatio * wheel,
        shockRatio: length === 0 ? 0 : (height - wheel) / length,
        stopRatio,
      }
    },
    // Of (h − w)/length, h the mounts' difference in height at ride height: (ratio² − 1)/length.
    ratioSlopes: wheel => {
      const length = lengthAt(wheel)
      return { shock: length === 0 ? 0 : (((height - wheel) / length) ** 2 - 1) / length, stop: 0 }
    },
    rises: false,
    knots: [],
    move: (point, wheel) => plus(point, [0, 0, wheel]),
  }
}
