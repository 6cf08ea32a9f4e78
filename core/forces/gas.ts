import type { ValueAndSlope } from '../numerics/roots.ts'
import { ATMOSPHERE } from '../units/constants.ts'

/** How the gas is taken: slowly (isothermal, n = 1) or fast (adiabatic, n = 1.4). Both are bounds. */
export type GasLaw = 'slow' | 'fast'

/** Exponents of p·Vⁿ: slow gas stays at the temperature around it, fast gas keeps its heat (diatomic ideal gas, cp/cv). */
export const GAS_EXPONENT: Readonly<Record<GasLaw, number>> = { slow: 1, fast: 1.4 }

/** Nitrogen behind a shaft. */
export interface GasChamber {
  /** Shaft area, m². */
  readonly area: number
  /** Gauge pressure at full length, Pa. */
  readonly charge: number
  /** Gas volume at full length, m³, more than area × the travel asked for. */
  readonly volume: number
}

/** Area of a round section, m², of a diameter in m, 0 or more. */
export const circleArea = (diameter: number): number => (Math.PI / 4) * diameter ** 2

/**
 * Absolute pressure with the shaft in: (p₀ + patm)·(V₀/(V₀ − A·x))ⁿ, ideal gas, p·Vⁿ constant (source as for gasForce; what real nitrogen
 * does beyond it is bounded in tests/published).
 * @param travel shaft in from full length, m, 0 or more; the volume it displaces must be less than the gas, or the answer is not a number
 * @returns Pa
 */
export function gasPressure({ area, charge, volume }: GasChamber, travel: number, law: GasLaw): number {
  return (charge + ATMOSPHERE) * (volume / (volume - area * travel)) ** GAS_EXPONENT[law]
}

/**
 * Force of a gas chamber on its shaft and the slope of that force: F = A·(p − patm), dF/dx = n·A²·p/(V₀ − A·x).
 * Ideal gas, p·Vⁿ constant (W. Bauer, Hydropneumatic Suspension Systems, Springer 2011, ch. 2; the shape checked in tests/published).
 * @param travel shaft in from full length, m, 0 or more; the volume it displaces must be less than the gas
 * @returns N and N/m
 */
export function gasForce(chamber: GasChamber, travel: number, law: GasLaw): ValueAndSlope {
  const { area, volume } = chamber
  const pressure = gasPressure(chamber, travel, law)
  return {
    value: area * (pressure - ATMOSPHERE),
    slope: (GAS_EXPONENT[law] * area ** 2 * pressure) / (volume - area * travel),
  }
}

/**
 * Energy the shaft has put in from full length, J: ∫A·(p − patm)dx in closed form, (p₀ + patm)·V₀ times ln r, or (rⁿ⁻¹ − 1)/(n − 1), with
 * r = V₀/(V₀ − A·x), less what the atmosphere did.
 * @param travel as for gasForce
 */
export function gasEnergy({ area, charge, volume }: GasChamber, travel: number, law: GasLaw): number {
  const ratio = volume / (volume - area * travel)
  const above = GAS_EXPONENT[law] - 1
  const squeezed = above === 0 ? Math.log(ratio) : (ratio ** above - 1) / above
  return (charge + ATMOSPHERE) * volume * squeezed - ATMOSPHERE * area * travel
}
