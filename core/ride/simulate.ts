import type { CornerModel } from '../corner/corner-model.ts'
import { restingPosition } from '../corner/static-position.ts'
import { DormandPrince } from '../numerics/dormand-prince.ts'
import { findRoot } from '../numerics/roots.ts'
import type { Terrain } from '../plan/schema.ts'
import { GRAVITY } from '../units/constants.ts'
import { type Modes, type Moment, QuarterCar, STATE, STATE_SIZE } from './quarter-car.ts'
import { roadOf } from './terrain.ts'

/** Largest error a step may make at tolerance 1: m, m/s, then J. Works done are carried along, not steered by. */
const TOLERANCE = [1e-6, 1e-4, 1e-6, 1e-4, 1e-6, ...Array<number>(STATE_SIZE - 5).fill(Infinity)]

/** Slower than this a pad that meets the stop may come to rest on its step, m/s. */
const RESTING_SPEED = 1e-3

/** Shortest step before a run gives up, s. */
const SHORTEST = 1e-9

/** Share of a step taken before an event that was due already at its start. */
const AT_ONCE = 1e-6

/** What a run tells while it goes: every moment in rising order of time. `touch` when pad meets stop, `bottom` when steel does. */
export interface Listener {
  moment(time: number, state: Float64Array, moment: Moment, modes: Modes): void
  touch?(time: number, padSpeed: number, pushedIn: number): void
  part?(time: number): void
  bottom?(time: number): void
}

export interface RunOptions {
  /** Scales every tolerance: 0.1 is ten times tighter. */
  readonly tolerance?: number
  /** Times between moments told besides the steps' own ends, s. */
  readonly sample?: number
}

export type RunOutcome =
  | {
      readonly ok: true
      readonly steps: number
      readonly evaluations: number
      readonly car: QuarterCar
      readonly end: Float64Array
      readonly start: Float64Array
    }
  | { readonly ok: false; readonly reason: 'no rest' | 'step too short'; readonly time: number }

/** An event: passed when its value goes from below zero to zero or more. */
interface Watch {
  readonly value: (moment: Moment, state: Float64Array, time: number) => number
  readonly happen: (moment: Moment, state: Float64Array, time: number) => void
}

class Run {
  readonly car: QuarterCar
  readonly state = new Float64Array(STATE_SIZE)
  readonly modes: Modes = { stop: 'clear', end: 'none', endPushes: false, ground: true }
  evaluations = 0
  steps = 0
  private readonly inner = new Float64Array(STATE_SIZE)

  constructor(
    readonly model: CornerModel,
    readonly terrain: Terrain,
    private readonly listener: Listener,
  ) {
    this.car = new QuarterCar(model, roadOf(terrain, model.corner.tire.radius))
  }

  readonly slopes = (time: number, state: Float64Array, slopes: Float64Array): void => {
    this.evaluations += 1
    const now = this.car.look(time, state, this.modes)
    slopes[STATE.chassis] = state[STATE.chassisSpeed]!
    slopes[STATE.chassisSpeed] = now.chassisAcceleration
    slopes[STATE.wheel] = state[STATE.wheelSpeed]!
    slopes[STATE.wheelSpeed] = now.wheelAcceleration
    slopes[STATE.stop] =
      this.modes.stop === 'touching'
        ? now.padSpeed
        : this.modes.stop === 'apart'
          ? -this.car.extensionSpeed(state[STATE.stop]!)
          : 0
    slopes[STATE.damperWork] = now.damper * now.wheelSpeed
    slopes[STATE.stopWork] = now.stopAtWheel * now.wheelSpeed
    slopes[STATE.tireWork] = now.tire * (now.roadRise - state[STATE.wheelSpeed]!)
    slopes[STATE.roadWork] = now.tire * now.roadRise
    slopes[STATE.endWork] = now.end * now.wheelSpeed
    slopes[STATE.springWork] = now.springs * now.wheelSpeed
  }

  /** Where the car stands or falls at the start; false when it has no rest to start from. */
  begin(): boolean {
    const { model, car, state, modes } = this
    const { tire, cornerMass } = model.corner
    if (this.terrain.kind === 'landing') {
      const speed = -Math.sqrt(2 * GRAVITY * this.terrain.drop)
      state[STATE.chassis] = -model.droop
      state[STATE.chassisSpeed] = speed
      state[STATE.wheelSpeed] = speed
      modes.ground = car.look(0, state, modes).tireRaw >= 0
      modes.end = 'droop'
      modes.endPushes = true
    } else {
      const weight = car.sprung * GRAVITY
      const rest = restingPosition(model, weight, 0, 'fast')
      if (rest >= model.bump || rest <= model.droop) return false
      state[STATE.wheel] = (-cornerMass * GRAVITY) / tire.rate
      state[STATE.chassis] = state[STATE.wheel]! - rest
      if (rest === model.engagement && car.step > 0) modes.stop = 'resting'
    }
    if (modes.stop === 'clear') {
      const { pad } = car.look(0, state, modes)
      if (pad > 0) {
        modes.stop = 'touching'
        state[STATE.stop] = pad
      }
    }
    return true
  }

  private touch(now: Moment, state: Float64Array, time: number): void {
    const { modes, car } = this
    this.listener.touch?.(time, now.padSpeed, state[STATE.stop]!)
    const out = state[STATE.stop]! <= 0
    if (
      out &&
      car.step > 0 &&
      Math.abs(now.padSpeed) < RESTING_SPEED &&
      now.restingForce > 0 &&
      now.restingForce < car.step
    ) {
      const { sprung, unsprung } = car
      const shared = (sprung * state[STATE.chassisSpeed]! + unsprung * state[STATE.wheelSpeed]!) / (sprung + unsprung)
      state[STATE.chassisSpeed] = shared
      state[STATE.wheelSpeed] = shared
      modes.stop = 'resting'
    } else modes.stop = 'touching'
  }

  /** What may happen next, in the modes of now. */
  private watches(): Watch[] {
    const { modes, car, model } = this
    const list: Watch[] = []
    const part = (to: 'clear' | 'apart') => (_: Moment, state: Float64Array, time: number) => {
      modes.stop = to
      if (to === 'clear') state[STATE.stop] = 0
      this.listener.part?.(time)
    }
    switch (modes.stop) {
      case 'clear':
        if (model.corner.stop !== null)
          list.push({ value: now => now.pad, happen: (now, state, time) => this.touch(now, state, time) })
        break
      case 'touching':
        list.push({ value: now => -now.pad, happen: part('clear') })
        list.push({ value: now => (now.pad > 0 ? -now.stop : -1), happen: part('apart') })
        break
      case 'resting':
        list.push({ value: now => -now.restingForce, happen: part('clear') })
        list.push({ value: now => now.restingForce - car.step, happen: () => (modes.stop = 'touching') })
        break
      case 'apart':
        list.push({
          value: (now, state) => now.pad - state[STATE.stop]!,
          happen: (now, state, time) => this.touch(now, state, time),
        })
        list.push({
          value: (_, state) => -state[STATE.stop]!,
          happen: (_, state) => {
            state[STATE.stop] = 0
            modes.stop = 'clear'
          },
        })
    }
    if (modes.end === 'none') {
      const meet = (end: 'bump' | 'droop') => (_: Moment, _state: Float64Array, time: number) => {
        modes.end = end
        modes.endPushes = true
        if (end === 'bump') this.listener.bottom?.(time)
      }
      list.push({ value: now => now.wheelPosition - model.bump, happen: meet('bump') })
      list.push({ value: now => model.droop - now.wheelPosition, happen: meet('droop') })
    } else {
      const inward = modes.end === 'bump' ? 1 : -1
      const end = modes.end === 'bump' ? model.bump : model.droop
      list.push({
        value: now => inward * (end - now.wheelPosition),
        happen: () => {
          modes.end = 'none'
          modes.endPushes = false
        },
      })
      list.push({
        value: now => (modes.endPushes ? -1 : 1) * inward * now.endRaw,
        happen: () => (modes.endPushes = !modes.endPushes),
      })
    }
    list.push({
      value: now => (modes.ground ? -now.tireRaw : now.tireRaw),
      happen: () => (modes.ground = !modes.ground),
    })
    return list
  }

  private tell(time: number, state: Float64Array): void {
    this.listener.moment(time, state, this.car.look(time, state, this.modes), this.modes)
  }

  /** Runs to the end; false with the time reached when a step gets too short. */
  go(options: RunOptions): { readonly ok: boolean; readonly time: number } {
    const { car, state, inner, modes } = this
    const { road } = car
    const solver = new DormandPrince(this.slopes, STATE_SIZE)
    const scale = options.tolerance ?? 1
    const tolerance = Float64Array.from(TOLERANCE, one => one * scale)
    const sample = options.sample ?? 1e-3
    const stops = [...road.breaks.filter(at => at > 0 && at < road.duration), road.duration]
    let time = 0
    let length = 1e-4
    let nextSample = 0
    for (const stop of stops) {
      while (time < stop) {
        const watches = this.watches()
        const step = Math.min(length, road.longestStep, stop - time)
        const error = solver.attempt(time, state, step, tolerance)
        const better = Math.min(5, Math.max(0.2, 0.9 * Math.max(error, 1e-10) ** -0.2))
        length = step * better
        if (!(error <= 1)) {
          if (!(step > SHORTEST)) return { ok: false, time }
          length = Number.isFinite(error) ? length : step * 0.1
          continue
        }
        this.steps += 1
        const event = this.firstEvent(solver, watches)
        const share = event?.share ?? 1
        const until = time + share * step
        while (nextSample <= until && nextSample <= road.duration) {
          solver.within((nextSample - time) / step, inner)
          this.settleStop(nextSample, inner)
          this.tell(nextSample, inner)
          nextSample += sample
        }
        if (event === null) state.set(solver.end)
        else solver.within(share, state)
        time = event === null && step === stop - time ? stop : until
        this.settleStop(time, state)
        this.tell(time, state)
        if (event !== null) {
          event.watch.happen({ ...car.look(time, state, modes) }, state, time)
          length = Math.max(1e-5, Math.min(length, 1e-3))
        }
      }
    }
    return { ok: true, time }
  }

  /** While touching, the stop is where the pad is: keeps the carried state from drifting off it. */
  private settleStop(time: number, state: Float64Array): void {
    if (this.modes.stop === 'touching') state[STATE.stop] = Math.max(0, this.car.look(time, state, this.modes).pad)
  }

  /** The first watch passed within the step last taken, and how far along it; null when none is. */
  private firstEvent(solver: DormandPrince, watches: readonly Watch[]): { share: number; watch: Watch } | null {
    const { inner, car, modes } = this
    const valueAt = (watch: Watch, share: number): number => {
      const time = solver.time + share * solver.length
      solver.within(share, inner)
      return watch.value(car.look(time, inner, modes), inner, time)
    }
    const LOOKS = [0, 0.25, 0.5, 0.75, 1]
    let first: { share: number; watch: Watch } | null = null
    for (const watch of watches) {
      let before = valueAt(watch, 0)
      for (let i = 1; i < LOOKS.length; i += 1) {
        const after = valueAt(watch, LOOKS[i]!)
        if (first !== null && LOOKS[i - 1]! >= first.share) break
        if (i === 1 && before >= 0 && after > before) {
          // Wrong from the start: the modes were set on the very edge, and it went the other way.
          if (first === null || first.share > AT_ONCE) first = { share: AT_ONCE, watch }
          break
        }
        if (before < 0 && after >= 0) {
          const root = findRoot(share => valueAt(watch, share), LOOKS[i - 1]!, LOOKS[i]!, 1e-9)
          const share = root.found ? root.at : LOOKS[i]!
          if (first === null || share < first.share) first = { share: Math.max(share, 1e-9), watch }
          break
        }
        before = after
      }
    }
    return first
  }
}

/**
 * Drives one corner over a terrain: an adaptive pair that stops at every touch, parting and limit and goes on from there.
 * Starts at rest (landing: at full droop, tire just touching, falling at √(2·g·drop)). The listener hears every moment.
 */
export function drive(model: CornerModel, terrain: Terrain, listener: Listener, options: RunOptions = {}): RunOutcome {
  const run = new Run(model, terrain, listener)
  if (!run.begin()) return { ok: false, reason: 'no rest', time: 0 }
  const start = run.state.slice()
  const { ok, time } = run.go(options)
  return ok
    ? { ok, steps: run.steps, evaluations: run.evaluations, car: run.car, start, end: run.state }
    : { ok, reason: 'step too short', time }
}
