import type { CornerModel } from '../corner/corner-model.ts'
import { type DamperCurve, damperCurve } from '../forces/damper.ts'
import { GRAVITY } from '../units/constants.ts'
import { type CornerTable, cornerTable } from './corner-table.ts'
import type { Modes } from './modes.ts'
import { StopInMotion } from './stop-in-motion.ts'

/** Steel on steel beyond full bump or droop, at the wheel: N/m and N·s/m. */
export const CONTACT = { rate: 2e7, damping: 2e4 } as const

/** Damping ratios of the sprung mass assumed where a plan has no damper curves: common practice, softer in compression. */
export const ASSUMED_DAMPING = { compression: 0.25, rebound: 0.5 } as const

const AT_FIRST: Modes = { stop: 'clear', end: 'none', endPushes: false, ground: true, bumping: true, region: 0 }

/** A wheel without mass would answer at once: it is given at least this share of the corner's mass. */
const LEAST_UNSPRUNG = 1e-3

/** Slower motion ratios than this do not make assumed damping grow without bound. */
const LEAST_RATIO = 0.1

/** Sprung and unsprung mass of a corner, kg. */
const massesOf = ({ corner }: CornerModel): { sprung: number; unsprung: number } => ({
  sprung: corner.cornerMass - corner.unsprungMass,
  unsprung: Math.max(corner.unsprungMass, corner.cornerMass * LEAST_UNSPRUNG),
})

/** What of a corner's motion is worked out once, however often it is driven. */
export interface CornerParts {
  readonly table: CornerTable
  readonly stop: StopInMotion | null
}

/** @param model as parsePlan accepts its corner */
export function cornerParts(model: CornerModel): CornerParts {
  const { sprung } = massesOf(model)
  const { stop } = model.corner
  const { compression, rebound } = dampersOf(model, sprung)
  return {
    table: cornerTable(model, sprung * GRAVITY, compression, rebound),
    stop: stop === null ? null : new StopInMotion(stop),
  }
}

/** The shock's dampers; a way without rows gets the assumed share of critical damping, straight in speed. */
function dampersOf(model: CornerModel, sprung: number): { compression: DamperCurve; rebound: DamperCurve } {
  const { compression, rebound } = model.corner.shock
  const critical = 2 * Math.sqrt(Math.max(0, model.wheelRate(0, 'slow')) * sprung)
  const ratio = Math.max(LEAST_RATIO, Math.abs(model.linkage.at(0).shockRatio))
  const assumed = (share: number) => [
    { velocity: 0, force: 0 },
    { velocity: 1, force: (share * critical) / ratio ** 2 },
  ]
  return {
    compression: damperCurve(compression.length < 2 ? assumed(ASSUMED_DAMPING.compression) : compression),
    rebound: damperCurve(rebound.length < 2 ? assumed(ASSUMED_DAMPING.rebound) : rebound),
  }
}

/**
 * The forces of one corner in motion: springs and fast gas, dampers at the shaft's speed through the motion ratio, the stop, steel at the ends
 * of the travel, the tire. Forces in N, at the wheel unless said otherwise, positive pushing chassis and wheel apart; positions in m.
 * A look leaves what it finds in the fields, so that a ride's loop makes nothing anew.
 */
export class CornerInMotion {
  readonly sprung: number
  readonly unsprung: number
  /** 1/kg */
  readonly perUnsprung: number
  readonly stop: StopInMotion | null
  readonly modes: Modes = { ...AT_FIRST }
  readonly dampingAssumed: boolean

  /** Wheel position from ride height, and its speed, m/s. */
  wheel = 0
  speed = 0
  /** Height of the wheel above where its tire just touches level road, and its speed, m/s. */
  height = 0
  heightSpeed = 0
  springs = 0
  damper = 0
  /** Along the stop. */
  stopForce = 0
  stopAtWheel = 0
  /** Of steel at either end: pushes inward, so it is below zero at full droop. */
  end = 0
  /** All of it between chassis and wheel. */
  suspension = 0
  tire = 0
  /** Pad movement past the foot of the stop at full length, and its speed, along the stop. */
  pad = 0
  padSpeed = 0
  stopRatio = 0
  /** Stop force that would keep a resting pad at rest, along it; set by the vehicle. */
  restingForce = 0
  /** Height of the road under the wheel, and how fast it rises, m/s. */
  road = 0
  roadRise = 0
  /** How far the wheel is beyond the region of the modes, m; below 0 inside. */
  beyond = 0
  /** Forces tire, stop and end would have if they could pull. */
  tireRaw = 0
  stopRaw = 0
  endRaw = 0
  /** m/s²; set by the vehicle. */
  chassisAcceleration = 0
  wheelAcceleration = 0

  private readonly gap: number
  private readonly tireRate: number
  private readonly tireDamping: number
  private readonly bump: number
  private readonly droop: number

  /** Shared by all corners alike: what a look leaves in it is the last one's. */
  readonly table: CornerTable

  constructor(
    readonly model: CornerModel,
    parts: CornerParts,
  ) {
    const { shock, stop, tire } = model.corner
    const { sprung, unsprung } = massesOf(model)
    this.sprung = sprung
    this.unsprung = unsprung
    this.perUnsprung = 1 / unsprung
    this.dampingAssumed = shock.compression.length < 2 || shock.rebound.length < 2
    this.table = parts.table
    this.stop = parts.stop
    this.gap = stop?.gap ?? 0
    this.tireRate = tire.rate
    this.tireDamping = tire.damping
    this.bump = model.bump
    this.droop = model.droop
  }

  /** Everything clear, before a ride begins. */
  reset(): void {
    Object.assign(this.modes, AT_FIRST)
  }

  /** Gives the stop its force, N along it. */
  carry(force: number): void {
    this.stopForce = force
    this.stopAtWheel = force * this.stopRatio
    this.suspension = this.springs + this.damper + this.end + this.stopAtWheel
  }

  /**
   * Works out every force of one moment in the modes of now, from `wheel`, `speed`, `height`, `heightSpeed`, `road` and `roadRise`; a resting stop
   * carries nothing yet. While the modes stand every force is smooth, also where a step tries what lies beyond them: a tire may pull there, until the
   * place where it let go is found.
   */
  look(): void {
    const { table, modes, wheel, speed } = this
    table.wheel = wheel
    table.speed = speed
    table.look(modes)
    const { shockRatio, stopRatio } = table
    this.beyond = table.beyond
    this.damper = table.damper * shockRatio
    this.springs = table.axial * shockRatio
    this.tireRaw = this.tireRate * (this.road - this.height) + this.tireDamping * (this.roadRise - this.heightSpeed)
    this.tire = modes.ground ? this.tireRaw : 0
    this.endRaw =
      modes.end === 'none'
        ? 0
        : CONTACT.rate * (wheel - (modes.end === 'bump' ? this.bump : this.droop)) + CONTACT.damping * speed
    this.end = modes.endPushes ? this.endRaw : 0
    this.pad = table.stop - this.gap
    this.stopRatio = stopRatio
    this.padSpeed = speed * stopRatio
    let held = 0
    if (modes.stop === 'touching') {
      const stop = this.stop!
      stop.travel = this.pad
      stop.speed = this.padSpeed
      stop.look(modes.bumping === stopRatio >= 0, modes.end === 'bump')
      held = stop.held
    }
    this.stopRaw = held
    this.stopForce = held
    this.stopAtWheel = held * stopRatio
    this.suspension = this.springs + this.damper + this.end + this.stopAtWheel
  }
}
