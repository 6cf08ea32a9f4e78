import { type TerrainFrame, terrainFrame } from '../terrain/terrain-frame.ts'

/** Height of the shaft speeds, as a share of what forces have. */
const SPEEDS = 0.75

/**
 * The terrain page's frame for a recorded run, which has no road under it: the travel takes that strip, shaft speeds stand where the forces
 * were, and the whole of a long run has more room.
 * @param width, height px, above 0; @param windowed the run is longer than the trace shows at once
 */
export function runFrame(width: number, height: number, windowed: boolean): TerrainFrame {
  const base = terrainFrame(width, height, windowed)
  const lift = windowed ? Math.min(base.small ? 13 : 20, height * 0.04) : 0
  const tall = (base.forces.bottom - base.forces.top) * SPEEDS
  const forces = { top: base.forces.bottom - lift - tall, bottom: base.forces.bottom - lift }
  const travel = { top: base.travel.top, bottom: forces.top - (base.forces.top - base.road.bottom) }
  return {
    ...base,
    travel,
    road: { top: travel.bottom, bottom: travel.bottom },
    forces,
    timeBaseline: base.timeBaseline - lift,
    overview: { top: base.overview.top - lift, bottom: base.overview.bottom },
  }
}
