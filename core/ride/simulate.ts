import { DormandPrince } from '../numerics/dormand-prince.ts'
import { AT_ONCE, Events } from './events.ts'
import { STATE, STATES, type Vehicle } from './vehicle.ts'
import { type Happenings, happen } from './watches.ts'

/** Largest error a step may make at tolerance 1: chassis and wheel in m and m/s, stop in m. So chosen that wheels are within a hundredth or two of a millimetre all along. */
const TOLERANCE = [2.5e-7, 2.5e-6, 2.5e-7, 7.5e-6, 2.5e-7]

/** First step, and longest one right after something happened, s. */
const FIRST = 1e-4
const AFTERWARDS = 1e-3

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

/** Hears a run in rising order of time. At a moment, the corners of the vehicle hold its forces. */
export interface Listener extends Happenings {
  /** Even samples; turns of a wheel against its chassis; ends of steps, where alone the works done are known. */
  moment(time: number, state: Float64Array, kind: 'sample' | 'turn' | 'end'): void
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
        vehicle.slopes(time, state, slopes)
        if (this.solver.stage === 2 || this.solver.stage === 3) this.events.stage(state)
      },
      vehicle.steered,
      vehicle.size,
    )
    this.events = new Events(vehicle, this.solver)
  }

  private tell(time: number, state: Float64Array, kind: 'sample' | 'turn' | 'end'): void {
    this.vehicle.look(time, state)
    this.listener.moment(time, state, kind)
  }

  /** Tells what lies inside the step last taken, up to a share of it: even samples, and turns between them. */
  private tellInside(share: number): void {
    const { solver, events, inner, vehicle } = this
    const { time, length } = solver
    this.toldInside = false
    for (let turn = 0; ; ) {
      const at = this.samples * this.sample
      // A sample that falls on the end of the step but for rounding is inside it.
      const even = Math.min((at - time) / length, share)
      const turned = turn < events.turns ? events.turned[turn]! : Infinity
      const isEven = at - time <= (share + ROUNDING) * length && even <= turned
      if (!isEven && turned > share) return
      const next = Math.max(0, isEven ? even : turned)
      this.toldInside = true
      solver.within(next, inner, vehicle.steered)
      this.tell(isEven ? at : time + next * length, inner, isEven ? 'sample' : 'turn')
      if (isEven) this.samples += 1
      else turn += 1
    }
  }

  /** While touching, the stop is where the pad is. */
  private settleStops(state: Float64Array): void {
    this.vehicle.corners.forEach(({ modes, pad }, i) => {
      if (modes.stop === 'touching') state[STATES * i + STATE.stop] = Math.max(0, pad)
    })
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
      events.suspected = false
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
      if (share === 1) state.set(solver.end)
      else solver.within(share, state)
      this.time = share === 1 && step === left ? stop : solver.time + share * step
      if (events.looked || this.toldInside) vehicle.look(this.time, state)
      listener.moment(this.time, state, 'end')
      this.settleStops(state)
      if (place < 0) {
        this.atOnce = 0
        solver.advance()
        events.armed(state)
        continue
      }
      this.atOnce = share <= AT_ONCE ? this.atOnce + 1 : 0
      happen(vehicle, place, state, this.time, listener)
      this.length = Math.min(this.length, AFTERWARDS)
      this.begin()
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
