import { axleBudget } from '../budget/budget.ts'
import { cornerModel } from '../corner/corner.ts'
import type { CornerModel } from '../corner/corner-model.ts'
import { gasPressure } from '../forces/gas.ts'
import { chamberOf } from '../forces/stop.ts'
import type { Axle, Plan, Targets } from '../plan/schema.ts'
import { ride } from '../ride/ride.ts'
import type { Course } from '../ride/terrain.ts'
import { ATMOSPHERE, INCH } from '../units/constants.ts'
import { type Say, sayIn } from '../units/saying.ts'
import { changeAxle } from './apply.ts'
import type { Change } from './change.ts'
import { type LandingHeight, landingHeight } from './landing.ts'
import { carried, comesToRest, type Rest } from './ride-height.ts'
import { isHydraulic } from './stop-in-corner.ts'
import { againstTargets, type TargetResult } from './targets.ts'

/** What a setup comes to in the terms of the targets. SI. */
export interface CandidateFigures {
  /** Coilover zone over bump travel, 0 to 1. */
  readonly share: number
  /** Length of the coilover zone, m. */
  readonly coiloverTravel: number
  readonly bump: number
  readonly landing: LandingHeight
  readonly shockLeft: number
  /** Gauge, closed or as far in as full bump takes it, in a hit; null without gas in a stop that is met. */
  readonly stopPressure: number | null
  /** Energy taken from ride height to full bump, fast gas, J, and force of the stop there, N along it. */
  readonly energy: number
  readonly stopForce: number
}

/** The figures of a corner as it stands. */
function figuresOf(model: CornerModel, landing: LandingHeight['by'] = 'simulation'): CandidateFigures {
  const { corner, bump, engagement } = model
  const coiloverTravel = Math.min(bump, Math.max(0, engagement ?? bump))
  const { shockLeft, stopCompression } = model.parts(bump)
  const pressed = isHydraulic(corner) && engagement !== null && stopCompression !== null
  return {
    share: bump === 0 ? 0 : coiloverTravel / bump,
    coiloverTravel,
    bump,
    landing: landingHeight(model, landing),
    shockLeft,
    stopPressure: pressed ? gasPressure(chamberOf(corner.stop), stopCompression, 'fast') - ATMOSPHERE : null,
    energy: model.energy(bump, 'fast') - model.energy(0, 'fast'),
    stopForce: model.stopForce(bump, 'fast'),
  }
}

/** What a candidate does over a course besides landing. */
export interface CandidateRide {
  readonly course: string
  readonly hits: number
  readonly bottoms: number
  /** Of the time, 0 to 1. */
  readonly onStop: number
  /** N, along the stop. */
  readonly stopForceMax: number
  /** m/s². */
  readonly chassisAccelMax: number
}

/** One combination of changes, worked out, or why it cannot be made. */
export type Candidate =
  | {
      readonly ok: true
      readonly changes: readonly Change[]
      /** What it would be a setup of. */
      readonly axle: Axle
      /** Wheel travel it sits lower than measured once changed, m; negative higher; 0 where less than the tape shows. */
      readonly settles: number
      readonly figures: CandidateFigures
      /** Over the course asked for; null where none was, or the ride does not get to its end. */
      readonly ride: CandidateRide | null
      readonly targets: readonly TargetResult[]
      /** Dangers it has that the setup it is made from has not, in sentences. */
      readonly dangers: readonly string[]
      /** Every target met, and no new danger. */
      readonly feasible: boolean
    }
  | { readonly ok: false; readonly changes: readonly Change[]; readonly reason: string }

export type Worked = Extract<Candidate, { ok: true }>

/** A ride height that changes by less than a tape's sixteenth is the same, m. */
const TAPE = INCH / 16

/** What candidates are worked out from: a setup's axle, what is aimed at, and how landings are known. */
export interface Question {
  readonly axle: Axle
  readonly units: Plan['units']
  readonly targets: Targets
  readonly landing?: LandingHeight['by']
  /** A course every candidate is driven over as well. */
  readonly course?: Course
}

function rideOver(model: CornerModel, course: Course): CandidateRide | null {
  const ridden = ride(model, course)
  if (!ridden.ok) return null
  const { hits, bottoms, share, stopForceMax, chassisAccelMax } = ridden
  return { course: course.id, hits, bottoms, onStop: share.onStop, stopForceMax, chassisAccelMax }
}

const dangersOf = (axle: Axle, model: CornerModel, { units, targets }: Question, say: Say) =>
  axleBudget(axle, { units, targets }, model, say).findings.filter(({ severity }) => severity === 'danger')

/** Works candidates out one by one, each from nothing but its own changes: alone or among others it comes to the same. */
export function evaluator(question: Question): (changes: readonly Change[]) => Candidate {
  const { axle, units, targets, landing, course } = question
  const say = sayIn(units)
  const present = cornerModel(axle.corner)
  const weight = carried(present)
  const known = new Set(dangersOf(axle, present, question, say).map(({ id }) => id))
  return changes => {
    const refused = (reason: string): Candidate => ({ ok: false, changes, reason })
    const made = changeAxle(axle, changes, say)
    if (!made.ok) return refused(made.reason)
    const model = cornerModel(made.axle.corner)
    // What it carries is what it carried before, also where a stop no longer holds part of it.
    const rest: Rest = changes.length === 0 ? { ok: true, wheel: 0 } : comesToRest(model, weight)
    if (!rest.ok) return refused(`It would not sit: the car goes to ${rest.end}.`)
    const settle: Change = { kind: 'settle', at: rest.wheel }
    const moves = Math.abs(rest.wheel) > TAPE
    const settled = moves ? changeAxle(made.axle, [settle], say) : made
    if (!settled.ok) return refused(settled.reason)
    const after = moves ? cornerModel(settled.axle.corner) : model
    const figures = figuresOf(after, landing)
    const results = againstTargets(figures, targets)
    const dangers = dangersOf(settled.axle, after, question, say).filter(({ id }) => !known.has(id))
    return {
      ok: true,
      changes: moves ? [...changes, settle] : changes,
      axle: settled.axle,
      settles: moves ? rest.wheel : 0,
      figures,
      ride: course === undefined ? null : rideOver(after, course),
      targets: results,
      dangers: dangers.map(({ message }) => message),
      feasible: dangers.length === 0 && results.every(({ met }) => met),
    }
  }
}
