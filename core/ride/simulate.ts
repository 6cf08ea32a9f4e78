import { DormandPrince } from '../numerics/dormand-prince.ts'
import { AT_ONCE, Events } from './events.ts'
import { WATCH, WATCHES } from './modes.ts'
import type { Vehicle } from './vehicle.ts'
import { type Happenings, happen } from './watches.ts'

/** Largest error a step may make at tolerance 1: chassis and wheel in m and m/s, stop in m. So chosen that wheels are within a hundredth of a millimetre all along. */
const TOLERANCE = [5e-7, 5e-6, 5e-7, 1.5e-5, 5e-7]

/** First step, and longest one right after something happened, and right after steel met steel, s. */
const FIRST = 1e-4
const AFTERWARDS = 6e-3
const AFTER_STEEL = 1e-3

/** Longest step while steel takes a hit, s: its force comes and goes in a few ms, and its peak is among what is told. */
const IN_STEEL = 5e-4

/** Shortest step before a run gives up, s. */
const SHORTEST = 1e-9

/** Steps before a run gives up: so many in all, and so many a second. Far more than any car needs: about 300 a second. */
const MOST = 50_000
const MOST_A_SECOND = 20_000

/** So many events without time passing, and the next step is taken whatever happens in it, no longer than this, s. */
const STUCK = 20
const FORCED = 1e-6

/** Shares of a step that differ by less are one place. */
const ROUNDING = 1e-12

export type Moment = 'sample' | 'end' | 'after'

/** Hears a run in rising order of time. At a moment, the corners of the vehicle hold its forces. */
export interface Listener extends Happenings {
  /** Even samples; ends of steps where something happens or no sample is near; and the same moment again right after something happened there. */
  moment(time: number, state: Float64Array, kind: Moment): void
  /** Ends of steps, where alone the works done are known; the corners hold forces of another moment. */
  worked(state: Float64Array): void
}

export interface RunOptions {
  /** Scales every tolerance: 0.1 is ten times tighter. */
  readonly tolerance?: number
  /** Times between even samples, s. */
  readonly sample?: number
}

export type RunOutcome =
  | { readonly ok: true; readonly steps: number; readonly evaluations: number; readonly end: Float64Array }
  | { readonly ok: false; readonly reason: 'too many steps' | 'step too short'; readonly time: number }

/** Time between even samples where nobody asks for another, s. */
export const SAMPLE = 2e-3

/** Longest step after a watch was passed, s: where only a curve's slope changes, the steps go on as they were. */
function longestAfter(place: number): number {
  const which = place % WATCHES
  if (which === WATCH.turn || which === WATCH.region) return Infinity
  return which === WATCH.end || which === WATCH.endAlso ? AFTER_STEEL : AFTERWARDS
}

class Run {
  readonly state: Float64Array
  steps = 0
  evaluations = 0
  private readonly solver: DormandPrince
  private readonly events: Events
  private readonly inner: Float64Array
  /** Even samples told. */
  private samples = 0
  /** Whether the last step had something to tell inside, so that the vehicle was looked at there. */
  private toldInside = false
  private time = 0
  private length = FIRST
  /** Events in a row that let no time pass. */
  private atOnce = 0

  constructor(
    private readonly vehicle: Vehicle,
    start: Float64Array,
    private readonly listener: Listener,
    private readonly sample: number,
  ) {
    this.state = start.slice()
    this.inner = new Float64Array(vehicle.size)
    this.solver = new DormandPrince(
      (time, state, slopes) => {
        this.evaluations += 1
        const { stage } = this.solver
        // The second look of a step has no weight at its end.
        vehicle.slopes(time, state, slopes, stage !== 1)
        if (stage === 2 || stage === 3) this.events.stage(state)
      },
      vehicle.steered,
      vehicle.size,
    )
    this.events = new Events(vehicle, this.solver)
  }

  private tellEnd(): void {
    const { vehicle, events, time, state } = this
    if (events.looked || this.toldInside) vehicle.look(time, state)
    this.listener.moment(time, state, 'end')
  }

  /** Tells the even samples inside the step last taken, up to a share of it. */
  private tellInside(share: number): void {
    const { solver, inner, vehicle } = this
    const { time, length } = solver
    this.toldInside = false
    // A sample that falls on the end of the step but for rounding is inside it.
    const until = (share + ROUNDING) * length
    for (let at = this.samples * this.sample; at - time <= until; at = this.samples * this.sample) {
      solver.within(Math.max(0, Math.min((at - time) / length, share)), inner, vehicle.steered)
      vehicle.look(at, inner)
      this.listener.moment(at, inner, 'sample')
      this.toldInside = true
      this.samples += 1
    }
  }

  private begin(): void {
    this.solver.begin(this.time, this.state)
    this.events.armed(this.state)
  }

  /** Goes on to a break of the road; null when it gets there. */
  to(stop: number, tolerance: Float64Array, mostSteps: number): RunOutcome | null {
    const { solver, events, vehicle, state, listener } = this
    const longest = Math.min(...vehicle.roads.map(road => road.longestStep(this.time)))
    vehicle.between(this.time, stop)
    this.begin()
    while (this.time < stop) {
      const forced = this.atOnce > STUCK
      const left = stop - this.time
      const most = forced ? FORCED : vehicle.bottomed() ? IN_STEEL : longest
      const step = Math.min(this.length, most, left)
      events.forget()
      const error = solver.attempt(step, tolerance)
      this.length = step * Math.min(5, Math.max(0.2, 0.9 * Math.max(error, 1e-10) ** -0.2))
      if (!(error <= 1)) {
        if (step <= SHORTEST) return { ok: false, reason: 'step too short', time: this.time }
        if (!Number.isFinite(error)) this.length = step * 0.1
        continue
      }
      this.steps += 1
      if (this.steps > mostSteps) return { ok: false, reason: 'too many steps', time: this.time }
      const place = events.first()
      const share = place < 0 || forced ? 1 : events.share
      this.tellInside(share)
      if (share === 1) for (let i = 0; i < state.length; i += 1) state[i] = solver.end[i]!
      else solver.within(share, state)
      this.time = share === 1 && step === left ? stop : solver.time + share * step
      if (place < 0) {
        // Between samples nothing is missed but what steel does: what peaks where a wheel turns is told there.
        if (!this.toldInside || vehicle.onSteel() || this.time === stop) this.tellEnd()
        listener.worked(state)
        this.atOnce = 0
        solver.advance()
        events.goOn()
        continue
      }
      this.tellEnd()
      listener.worked(state)
      this.atOnce = share <= AT_ONCE ? this.atOnce + 1 : 0
      happen(vehicle, place, state, this.time, listener)
      this.length = Math.min(this.length, longestAfter(place))
      this.begin()
      listener.moment(this.time, state, 'after')
    }
    return null
  }
}

/**
 * Drives a vehicle over its roads from a state: an adaptive pair that stops at every touch, parting and limit and goes on from there.
 * The listener hears every moment. A run that needs too many steps, or too short ones, ends with that as its outcome.
 */
export function drive(vehicle: Vehicle, start: Float64Array, listener: Listener, options: RunOptions = {}): RunOutcome {
  const run = new Run(vehicle, start, listener, options.sample ?? SAMPLE)
  const scale = options.tolerance ?? 1
  const tolerance = Float64Array.from(vehicle.corners.flatMap(() => TOLERANCE.map(one => one * scale)))
  const duration = Math.max(...vehicle.roads.map(road => road.duration))
  const breaks = vehicle.roads.flatMap(road => road.breaks).filter(at => at > 0 && at < duration)
  const stops = [...new Set([...breaks, duration])].sort((a, b) => a - b)
  for (const stop of stops) {
    const ended = run.to(stop, tolerance, MOST + MOST_A_SECOND * duration)
    if (ended !== null) return ended
  }
  return { ok: true, steps: run.steps, evaluations: run.evaluations, end: run.state }
}
