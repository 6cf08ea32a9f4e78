import type { DormandPrince } from '../numerics/dormand-prince.ts'
import { findRoot } from '../numerics/roots.ts'
import { WATCHES } from './modes.ts'
import { STATE, STATES, type Vehicle } from './vehicle.ts'
import { watch } from './watches.ts'

/** Places inside a step looked at when something may have come and gone in it, and else. */
const LOOKS = [0.2, 0.4, 0.6, 0.8, 1]
const HALVES = [0.5, 1]
const ONCE = [1]

/** An event due already at the start of a step is taken this far along it. */
export const AT_ONCE = 1e-6

/** How closely an event is located, as a share of the step: to less than half a microsecond. */
const SHARE = 1e-5

/** Looks out for what happens in a step, and finds where in it the first thing does. */
export class Events {
  /** Watches at the start of the step; one at zero or more there is only waiting to fall below it. */
  private readonly before: Float64Array
  /** At the end of the step, and at the ends of the part of it that is searched. */
  private readonly after: Float64Array
  private readonly was: Float64Array
  private readonly is: Float64Array
  private readonly there: Float64Array
  private readonly inner: Float64Array
  /** What a look inside the step saw past that was not at its start. */
  private readonly seen: Uint8Array
  private suspected = false
  /** Whether finding out took looks: then the vehicle is no longer looked at at the end of the step. */
  looked = false
  /** How far along the step the event last found is. */
  share = 1

  constructor(
    private readonly vehicle: Vehicle,
    private readonly solver: DormandPrince,
  ) {
    const array = (): Float64Array => new Float64Array(WATCHES * vehicle.corners.length)
    this.before = array()
    this.after = array()
    this.was = array()
    this.is = array()
    this.there = array()
    this.seen = new Uint8Array(this.before.length)
    this.inner = new Float64Array(vehicle.size)
  }

  /** Takes the watches at the start of a step: the vehicle has just been looked at there. */
  armed(state: Float64Array): void {
    this.watches(state, this.before)
  }

  /** The next step begins where the last one ended, with nothing past. */
  goOn(): void {
    const { before, after } = this
    for (let place = 0; place < before.length; place += 1) before[place] = after[place]!
  }

  /** Forgets what was seen in a step: another is about to be tried. */
  forget(): void {
    if (!this.suspected) return
    this.suspected = false
    this.seen.fill(0)
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

  /** Looks at a stage inside a step being tried: the vehicle was just looked at there. */
  stage(state: Float64Array): void {
    const { before, there, seen } = this
    this.watches(state, there)
    for (let place = 0; place < before.length; place += 1) {
      if (there[place]! < 0 || before[place]! >= 0) continue
      this.suspected = true
      seen[place] = 1
    }
  }

  /** Where between two shares a watch is passed, whose values there are known. */
  private passed(place: number, from: number, to: number, atFrom: number, atTo: number): number {
    const root = findRoot(
      share => {
        this.lookAt(share, this.there)
        return this.there[place]!
      },
      from,
      to,
      SHARE,
      atFrom,
      atTo,
    )
    return Math.max(AT_ONCE, root.found ? Math.min(to, root.at + root.width) : to)
  }

  /**
   * The first watch passed within the step last tried, whose end the vehicle was just looked at.
   * @returns its place, with the share of the step in `share`; −1 when nothing happens
   */
  first(): number {
    const { before, after, solver } = this
    this.watches(solver.end, after)
    this.looked = false
    let calm = !this.suspected
    for (let place = 0; calm && place < after.length; place += 1) calm = after[place]! < 0 && before[place]! < 0
    return calm ? -1 : this.search()
  }

  private search(): number {
    const { was, is, before, after } = this
    this.looked = true
    was.set(before)
    let from = 0
    for (const to of this.looks()) {
      if (to === 1) is.set(after)
      else this.lookAt(to, is)
      const first = this.between(from, to)
      if (first >= 0) return first
      was.set(is)
      from = to
    }
    return -1
  }

  /** Where to look for what happened: all along where something may have come and gone, or a watch was past from the start. */
  private looks(): readonly number[] {
    const { before, after, seen } = this
    let looks = ONCE
    for (let place = 0; place < before.length; place += 1) {
      if (seen[place] === 1 && after[place]! < 0) return LOOKS
      if (before[place]! >= 0) looks = HALVES
    }
    return looks
  }

  /** The first watch passed between two shares, `was` and `is` taken there. */
  private between(from: number, to: number): number {
    const { was, is, there } = this
    let first = -1
    for (let place = 0; place < is.length; place += 1) {
      if (is[place]! < 0) continue
      if (was[place]! >= 0) {
        if (from > 0 || is[place]! <= was[place]!) continue
        // Past from the start, and going further: the modes were set on the very edge, and it went the other way.
        this.share = AT_ONCE
        return place
      }
      const share = this.passed(place, from, to, was[place]!, is[place]!)
      if (first < 0 || share < this.share) {
        first = place
        this.share = share
      }
    }
    if (first < 0) return -1
    // What came and went before `to` is seen where the first one happens, above all where the wheel turns.
    for (let place = 0; place < is.length; place += 1) {
      if (is[place]! >= 0 || was[place]! >= 0) continue
      this.lookAt(this.share, there)
      if (there[place]! < 0) continue
      this.share = this.passed(place, from, this.share, was[place]!, there[place]!)
      first = place
    }
    return first
  }
}
