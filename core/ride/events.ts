import type { DormandPrince } from '../numerics/dormand-prince.ts'
import { findRoot } from '../numerics/roots.ts'
import { WATCHES } from './modes.ts'
import { STATE, STATES, type Vehicle } from './vehicle.ts'
import { watch } from './watches.ts'

/** Places inside a step looked at when something may have come and gone in it. */
const LOOKS = [0.2, 0.4, 0.6, 0.8]

/** An event due already at the start of a step is taken this far along it. */
export const AT_ONCE = 1e-6

/** How closely an event is located, as a share of the step. */
const SHARE = 1e-10

/** Looks out for what happens in a step, and finds where in it the first thing does. */
export class Events {
  /** Watches at the start of the step; one at zero or more there is only waiting to fall below it. */
  private readonly before: Float64Array
  private readonly now: Float64Array
  private readonly earlier: Float64Array
  private readonly inner: Float64Array
  private readonly startSpeeds: Float64Array
  /** Shares of the step last taken at which a wheel turned against its chassis, rising; only the first `turns` count. */
  readonly turned: Float64Array
  turns = 0
  /** Whether finding out took looks: then the vehicle is no longer looked at at the end of the step. */
  looked = false
  /** How far along the step the event last found is. */
  share = 1

  constructor(
    private readonly vehicle: Vehicle,
    private readonly solver: DormandPrince,
  ) {
    const places = WATCHES * vehicle.corners.length
    this.before = new Float64Array(places)
    this.now = new Float64Array(places)
    this.earlier = new Float64Array(places)
    this.inner = new Float64Array(vehicle.size)
    this.startSpeeds = new Float64Array(vehicle.corners.length)
    this.turned = new Float64Array(vehicle.corners.length)
  }

  /** Takes the watches at the start of the next step: the vehicle has just been looked at there. */
  armed(state: Float64Array): void {
    const { corners } = this.vehicle
    this.watches(state, this.before)
    for (let i = 0; i < corners.length; i += 1) this.startSpeeds[i] = corners[i]!.speed
  }

  private watches(state: Float64Array, into: Float64Array): void {
    const { corners } = this.vehicle
    for (let i = 0; i < corners.length; i += 1) watch(corners[i]!, state[STATES * i + STATE.stop]!, into, WATCHES * i)
  }

  private lookAt(share: number, into: Float64Array): void {
    const { solver, vehicle, inner } = this
    solver.within(share, inner, vehicle.steered)
    vehicle.look(solver.time + share * solver.length, inner)
    this.watches(inner, into)
  }

  /** Whether a look inside the step saw something past that was not at its start; set anew by `attempt`. */
  suspected = false

  /** Looks at a stage inside a step being tried: the vehicle was just looked at there. */
  stage(state: Float64Array): void {
    const { before, earlier } = this
    this.watches(state, earlier)
    for (let place = 0; place < before.length; place += 1)
      if (earlier[place]! >= 0 && before[place]! < 0) this.suspected = true
  }

  private valueAt(share: number, place: number): number {
    this.lookAt(share, this.earlier)
    return this.earlier[place]!
  }

  /** Where in the step wheels turned against the chassis: what peaks between its ends peaks there. */
  private findTurns(): void {
    const { corners } = this.vehicle
    const { inner, solver } = this
    this.turns = 0
    for (let i = 0; i < corners.length; i += 1) {
      const from = this.startSpeeds[i]!
      const to = corners[i]!.speed
      if (from === 0 || to === 0 || from > 0 === to > 0) continue
      const s = STATES * i
      let low = 0
      let atLow = from
      let high = 1
      let atHigh = to
      let share = from / (from - to)
      // Two rounds of false position: the turn only has to be near enough to see the peak.
      for (let round = 0; round < 2; round += 1) {
        solver.within(share, inner, s + STATES)
        const speed = inner[s + STATE.wheelSpeed]! - inner[s + STATE.chassisSpeed]!
        if (speed > 0 === from > 0) {
          low = share
          atLow = speed
        } else {
          high = share
          atHigh = speed
        }
        share = low + ((high - low) * atLow) / (atLow - atHigh)
      }
      this.turned[this.turns] = share
      this.turns += 1
    }
    if (this.turns === 2 && this.turned[0]! > this.turned[1]!) this.turned.reverse()
  }

  /**
   * The first watch passed within the step last tried, whose end the vehicle was just looked at.
   * @returns its place, with the share of the step in `share`; −1 when nothing happens
   */
  first(): number {
    const { before, now, solver, suspected } = this
    this.watches(solver.end, now)
    this.findTurns()
    this.looked = false
    let calm = !suspected && this.turns === 0
    for (let place = 0; calm && place < now.length; place += 1) calm = before[place]! < 0 && now[place]! < 0
    return calm ? -1 : this.search()
  }

  private search(): number {
    this.looked = true
    const looks = [...(this.suspected ? LOOKS : [0.5]), ...this.turned.subarray(0, this.turns)].sort((a, b) => a - b)
    const was = this.before.slice()
    const ends = this.now.slice()
    let from = 0
    for (const to of [...looks, 1]) {
      const is = to === 1 ? ends : this.now
      if (to !== 1) this.lookAt(to, is)
      let first = -1
      for (let place = 0; place < is.length; place += 1) {
        if (is[place]! < 0) continue
        if (was[place]! >= 0) {
          if (from > 0 || is[place]! <= was[place]!) continue
          // Past from the start, and going further: the modes were set on the very edge, and it went the other way.
          this.share = AT_ONCE
          return place
        }
        const root = findRoot(share => this.valueAt(share, place), from, to, SHARE)
        const share = Math.max(AT_ONCE, root.found ? Math.min(to, root.at + root.width) : to)
        if (first < 0 || share < this.share) {
          first = place
          this.share = share
        }
      }
      if (first >= 0) return first
      was.set(is)
      from = to
    }
    return -1
  }
}
