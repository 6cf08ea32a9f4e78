import type { AxleLinkage } from '../plan/schema.ts'
import type { LinkageModel } from './linkage-model.ts'
import { dot, minus, plus, size, times } from './vector.ts'

/**
 * A solid axle in pure heave: lower shock mount and stop pad rise with the wheel; the upper mount and the stop's axis belong to the chassis.
 * Needs shock mounts apart and a stop axis of some length (sense.ts sees to it).
 */
export function axleLinkage({ shockLower, shockUpper, stopAxis }: AxleLinkage): LinkageModel {
  const shaftAtRide = minus(shockUpper, shockLower)
  const rideLength = size(shaftAtRide)
  const stopRatio = times(stopAxis, 1 / size(stopAxis))[2]
  return {
    lowest: -Infinity,
    highest: Infinity,
    at: wheel => {
      const shaft = minus(shaftAtRide, [0, 0, wheel])
      const length = size(shaft)
      return {
        shock: rideLength - length,
        stop: stopRatio * wheel,
        shockRatio: length === 0 ? 0 : dot(shaft, [0, 0, 1]) / length,
        stopRatio,
      }
    },
    // Of (h − w)/length, h the mounts' difference in height at ride height: (ratio² − 1)/length.
    ratioSlopes: wheel => {
      const shaft = minus(shaftAtRide, [0, 0, wheel])
      const length = size(shaft)
      return { shock: length === 0 ? 0 : ((shaft[2] / length) ** 2 - 1) / length, stop: 0 }
    },
    knots: [],
    move: (point, wheel) => plus(point, [0, 0, wheel]),
  }
}
