import { pchip } from '../numerics/pchip.ts'
import type { ValueAndSlope } from '../numerics/roots.ts'
import type { HydraulicStop, Stop } from '../plan/schema.ts'
import { circleArea, type GasChamber, type GasLaw, gasEnergy, gasForce } from './gas.ts'

/** A bump stop, as its force over how far it is pushed in. */
export interface StopModel {
  /** How far it can be pushed in, m. */
  readonly stroke: number
  /** Force along its axis, N, and its slope, N/m, pushed in by `travel` m (0 to `stroke`); before the touch it is not asked. */
  force(travel: number, law: GasLaw): ValueAndSlope
  /** Energy it has taken from the touch to there, J. */
  energy(travel: number, law: GasLaw): number
  /** Travels strictly inside the stroke where the slope breaks, rising. */
  readonly corners: readonly number[]
}

/** The gas of a hydraulic stop behind its shaft. */
export const chamberOf = ({ shaftDiameter, charge, gasVolume }: HydraulicStop): GasChamber => ({
  area: circleArea(shaftDiameter),
  charge,
  volume: gasVolume,
})

/**
 * A hydraulic stop pushes back with area × charge at the first touch, then as its gas does (gasForce); an elastomer follows its measured
 * rows, the same for both gas laws, joined by a curve that never overshoots them (F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput.
 * 5 (1984) 300). Lengths in m, forces in N, charge in Pa gauge, as in the plan.
 * @param stop as parsePlan accepts it: its gas larger than what its shaft displaces, its rows rising from 0
 */
export function stopModel(stop: Stop): StopModel {
  if (stop.kind === 'hydraulic') {
    const chamber = chamberOf(stop)
    return {
      stroke: stop.stroke,
      force: (travel, law) => gasForce(chamber, travel, law),
      energy: (travel, law) => gasEnergy(chamber, travel, law),
      corners: [],
    }
  }
  const deflections = stop.curve.map(row => row.deflection)
  const curve = pchip(
    deflections,
    stop.curve.map(row => row.force),
  )
  return {
    stroke: deflections.at(-1)!,
    force: travel => curve.at(travel),
    energy: travel => curve.integral(travel),
    corners: deflections.slice(1, -1),
  }
}
