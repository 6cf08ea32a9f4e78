import { scaleLinear } from 'd3'
import { INCH } from '../../../core/units/constants.ts'
import type { WheelAxis } from '../plate/wheel-axis.ts'
import type { TerrainFrame } from './terrain-frame.ts'

/** Travel shorter than this is drawn as if it were this long, m. */
const LEAST_TRAVEL = INCH

/** The axis of the travel page in the room the terrain page has: full bump up, with room above for marks of bottoming. */
export function travelAxis({ travel, small }: TerrainFrame, bump: number, droop: number): WheelAxis {
  const missing = Math.max(0, LEAST_TRAVEL - (bump - droop)) / 2
  const room = Math.max(travel.bottom - travel.top, 1)
  const above = Math.min(small ? 20 : 24, room * 0.2)
  const below = Math.min(small ? 9 : 14, room * 0.1)
  const domain: [number, number] = [droop - missing, bump + missing]
  const range: [number, number] = [travel.bottom - below, travel.top + above]
  const scale = scaleLinear(domain, range)
  const pixelsPerMetre = (range[0] - range[1]) / (domain[1] - domain[0])
  return {
    y: wheel => range[0] - (wheel - domain[0]) * pixelsPerMetre,
    wheelAt: y => scale.invert(y),
    pixelsPerMetre,
    top: travel.top,
    bottom: travel.bottom,
  }
}
