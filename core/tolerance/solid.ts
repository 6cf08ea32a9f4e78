import type { AxleBudget } from '../budget/results.ts'
import { circleArea, GAS_EXPONENT } from '../forces/gas.ts'
import type { Corner } from '../plan/schema.ts'
import { ATMOSPHERE } from '../units/constants.ts'

/**
 * Gas squeezed to less than a tenth of its volume in a hit is as good as solid: nitrogen charged to 200 psi would be at 5400 psi by the ideal
 * law and at 6900 psi by that of Span et al. (J. Phys. Chem. Ref. Data 29 (2000) 1361), which ends there; no stop is made for either. What a
 * law gives beyond is no force anybody will see.
 */
const MOST_SQUEEZED = 10

/** How much the pressure of such gas has risen in a hit, by the fast gas law. */
const MOST_RISEN = MOST_SQUEEZED ** GAS_EXPONENT.fast

/**
 * Whether a stop or shock is as good as solid at full bump: its gas all but gone, or gone before the stroke is.
 * @param gasLasts false where a shaft pushes aside all the gas there is
 */
export function asGoodAsSolid(
  { bump, shockLeftAtBump }: AxleBudget,
  { stop, shock }: Corner,
  gasLasts: boolean,
): boolean {
  if (!gasLasts) return true
  if (stop?.kind === 'hydraulic') {
    const pressure = bump.stopForceFast / circleArea(stop.shaftDiameter) + ATMOSPHERE
    if (pressure > (stop.charge + ATMOSPHERE) * MOST_RISEN) return true
  }
  if (shock.gas === null) return false
  const left = shock.gas.volume - circleArea(shock.shaftDiameter) * (shock.stroke - shockLeftAtBump)
  return left * MOST_SQUEEZED < shock.gas.volume
}
