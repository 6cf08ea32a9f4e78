import { restingPosition } from '../corner/static-position.ts'
import { GRAVITY } from '../units/constants.ts'
import { CONTACT, type CornerInMotion } from './corner-in-motion.ts'
import { STATE, STATES, type Vehicle } from './vehicle.ts'

/** What a corner begins at: height of wheel and chassis where its tire just touches level road, and how fast both fall, m/s. */
interface Beginning {
  readonly wheel: number
  readonly chassis: number
  readonly falling: number
}

/** At full droop, tire just touching, falling as after a drop of so many m. */
function landing(corner: CornerInMotion, drop: number): Beginning {
  corner.modes.end = 'droop'
  corner.modes.endPushes = true
  return { wheel: 0, chassis: -corner.model.droop, falling: Math.sqrt(2 * GRAVITY * drop) }
}

/**
 * At rest with fast gas. A corner whose springs and stop cannot hold the car before full bump, or lift it to full droop, rests on the steel
 * there, as deep in it as its rate asks for.
 */
function standing(corner: CornerInMotion): Beginning {
  const { model, sprung, unsprung, modes } = corner
  const weight = sprung * GRAVITY
  const rest = restingPosition(model, weight, 0, 'fast')
  const wheel = -((sprung + unsprung) * GRAVITY) / model.corner.tire.rate
  const over = weight - model.forces(rest, 'fast', rest === model.droop ? 'below' : 'above').total
  const held = rest === model.bump ? over > 0 : rest === model.droop && over < 0
  if (held) {
    modes.end = rest === model.bump ? 'bump' : 'droop'
    modes.endPushes = true
    return { wheel, chassis: wheel - rest - over / CONTACT.rate, falling: 0 }
  }
  if (rest === model.engagement && corner.stop !== null && corner.stop.step > 0) modes.stop = 'resting'
  return { wheel, chassis: wheel - rest, falling: 0 }
}

/** The state a ride begins with, and the corners' modes with it. @param drop m for a landing; null to start at rest */
export function beginning(vehicle: Vehicle, drop: number | null): Float64Array {
  const state = new Float64Array(vehicle.size)
  vehicle.corners.forEach((corner, i) => {
    corner.reset()
    const { wheel, chassis, falling } = drop === null ? standing(corner) : landing(corner, drop)
    const s = STATES * i
    corner.modes.region = corner.table.regionOf(wheel - chassis)
    state[s + STATE.chassis] = chassis
    state[s + STATE.chassisSpeed] = -falling
    state[s + STATE.wheel] = wheel
    state[s + STATE.wheelSpeed] = -falling
  })
  vehicle.look(0, state)
  vehicle.corners.forEach((corner, i) => {
    corner.modes.ground = corner.tireRaw >= 0
    if (corner.stop === null || corner.modes.stop === 'resting' || corner.pad <= 0) return
    corner.modes.stop = 'touching'
    state[STATES * i + STATE.stop] = corner.pad
  })
  return state
}
