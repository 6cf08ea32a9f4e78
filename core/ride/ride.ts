import type { CornerModel } from '../corner/corner-model.ts'
import type { Terrain } from '../plan/schema.ts'
import { drive, type RunOptions } from './simulate.ts'

/** Bars of the histogram of wheel position, from full droop to full bump. */
export const HISTOGRAM_BARS = 48

/** One meeting of pad and stop. */
export interface Hit {
  readonly time: number
  /** Along the stop, m/s. */
  readonly speed: number
  /** How far in the stop still was when it was met, m: more than 0 when it had not come all the way out. */
  readonly stillIn: number
}

/** What one corner did on one terrain. Wheel positions in m from ride height; forces in N, at the wheel unless said otherwise. */
export interface RideFigures {
  readonly duration: number
  readonly share: {
    readonly droop: number
    readonly coilover: number
    readonly engagement: number
    readonly onStop: number
    readonly air: number
  }
  readonly hits: number
  readonly bottoms: number
  readonly wheelMax: number
  readonly wheelMin: number
  readonly suspensionForceMax: number
  /** Along the stop. */
  readonly stopForceMax: number
  /** Fastest meeting of pad and stop, along the stop, m/s. */
  readonly stopSpeedMax: number
  readonly chassisAccelMax: number
  readonly chassisAccelRms: number
}

export interface RideTrace {
  readonly time: readonly number[]
  readonly wheel: readonly number[]
  readonly road: readonly number[]
  readonly chassis: readonly number[]
  readonly suspensionForce: readonly number[]
  readonly stopForce: readonly number[]
  readonly tireForce: readonly number[]
  readonly chassisAcceleration: readonly number[]
}

export interface Ride extends RideFigures {
  readonly ok: true
  readonly trace: RideTrace
  /** Share of the time in each bar, from full droop up; what lies past the ends is in the end bars. */
  readonly histogram: readonly number[]
  readonly events: readonly Hit[]
  /** Work taken over the run, J: dissipated by the dampers, taken net by the stop, by the tire and by steel at the ends; done by the road. */
  readonly work: {
    readonly damper: number
    readonly stop: number
    readonly tire: number
    readonly ends: number
    readonly road: number
    readonly springs: number
  }
  /** Figures that hang on the stiffness of steel meeting steel: peaks of a run that bottomed. */
  readonly contactDependent: boolean
  readonly dampingAssumed: boolean
  readonly evaluations: number
}

export type RideOutcome =
  | Ride
  | { readonly ok: false; readonly reason: 'no rest' | 'step too short'; readonly time: number }

/** Time between moments kept, s. */
const SAMPLE = 1e-3

/**
 * Drives one corner over one terrain and says what it did (quarter car, fast gas, the stop as a state of its own; simulate.ts).
 * A car that has no rest inside its travel cannot start: that is a named outcome.
 */
export function ride(model: CornerModel, terrain: Terrain, options: RunOptions = {}): RideOutcome {
  const engagement = model.engagement ?? Infinity
  const time = { droop: 0, coilover: 0, engagement: 0, onStop: 0, air: 0 }
  const peak = { wheelMax: -Infinity, wheelMin: Infinity, suspensionForceMax: 0, stopForceMax: 0, chassisAccelMax: 0 }
  const trace = {
    time: [] as number[],
    wheel: [] as number[],
    road: [] as number[],
    chassis: [] as number[],
    suspensionForce: [] as number[],
    stopForce: [] as number[],
    tireForce: [] as number[],
    chassisAcceleration: [] as number[],
  }
  const histogram = new Array<number>(HISTOGRAM_BARS).fill(0)
  const events: Hit[] = []
  let bottoms = 0
  let squares = 0
  let before = 0
  let sampled = -Infinity
  const travel = model.bump - model.droop
  const outcome = drive(
    model,
    terrain,
    {
      moment: (now, state, moment, modes) => {
        const wheel = moment.wheelPosition
        const force = moment.springs + moment.damper + moment.stopAtWheel + moment.end
        const passed = now - before
        before = now
        time[wheel < 0 ? 'droop' : wheel < engagement ? 'coilover' : 'engagement'] += passed
        if (modes.stop === 'touching' || modes.stop === 'resting') time.onStop += passed
        if (moment.tire <= 0) time.air += passed
        squares += passed * moment.chassisAcceleration ** 2
        const bar = travel > 0 ? Math.floor(((wheel - model.droop) / travel) * HISTOGRAM_BARS) : 0
        histogram[Math.min(HISTOGRAM_BARS - 1, Math.max(0, bar))]! += passed
        peak.wheelMax = Math.max(peak.wheelMax, wheel)
        peak.wheelMin = Math.min(peak.wheelMin, wheel)
        peak.suspensionForceMax = Math.max(peak.suspensionForceMax, force)
        peak.stopForceMax = Math.max(peak.stopForceMax, moment.stop)
        peak.chassisAccelMax = Math.max(peak.chassisAccelMax, Math.abs(moment.chassisAcceleration))
        if (now - sampled < SAMPLE * 0.999) return
        sampled = now
        trace.time.push(now)
        trace.wheel.push(wheel)
        trace.road.push(moment.road)
        trace.chassis.push(state[0]!)
        trace.suspensionForce.push(force)
        trace.stopForce.push(moment.stop)
        trace.tireForce.push(moment.tire)
        trace.chassisAcceleration.push(moment.chassisAcceleration)
      },
      touch: (now, speed, stillIn) => events.push({ time: now, speed, stillIn }),
      bottom: () => {
        bottoms += 1
      },
    },
    { sample: SAMPLE, ...options },
  )
  if (!outcome.ok) return outcome
  const duration = outcome.car.road.duration
  const shareOf = (seconds: number): number => seconds / duration
  const { end } = outcome
  return {
    ok: true,
    duration,
    share: {
      droop: shareOf(time.droop),
      coilover: shareOf(time.coilover),
      engagement: shareOf(time.engagement),
      onStop: shareOf(time.onStop),
      air: shareOf(time.air),
    },
    hits: events.length,
    bottoms,
    ...peak,
    stopSpeedMax: events.reduce((most, hit) => Math.max(most, hit.speed), 0),
    chassisAccelRms: Math.sqrt(squares / duration),
    trace,
    histogram: histogram.map(shareOf),
    events,
    work: { damper: end[5]!, stop: end[6]!, tire: end[7]!, ends: end[9]!, road: end[8]!, springs: end[10]! },
    contactDependent: bottoms > 0,
    dampingAssumed: outcome.car.dampingAssumed,
    evaluations: outcome.evaluations,
  }
}
