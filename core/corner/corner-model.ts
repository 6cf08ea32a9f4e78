import type { GasLaw } from '../forces/gas.ts'
import type { LinkageModel } from '../linkage/linkage-model.ts'
import type { Corner } from '../plan/schema.ts'

export type { GasLaw }

/** Forces at the wheel, N, positive pushing the wheel down. */
export interface WheelForces {
  readonly springs: number
  /** Of the shock's shaft. */
  readonly gas: number
  readonly stop: number
  readonly total: number
}

/** Where the parts of a corner stand at one wheel position; lengths in m. */
export interface PartPositions {
  /** Shaft in from full extension. */
  readonly shockCompression: number
  /** Shaft still showing. */
  readonly shockLeft: number
  /** Compression of each spring, listed from the chassis end, and what is left of it to coil bind. */
  readonly springs: readonly { readonly compression: number; readonly left: number }[]
  /** Shaft (or foam) of the stop pushed in; 0 before the touch, null without a stop. */
  readonly stopCompression: number | null
  readonly stopLeft: number | null
  /** Pad to foot along the stop's axis, negative once touching, null without a stop. */
  readonly stopGap: number | null
}

export type BumpLimit = 'stop closed' | 'shock closed' | 'coil bind' | 'chassis contact' | 'linkage end'
export type DroopLimit = 'shock extended' | 'limit strap' | 'linkage end'

/** One corner put together. Wheel positions in m from ride height, positive in bump; forces in N. */
export interface CornerModel {
  readonly corner: Corner
  readonly linkage: LinkageModel
  /** Full bump, 0 or more. */
  readonly bump: number
  readonly bumpLimitedBy: BumpLimit
  /** Every bump limit found within 1 m. */
  readonly bumpLimits: Readonly<Partial<Record<BumpLimit, number>>>
  /** Full droop, 0 or less. */
  readonly droop: number
  readonly droopLimitedBy: DroopLimit
  /** Every droop limit found within 1 m. */
  readonly droopLimits: Readonly<Partial<Record<DroopLimit, number>>>
  /** Where pad and stop meet (may lie below ride height); null without a stop or when it is not met by full bump. */
  readonly engagement: number | null
  /** Where the springs above the main are all locked; full droop if they are there, null if never in the travel. */
  readonly crossover: number | null
  /** Wheel positions strictly inside the travel where force or its slope breaks, rising. */
  readonly kinks: readonly number[]
  /** Forces at a wheel position; at the first touch `below` gives the foot of the step, `above` (the default) its top. */
  forces(wheel: number, law: GasLaw, side?: 'below' | 'above'): WheelForces
  /** Force along the stop itself, N. */
  stopForce(wheel: number, law: GasLaw): number
  /** Energy in springs, gas and stop together, J. What the corner takes between two places is the difference: ∫F dw, whatever the path. */
  energy(wheel: number, law: GasLaw): number
  /**
   * Slope of the total force, N/m: k·MR² and F·dMR/dw together, for shock and stop alike (the second term as in J. C. Dixon, Suspension
   * Geometry and Computation, 2009); at a kink the mean of both sides unless one is asked for, at an end of the travel the inner one.
   */
  wheelRate(wheel: number, law: GasLaw, side?: 'below' | 'above'): number
  parts(wheel: number): PartPositions
}
