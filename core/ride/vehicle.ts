import { GRAVITY } from '../units/constants.ts'
import type { CornerInMotion } from './corner-in-motion.ts'
import type { Road } from './road.ts'

/** Places of a corner's state: chassis and wheel height, m, and speed, m/s; the stop pushed in, m. */
export const STATE = { chassis: 0, chassisSpeed: 1, wheel: 2, wheelSpeed: 3, stop: 4 } as const
export const STATES = 5

/** Places of what a corner carries along: works, J, and ∫a² of the chassis, m²/s³. */
export const CARRIED = { damper: 0, stop: 1, tire: 2, road: 3, ends: 4, springs: 5, squares: 6 } as const
export const CARRIES = 7

/** A body on one or two corners, each over its own road. */
export interface Rig {
  readonly corners: readonly CornerInMotion[]
  readonly roads: readonly Road[]
  /**
   * How fast the body over corner i answers a force at corner j, 1/kg: 1/m for a quarter car. Symmetric; a list of rows, one after the other.
   */
  readonly answers: readonly number[]
}

/**
 * The slopes of a body on its corners. Each corner has the chassis over it, its wheel and its stop as states of its own; what couples
 * corners is the body alone: z″ᵢ = Σⱼ Cᵢⱼ·Fⱼ − g.
 */
export class Vehicle {
  readonly corners: readonly CornerInMotion[]
  readonly roads: readonly Road[]
  /** Numbers that steer, and all with what is carried. */
  readonly steered: number
  readonly size: number
  /** Between these times the roads are smooth, s: looks at the very ends are taken a hair inside. */
  private from = 0
  private until = Infinity
  private readonly answers: Float64Array
  private readonly count: number

  constructor({ corners, roads, answers }: Rig) {
    this.corners = corners
    this.roads = roads
    this.answers = Float64Array.from(answers)
    this.count = corners.length
    this.steered = STATES * corners.length
    this.size = (STATES + CARRIES) * corners.length
  }

  between(from: number, until: number): void {
    const hair = 1e-13 * (1 + until)
    this.from = from + hair
    this.until = until - hair
  }

  /** Whether a wheel is past either end of its travel. */
  onSteel(): boolean {
    for (let i = 0; i < this.count; i += 1) if (this.corners[i]!.modes.end !== 'none') return true
    return false
  }

  /** Whether a wheel is past full bump. */
  bottomed(): boolean {
    for (let i = 0; i < this.count; i += 1) if (this.corners[i]!.modes.end === 'bump') return true
    return false
  }

  /** Leaves every force and acceleration of a moment in the corners. */
  look(time: number, state: Float64Array): void {
    const { corners, roads, count } = this
    const at = time < this.from ? this.from : Math.min(time, this.until)
    let rests = false
    for (let i = 0; i < count; i += 1) {
      const corner = corners[i]!
      const road = roads[i]!
      const s = STATES * i
      corner.height = state[s + STATE.wheel]!
      corner.heightSpeed = state[s + STATE.wheelSpeed]!
      corner.wheel = corner.height - state[s + STATE.chassis]!
      corner.speed = corner.heightSpeed - state[s + STATE.chassisSpeed]!
      road.look(at, corner)
      corner.look()
      rests ||= corner.modes.stop === 'resting'
    }
    if (rests) this.rest()
    this.accelerate()
  }

  private accelerate(): void {
    const { corners, answers, count } = this
    for (let i = 0; i < count; i += 1) {
      const corner = corners[i]!
      let up = -GRAVITY
      for (let j = 0; j < count; j += 1) up += answers[count * i + j]! * corners[j]!.suspension
      corner.chassisAcceleration = up
      corner.wheelAcceleration = (corner.tire - corner.suspension) * corner.perUnsprung - GRAVITY
    }
  }

  /** How fast wheel and chassis of a corner would part without its stop, m/s²; the other stops as they are. */
  private parting(i: number): number {
    const { corners, answers, count } = this
    const { tire, suspension, stopAtWheel, unsprung } = corners[i]!
    let apart = (tire - suspension + stopAtWheel) / unsprung
    for (let j = 0; j < count; j += 1) {
      const other = corners[j]!
      apart -= answers[count * i + j]! * (j === i ? suspension - stopAtWheel : other.suspension)
    }
    return apart
  }

  /** How fast wheel and chassis of a corner part for each newton between them less, 1/kg. */
  private yielding(i: number): number {
    return 1 / this.corners[i]!.unsprung + this.answers[this.count * i + i]!
  }

  /** Gives every resting stop what keeps its wheel from moving against the chassis. */
  private rest(): void {
    const { corners, answers, count } = this
    const resting = corners.map(({ modes }) => modes.stop === 'resting')
    const asked = corners.map((_, i) => this.parting(i))
    corners.forEach((corner, i) => {
      if (!resting[i]) return
      const j = 1 - i
      let atWheel = asked[i]! / this.yielding(i)
      if (count === 2 && resting[j]) {
        const across = answers[count * i + j]!
        const square = this.yielding(i) * this.yielding(j) - across ** 2
        atWheel = (asked[i]! * this.yielding(j) - across * asked[j]!) / square
      }
      corner.restingForce = corner.stopRatio === 0 ? 0 : atWheel / corner.stopRatio
    })
    corners.forEach((corner, i) => {
      if (resting[i]) corner.carry(corner.restingForce)
    })
  }

  /** Force along its stop that would keep a corner's wheel from moving against the chassis, N. */
  wouldRest(i: number): number {
    const { stopRatio } = this.corners[i]!
    return Math.abs(stopRatio) < 1e-6 ? -1 : this.parting(i) / this.yielding(i) / stopRatio
  }

  /** Takes the last speed between wheel and chassis out of a corner, as the stop does when a pad comes to rest on it; returns the energy, J. */
  settle(i: number, state: Float64Array): number {
    const { count, answers } = this
    const speed = state[STATES * i + STATE.wheelSpeed]! - state[STATES * i + STATE.chassisSpeed]!
    const impulse = speed / this.yielding(i)
    state[STATES * i + STATE.wheelSpeed]! -= impulse / this.corners[i]!.unsprung
    for (let j = 0; j < count; j += 1) state[STATES * j + STATE.chassisSpeed]! += answers[count * j + i]! * impulse
    return (impulse * speed) / 2
  }

  /** Energy of motion and height of body and wheels, J. */
  mechanical(state: Float64Array): number {
    const { corners, answers, count } = this
    const speed = (i: number): number => state[STATES * i + STATE.chassisSpeed]!
    const height = (i: number): number => state[STATES * i + STATE.chassis]!
    // The inverse of what a body answers is its mass, as seen from its corners.
    const [a = 0, b = 0, , d = 0] = answers
    const square = a * d - b * b
    const mass = count === 1 ? [1 / a] : [d / square, -b / square, -b / square, a / square]
    let sum = 0
    for (let i = 0; i < count; i += 1) {
      const s = STATES * i
      const { unsprung } = corners[i]!
      sum += (unsprung * state[s + STATE.wheelSpeed]! ** 2) / 2 + unsprung * GRAVITY * state[s + STATE.wheel]!
      for (let j = 0; j < count; j += 1) sum += mass[count * i + j]! * ((speed(i) * speed(j)) / 2 + GRAVITY * height(i))
    }
    return sum
  }

  /** @param carries whether what is carried is asked for too */
  slopes(time: number, state: Float64Array, slopes: Float64Array, carries = true): void {
    const { corners, count, steered } = this
    this.look(time, state)
    for (let i = 0; i < count; i += 1) {
      const corner = corners[i]!
      const s = STATES * i
      const heightSpeed = state[s + STATE.wheelSpeed]!
      slopes[s + STATE.chassis] = state[s + STATE.chassisSpeed]!
      slopes[s + STATE.chassisSpeed] = corner.chassisAcceleration
      slopes[s + STATE.wheel] = heightSpeed
      slopes[s + STATE.wheelSpeed] = corner.wheelAcceleration
      slopes[s + STATE.stop] = corner.modes.stop === 'apart' ? -corner.stop!.extensionSpeed(state[s + STATE.stop]!) : 0
      if (!carries) continue
      const c = steered + CARRIES * i
      slopes[c + CARRIED.damper] = corner.damper * corner.speed
      slopes[c + CARRIED.stop] = corner.stopAtWheel * corner.speed
      slopes[c + CARRIED.tire] = corner.tire * (corner.roadRise - heightSpeed)
      slopes[c + CARRIED.road] = corner.tire * corner.roadRise
      slopes[c + CARRIED.ends] = corner.end * corner.speed
      slopes[c + CARRIED.springs] = corner.springs * corner.speed
      slopes[c + CARRIED.squares] = corner.chassisAcceleration ** 2
    }
  }
}
