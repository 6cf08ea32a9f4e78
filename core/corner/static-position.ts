import { findRoot, POSITION_TOLERANCE } from '../numerics/roots.ts'
import type { CornerModel, GasLaw } from './corner-model.ts'

/** Longest look along a smooth piece of the force, m. */
const LOOK = 0.01

/**
 * Where the corner rests under a weight: force equal to it, going from `from` the way the corner itself would move, clamped to the
 * travel; where the force steps past the weight, the step's own position.
 * Bracketed by looks of 10 mm on each smooth piece, then Brent's method; found to 10⁻¹² m. Two balances nearer than a look are not told apart.
 * @param weight N at the wheel, any sign
 * @param from wheel position to start from, m, inside the travel
 * @param law slow for where a car stands, fast for where a simulation with fast gas has its rest
 */
export function restingPosition(model: CornerModel, weight: number, from = 0, law: GasLaw = 'slow'): number {
  const up = model.forces(from, law, 'above').total < weight
  if (!up && model.forces(from, law, 'below').total <= weight) return from
  const end = up ? model.bump : model.droop
  const [near, far] = up ? (['above', 'below'] as const) : (['below', 'above'] as const)
  const settled = (force: number): boolean => (up ? force >= weight : force <= weight)
  const kinks = model.kinks.filter(kink => (up ? kink > from : kink < from))
  const places = [...(up ? kinks : kinks.reverse()), end]
  let here = from
  for (const place of places) {
    const looks = Math.max(1, Math.ceil(Math.abs(place - here) / LOOK))
    let low = here
    for (let i = 1; i <= looks; i += 1) {
      const high = i === looks ? place : here + ((place - here) * i) / looks
      if (settled(model.forces(high, law, i === looks ? far : near).total)) {
        const off = (wheel: number): number => model.forces(wheel, law, wheel === low ? near : far).total - weight
        const root = findRoot(off, low, high, POSITION_TOLERANCE)
        return root.found ? root.at : high
      }
      low = high
    }
    if (settled(model.forces(place, law, near).total)) return place
    here = place
  }
  return end
}
