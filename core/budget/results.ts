import type { BumpLimit, DroopLimit } from '../corner/corner-model.ts'

/** What the budget says of a plan. SI units; positions are wheel travel from ride height, positive in bump. */

export type ZoneId = 'droop' | 'coilover' | 'engagement'
export type Severity = 'danger' | 'caution' | 'note'

export interface Zone {
  readonly id: ZoneId
  readonly from: number
  readonly to: number
  readonly length: number
  /** Of bump travel, 0 to 1; 0 for droop. */
  readonly share: number
  /** ∫F dw with fast gas, J. */
  readonly energy: number
}

export interface Engagement {
  /** Wheel position where pad and stop meet; negative when already touching at ride height. */
  readonly wheel: number
  /** Shaft movement of the shock from ride height. */
  readonly shock: number
  /** Coilover zone over bump travel. */
  readonly share: number
  /** Slow wheel force just before the touch. */
  readonly force: number
}

export interface StaticPosition {
  readonly position: number
  readonly springForce: number
  readonly stopForce: number
  /** Slow wheel force at the measured ride height. */
  readonly rideForce: number
  readonly sprungWeight: number
}

export interface Ride {
  readonly motionRatio: number
  readonly wheelRate: number
  readonly frequency: number
  /** With the tire in series, Hz. */
  readonly frequencyOnTire: number
  /** Just past engagement, Hz; null without engagement in the travel. */
  readonly frequencyPastEngagement: number | null
}

/** One thing worth saying. `message` is in the plan's own units, `values` in SI. */
export interface Finding {
  readonly id: string
  readonly severity: Severity
  readonly message: string
  readonly values: Readonly<Record<string, number>>
  /** What would change it, in words. */
  readonly remedy: string
  /** Field it rests on, as a path inside the axle: `corner.stop.gap`; the plate marks it where it happens. */
  readonly field: string
  /** Wheel position where it happens, for the mark on the plate. */
  readonly at: number
  /** The column of the plate it belongs to. */
  readonly where: 'drawing' | 'budget' | 'shock' | 'main' | 'stop' | 'forces'
}

/** The budget of one axle, findings aside. */
export interface AxleFigures {
  readonly id: 'front' | 'rear'
  readonly travel: {
    readonly bump: number
    /** Positive: how far it droops. */
    readonly droop: number
    readonly total: number
    readonly bumpLimitedBy: BumpLimit
    readonly droopLimitedBy: DroopLimit
  }
  /** Bump limits found within 1 m of ride height. */
  readonly limits: Readonly<Partial<Record<BumpLimit, number>>>
  readonly engagement: Engagement | null
  readonly zones: readonly Zone[]
  readonly crossover: number | null
  readonly mainSpring: {
    readonly leftAtRide: number
    readonly leftAtEngagement: number | null
    readonly leftAtBump: number
  }
  readonly shockLeftAtBump: number
  readonly static: StaticPosition
  readonly ride: Ride
  readonly bump: { readonly forceSlow: number; readonly forceFast: number; readonly stopForceFast: number }
}

export interface AxleBudget extends AxleFigures {
  readonly findings: readonly Finding[]
}

export interface PlanBudget {
  readonly setups: readonly { readonly id: string; readonly axles: readonly AxleBudget[] }[]
}
