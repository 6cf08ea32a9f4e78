import type { Corner, HydraulicStop } from '../../core/plan/schema.ts'
import { INCH, POUND_FORCE, PSI } from '../../core/units/constants.ts'

/** One pound per inch, N/m. */
export const LB_IN = POUND_FORCE / INCH

/**
 * A corner anybody can follow by hand: shock and stop move with the wheel, one long spring of 200 lb/in, no gas, no stop.
 * 12 in of shock, 6 of them showing. Other values replace these, whole branches at a time.
 */
export const plainCorner = (other: Partial<Corner> = {}): Corner => ({
  cornerMass: 350,
  unsprungMass: 50,
  linkage: { kind: 'ratio', shock: 1, stop: 1 },
  shock: { stroke: 12 * INCH, showing: 6 * INCH, shaftDiameter: 0.02, gas: null, compression: [], rebound: [] },
  springs: {
    springs: [{ name: 'main', rate: 200 * LB_IN, freeLength: 20 * INCH, solidLength: 4 * INCH }],
    preload: 0,
    crossover: null,
  },
  stop: null,
  tire: { radius: 0.4, rate: 1200 * LB_IN, damping: 400 },
  clearance: { bump: null, droop: null },
  ...other,
})

/** A stop of 2 in diameter and 4 in stroke at 200 psi, with gas enough; other values replace these. */
export const plainStop = (other: Partial<HydraulicStop> = {}): HydraulicStop => ({
  kind: 'hydraulic',
  stroke: 4 * INCH,
  gap: 2 * INCH,
  shaftDiameter: 2 * INCH,
  charge: 200 * PSI,
  gasVolume: Math.PI * 5 * INCH ** 3,
  ...other,
})
