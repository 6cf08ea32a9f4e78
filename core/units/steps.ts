import { INCH, PSI } from './constants.ts'
import type { System } from './quantity.ts'

/**
 * Steps a shop works in, by its own units: spacers and shims by the eighth or by 3 and 2 mm, nitrogen by 10 psi or half a bar, oil by a quarter
 * of a cubic inch or 5 cm³. SI. Common practice.
 */
export const STEPS = {
  inch: { spacer: INCH / 8, charge: 10 * PSI, shim: INCH / 8, oil: 0.25 * INCH ** 3 },
  metric: { spacer: 3e-3, charge: 0.5e5, shim: 2e-3, oil: 5e-6 },
} as const satisfies Readonly<Record<System, unknown>>

/** A rounding left by a conversion, as a share of a step. */
const NEAR = 1e-6

/** A charge as it is set at a gauge: the nearest whole step, Pa. */
export const nearestCharge = (charge: number, system: System): number => {
  const { charge: step } = STEPS[system]
  return Math.round(charge / step) * step
}

/** The highest charge set at a gauge that is no more than this, Pa: whole steps, or less than one as it is. */
export const chargeBelow = (charge: number, system: System): number => {
  const { charge: step } = STEPS[system]
  return charge < step ? charge : Math.floor(charge / step + NEAR) * step
}
