import { cornerModel } from '../corner/corner.ts'
import { gasEnergy, gasForce } from '../forces/gas.ts'
import { chamberOf } from '../forces/stop.ts'
import { findRoot } from '../numerics/roots.ts'
import type { Corner, HydraulicStop } from '../plan/schema.ts'
import { metalVolume } from '../spacer/tube.ts'
import type { Say } from '../units/saying.ts'
import { applyChange } from './apply.ts'
import type { Spacer } from './change.ts'
import { closedPressure, closesAt, type HydraulicCorner, isHydraulic } from './stop-in-corner.ts'

/** A figure of the stop as it was and as it would be. */
export interface BeforeAfter<Value = number> {
  readonly before: Value
  readonly after: Value
}

/** A charge (Pa, gauge) or an amount of oil left out (m³) that brings something back; or why none does. */
export type Restored =
  | {
      readonly found: true
      readonly value: number
      /** Closed in a hit with that, Pa gauge, and whether it is above what the body is rated for; null when its rating is not known. */
      readonly pressure: number
      readonly overRated: boolean | null
    }
  | { readonly found: false; readonly reason: string }

/** What a spacer inside a stop does, with the charge as it is and fast gas. SI; forces along the stop, wheel positions from ride height. */
export interface SpacerEffect {
  readonly after: HydraulicCorner
  /** Where the stop is closed along its axis, from ride height: the same before and after. */
  readonly closesAt: number
  /** Wheel position at which it closes, before and after; null where something else ends the travel first. */
  readonly closesAtWheel: BeforeAfter<number | null>
  readonly engagement: BeforeAfter<number | null>
  /** Coilover zone over bump travel, 0 to 1. */
  readonly share: BeforeAfter
  readonly stroke: BeforeAfter
  readonly gap: BeforeAfter
  readonly gasVolume: BeforeAfter
  /** When it closes in a hit: force, energy it has taken since the touch, gauge pressure. */
  readonly force: BeforeAfter
  readonly energy: BeforeAfter
  readonly pressure: BeforeAfter
  /** Charge, and oil left out, each on its own, with which it closes at the same force or has taken the same energy. */
  readonly charge: { readonly sameForce: Restored; readonly sameEnergy: Restored }
  readonly oil: { readonly sameForce: Restored; readonly sameEnergy: Restored }
}

export type SpacerEffectOutcome =
  | ({ readonly ok: true } & SpacerEffect)
  | { readonly ok: false; readonly reason: string }

/** Force along a stop closed in a hit, N. */
export const closedForce = (stop: HydraulicStop): number => gasForce(chamberOf(stop), stop.stroke, 'fast').value

/** Energy a stop has taken when it closes in a hit, J. */
export const closedEnergy = (stop: HydraulicStop): number => gasEnergy(chamberOf(stop), stop.stroke, 'fast')

/** Highest charge looked for, Pa: what a plan may say. */
const MOST_CHARGE = 2e8

/** A charge is solved to 10⁻⁶ Pa, oil to 10⁻¹⁸ m³: force and energy then agree to far better than one in a thousand million. */
const FINE = { charge: 1e-6, oil: 1e-18 } as const

/** Nearest the gas volume is let come to what the shaft pushes aside, as a share of it, looking for oil. */
const LEAST_ROOM = 1e-6

const restoredBy = (value: number, stop: HydraulicStop): Restored => {
  const pressure = closedPressure(stop)
  const rated = stop.body?.ratedPressure
  return { found: true, value, pressure, overRated: rated === undefined ? null : pressure > rated }
}

function byCharge(stop: HydraulicStop, of: (stop: HydraulicStop) => number, wanted: number): Restored {
  const at = (charge: number): HydraulicStop => ({ ...stop, charge })
  const root = findRoot(charge => of(at(charge)) - wanted, 0, MOST_CHARGE, FINE.charge)
  if (root.found) return restoredBy(root.at, at(root.at))
  return {
    found: false,
    reason: of(at(0)) > wanted ? 'Even without any charge there is more.' : 'No charge brings it back.',
  }
}

/** @param stop with the spacer in and `oil` left out; the answer is the oil to leave out instead, negative: to put in */
function byOil(stop: HydraulicStop, oil: number, of: (stop: HydraulicStop) => number, wanted: number): Restored {
  const { area } = chamberOf(stop)
  const least = area * stop.stroke * (1 + LEAST_ROOM)
  const at = (gasVolume: number): HydraulicStop => ({ ...stop, gasVolume })
  const root = findRoot(volume => of(at(volume)) - wanted, least, Math.max(1, 2 * stop.gasVolume), FINE.oil)
  if (root.found) return restoredBy(oil + root.at - stop.gasVolume, at(root.at))
  return { found: false, reason: 'No oil level brings it back with this charge.' }
}

const shareOf = (engagement: number | null, bump: number): number =>
  bump === 0 ? 0 : engagement === null ? 1 : Math.max(0, engagement) / bump

/**
 * What putting a spacer in does and does not do, and what brings the end of the stroke back.
 * @param oilLeftOut m³; as much as its metal takes up when not given
 */
export function spacerEffect(corner: Corner, spacer: Spacer, say: Say, oilLeftOut?: number): SpacerEffectOutcome {
  const oil = oilLeftOut ?? metalVolume(spacer, spacer.length)
  const made = applyChange(corner, { kind: 'spacer', ...spacer, oilLeftOut: oil }, say)
  if (!made.ok) return made
  const after = made.corner
  if (!isHydraulic(corner) || !isHydraulic(after)) return { ok: false, reason: 'There is no hydraulic stop.' }
  const [was, is] = [cornerModel(corner), cornerModel(after)]
  const both = <Value>(of: (stop: HydraulicStop) => Value): BeforeAfter<Value> => ({
    before: of(corner.stop),
    after: of(after.stop),
  })
  const force = both(closedForce)
  const energy = both(closedEnergy)
  const { stop } = after
  return {
    ok: true,
    after,
    closesAt: closesAt(corner.stop),
    closesAtWheel: { before: was.bumpLimits['stop closed'] ?? null, after: is.bumpLimits['stop closed'] ?? null },
    engagement: { before: was.engagement, after: is.engagement },
    share: { before: shareOf(was.engagement, was.bump), after: shareOf(is.engagement, is.bump) },
    stroke: both(each => each.stroke),
    gap: both(each => each.gap),
    gasVolume: both(each => each.gasVolume),
    force,
    energy,
    pressure: both(closedPressure),
    charge: {
      sameForce: byCharge(stop, closedForce, force.before),
      sameEnergy: byCharge(stop, closedEnergy, energy.before),
    },
    oil: {
      sameForce: byOil(stop, oil, closedForce, force.before),
      sameEnergy: byOil(stop, oil, closedEnergy, energy.before),
    },
  }
}
