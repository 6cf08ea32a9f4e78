import { polyline } from '../../../core/numerics/polyline.ts'
import type { RoadProfile } from '../../../core/ride/measured-road.ts'
import { asRoad, LONGEST_STEP, type Road } from '../../../core/ride/road.ts'

/** A profile as it is, straight from point to point, without lead-in: what a profile index is computed from. */
export function pointByPoint({ distance, height }: RoadProfile, speed: number): Road {
  const times = distance.map(at => (at - distance[0]!) / speed)
  const line = polyline(
    times,
    height.map(each => each - height[0]!),
  )
  return asRoad({
    duration: times.at(-1)!,
    height: time => line.at(time).value,
    rise: time => line.at(time).slope,
    breaks: times,
    longestStep: () => LONGEST_STEP,
  })
}
