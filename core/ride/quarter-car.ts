import type { CornerModel } from '../corner/corner-model.ts'
import { type DamperCurve, damperCurve } from '../forces/damper.ts'
import { circleArea, type GasChamber, gasForce } from '../forces/gas.ts'
import { type StopModel, stopModel } from '../forces/stop.ts'
import { GRAVITY } from '../units/constants.ts'
import type { Road } from './road.ts'

/** Places of the state: chassis and wheel height, m, and speed, m/s; the stop pushed in, m; then works done, J. */
export const STATE = {
  chassis: 0,
  chassisSpeed: 1,
  wheel: 2,
  wheelSpeed: 3,
  stop: 4,
  damperWork: 5,
  stopWork: 6,
  tireWork: 7,
  roadWork: 8,
  endWork: 9,
  springWork: 10,
} as const
export const STATE_SIZE = 11

/** Steel on steel beyond full bump or droop, at the wheel: N/m and N·s/m. */
const CONTACT = { rate: 2e7, damping: 2e4 } as const

/**
 * How pad and stop stand to each other: `clear` of each other, the stop all the way out; `touching`; `resting` at the first touch, where
 * the stop carries what balance asks for, less than its step; `apart`, the stop still coming out behind a pad that left it.
 */
export type StopMode = 'clear' | 'touching' | 'resting' | 'apart'

export interface Modes {
  stop: StopMode
  /** Past full bump or full droop. */
  end: 'none' | 'bump' | 'droop'
  /** Whether steel pushes: past the end it can let go on the way back. */
  endPushes: boolean
  ground: boolean
}

/** Forces and motions of one moment, SI, at the wheel unless said otherwise. */
export interface Moment {
  wheelPosition: number
  wheelSpeed: number
  springs: number
  damper: number
  /** Along the stop. */
  stop: number
  stopAtWheel: number
  end: number
  tire: number
  chassisAcceleration: number
  wheelAcceleration: number
  /** Pad movement past the stop's foot at full length, and its speed, along the stop. */
  pad: number
  padSpeed: number
  /** Force that would keep a pad resting at the touch, along the stop. */
  restingForce: number
  /** Height of the road under the wheel, m, and how fast it rises, m/s. */
  road: number
  roadRise: number
  /** Tire force before it is kept from pulling, and end force before it is. */
  tireRaw: number
  endRaw: number
}

/** Damping ratios of the sprung mass assumed where a plan has no damper curves: common practice, softer in compression. */
const ASSUMED_DAMPING = { compression: 0.25, rebound: 0.5 } as const

/** One corner on its tire: F from the fast gas law, dampers through the motion ratio, the stop as a state of its own (model of the plan's corner). */
export class QuarterCar {
  readonly sprung: number
  readonly unsprung: number
  readonly dampingAssumed: boolean
  /** Force of the stop at its first touch, along it, N. */
  readonly step: number
  readonly moment: Moment = {
    wheelPosition: 0,
    wheelSpeed: 0,
    springs: 0,
    damper: 0,
    stop: 0,
    stopAtWheel: 0,
    end: 0,
    tire: 0,
    chassisAcceleration: 0,
    wheelAcceleration: 0,
    pad: 0,
    padSpeed: 0,
    restingForce: 0,
    road: 0,
    roadRise: 0,
    tireRaw: 0,
    endRaw: 0,
  }
  private readonly compression: DamperCurve
  private readonly rebound: DamperCurve
  private readonly stop: StopModel | null
  private readonly gap: number
  private readonly stopCompression: DamperCurve
  private readonly stopRebound: DamperCurve
  private readonly chamber: GasChamber | null

  constructor(
    readonly model: CornerModel,
    readonly road: Road,
  ) {
    const { corner } = model
    const { shock, stop } = corner
    this.unsprung = Math.max(corner.unsprungMass, corner.cornerMass * 1e-3)
    this.sprung = corner.cornerMass - corner.unsprungMass
    this.dampingAssumed = shock.compression.length < 2 || shock.rebound.length < 2
    const critical = 2 * Math.sqrt(Math.max(0, model.wheelRate(0, 'slow')) * this.sprung)
    const ratio = Math.max(0.1, Math.abs(model.linkage.at(0).shockRatio))
    const assumed = (share: number) =>
      damperCurve([
        { velocity: 0, force: 0 },
        { velocity: 1, force: (share * critical) / ratio ** 2 },
      ])
    this.compression =
      shock.compression.length < 2 ? assumed(ASSUMED_DAMPING.compression) : damperCurve(shock.compression)
    this.rebound = shock.rebound.length < 2 ? assumed(ASSUMED_DAMPING.rebound) : damperCurve(shock.rebound)
    this.stop = stop === null ? null : stopModel(stop)
    this.gap = stop?.gap ?? Infinity
    const hydraulic = stop?.kind === 'hydraulic' ? stop : null
    this.stopCompression = damperCurve(hydraulic?.compression ?? [])
    this.stopRebound = damperCurve(hydraulic?.rebound ?? [])
    this.chamber = hydraulic && {
      area: circleArea(hydraulic.shaftDiameter),
      charge: hydraulic.charge,
      volume: hydraulic.gasVolume,
    }
    this.step = this.stop?.force(0, 'fast').value ?? 0
  }

  /** Force of the stop's gas or foam pushed in by `travel`, along it; smooth a little past both ends. */
  private stopPush(travel: number): number {
    if (this.chamber !== null) return gasForce(this.chamber, Math.min(travel, this.stop!.stroke), 'fast').value
    return this.stop!.force(Math.max(0, travel), 'fast').value
  }

  /** Speed at which the stop comes out on its own, m/s. */
  extensionSpeed(travel: number): number {
    return this.stopRebound.speed(Math.max(0, this.stopPush(Math.max(0, travel))))
  }

  private stopForce(modes: Modes, pad: number, speed: number, resting: number): number {
    switch (modes.stop) {
      case 'touching':
        return this.stopPush(pad) + (speed >= 0 ? this.stopCompression.force(speed) : -this.stopRebound.force(-speed))
      case 'resting':
        return resting
      default:
        return 0
    }
  }

  /** Works out everything of one moment into `moment`, in the given modes. */
  look(time: number, state: Float64Array, modes: Modes): Moment {
    const { model, moment, sprung, unsprung } = this
    const { tire } = model.corner
    const wheel = state[STATE.wheel]! - state[STATE.chassis]!
    const speed = state[STATE.wheelSpeed]! - state[STATE.chassisSpeed]!
    const { shockRatio, stop, stopRatio } = model.linkage.at(wheel)
    const still = model.forces(wheel, 'fast', 'below')
    const springs = still.springs + still.gas
    const shaftSpeed = speed * shockRatio
    const damper =
      (shaftSpeed >= 0 ? this.compression.force(shaftSpeed) : -this.rebound.force(-shaftSpeed)) * shockRatio
    const { height, rise } = this.road.at(time)
    const tireRaw = tire.rate * (height - state[STATE.wheel]!) + tire.damping * (rise - state[STATE.wheelSpeed]!)
    const onGround = modes.ground ? tireRaw : 0
    const past = modes.end === 'bump' ? wheel - model.bump : modes.end === 'droop' ? wheel - model.droop : 0
    const endRaw = modes.end === 'none' ? 0 : CONTACT.rate * past + CONTACT.damping * speed
    const end = modes.endPushes ? endRaw : 0
    const pad = stop - this.gap
    const padSpeed = speed * stopRatio
    const together = (onGround - (sprung + unsprung) * GRAVITY) / (sprung + unsprung)
    const restingForce = stopRatio === 0 ? 0 : (sprung * (together + GRAVITY) - springs - damper - end) / stopRatio
    const stopForce = this.stop === null ? 0 : this.stopForce(modes, pad, padSpeed, restingForce)
    const total = springs + damper + end + stopForce * stopRatio
    moment.wheelPosition = wheel
    moment.wheelSpeed = speed
    moment.springs = springs
    moment.damper = damper
    moment.stop = stopForce
    moment.stopAtWheel = stopForce * stopRatio
    moment.end = end
    moment.tire = onGround
    moment.chassisAcceleration = total / sprung - GRAVITY
    moment.wheelAcceleration = (onGround - total) / unsprung - GRAVITY
    moment.pad = pad
    moment.padSpeed = padSpeed
    moment.restingForce = restingForce
    moment.road = height
    moment.roadRise = rise
    moment.tireRaw = tireRaw
    moment.endRaw = endRaw
    return moment
  }
}
