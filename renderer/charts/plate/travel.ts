import type { AxleBudget } from '../../../core/budget/results.ts'
import type { System } from '../../../core/units/quantity.ts'
import { onTape } from '../text/length-spans.ts'

/** Positions the plate's lines stand at, m. */
export interface TravelMarks {
  readonly bump: number
  readonly droop: number
  /** Where pad and stop meet; null without a stop or when it is not met by full bump. */
  readonly engagement: number | null
  /** Where the coilover zone ends: engagement, held between ride height and full bump. */
  readonly coiloverEnd: number
}

export function travelMarks(budget: AxleBudget): TravelMarks {
  const { bump, droop } = budget.travel
  const engagement = budget.engagement?.wheel ?? null
  return {
    bump,
    droop: droop === 0 ? 0 : -droop,
    engagement,
    coiloverEnd: engagement === null ? bump : Math.min(Math.max(engagement, 0), bump),
  }
}

/** Lengths and shares as shown: positions are rounded to the tape first and then subtracted, so zones add up to the travel. */
export interface ShownZones {
  readonly bump: number
  readonly droop: number
  readonly coilover: number
  readonly engagement: number
  /** Whole percent of bump travel, adding up to 100; null without bump travel. */
  readonly coiloverPercent: number | null
  readonly engagementPercent: number | null
}

export function shownZones(budget: AxleBudget, system: System): ShownZones {
  const { bump, droop, coiloverEnd } = travelMarks(budget)
  const top = onTape(bump, system)
  const middle = onTape(coiloverEnd, system)
  const percent = bump > 0 ? Math.round((100 * coiloverEnd) / bump) : null
  return {
    bump: top,
    droop: Math.abs(onTape(droop, system)),
    coilover: middle,
    engagement: top - middle,
    coiloverPercent: percent,
    engagementPercent: percent === null ? null : 100 - percent,
  }
}
