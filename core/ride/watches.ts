import type { CornerInMotion } from './corner-in-motion.ts'
import { ASLEEP, EDGE, WATCH, WATCHES } from './modes.ts'
import { CARRIED, CARRIES, STATE, STATES, type Vehicle } from './vehicle.ts'

/** Slower than this a pad that meets the stop may come to rest on its step, m/s: it would bounce by a hundredth of a millimetre. */
const RESTING_SPEED = 5e-3

/** What happens between the parts of a corner. */
export interface Happenings {
  /** Pad meets stop; the corner's fields say how fast, `pushedIn` how far in the stop still is, m. */
  touch(corner: number, time: number, pushedIn: number, state: Float64Array): void
  /** The pad leaves the stop, or it leaves the pad. */
  part(corner: number, time: number): void
  /** The wheel comes past full bump. */
  bottom(corner: number, time: number): void
}

/** Values of a corner's watches after a look, each in its own unit; `pushedIn` is the stop's own state. */
export function watch(corner: CornerInMotion, pushedIn: number, into: Float64Array, from: number): void {
  const { modes, model, stop } = corner
  let one: number = ASLEEP
  let also: number = ASLEEP
  if (stop !== null)
    switch (modes.stop) {
      case 'clear':
        one = corner.pad
        break
      case 'touching':
        one = -corner.pad - (stop.step > EDGE.step ? 0 : EDGE.apart)
        if (stop.holdsBack && corner.pad > 0) also = -corner.stopRaw
        break
      case 'resting':
        one = -corner.restingForce - EDGE.force
        also = corner.restingForce - stop.step - EDGE.force
        break
      case 'apart':
        one = corner.pad - pushedIn - EDGE.apart
        also = -pushedIn
    }
  into[from + WATCH.stop] = one
  into[from + WATCH.stopAlso] = also
  if (modes.end === 'none') {
    into[from + WATCH.end] = corner.wheel - model.bump
    into[from + WATCH.endAlso] = model.droop - corner.wheel
  } else {
    const past = modes.end === 'bump' ? corner.wheel - model.bump : model.droop - corner.wheel
    const pressing = modes.end === 'bump' ? corner.endRaw : -corner.endRaw
    into[from + WATCH.end] = -past - EDGE.apart
    into[from + WATCH.endAlso] = modes.endPushes ? -pressing : pressing - EDGE.steel
  }
  into[from + WATCH.ground] = modes.ground ? -corner.tireRaw : corner.tireRaw - EDGE.force
  into[from + WATCH.turn] = (modes.bumping ? -corner.speed : corner.speed) - EDGE.speed
  into[from + WATCH.region] = corner.beyond - EDGE.apart
}

function touch(vehicle: Vehicle, i: number, state: Float64Array, time: number, tell: Happenings): void {
  const corner = vehicle.corners[i]!
  const { stop, modes } = corner
  const pushedIn = Math.max(0, state[STATES * i + STATE.stop]!)
  tell.touch(i, time, pushedIn, state)
  const slow = pushedIn === 0 && stop!.step > 0 && Math.abs(corner.padSpeed) < RESTING_SPEED
  const rests = slow ? vehicle.wouldRest(i) : -1
  if (rests > 0 && rests < stop!.step) {
    state[vehicle.steered + CARRIES * i + CARRIED.stop]! += vehicle.settle(i, state)
    modes.stop = 'resting'
  } else modes.stop = 'touching'
}

function stopHappens(
  vehicle: Vehicle,
  i: number,
  also: boolean,
  state: Float64Array,
  time: number,
  tell: Happenings,
): void {
  const corner = vehicle.corners[i]!
  const { modes } = corner
  const out = STATES * i + STATE.stop
  switch (modes.stop) {
    case 'clear':
      touch(vehicle, i, state, time, tell)
      break
    case 'touching':
      state[out] = also ? Math.max(0, corner.pad) : 0
      modes.stop = also ? 'apart' : 'clear'
      tell.part(i, time)
      break
    case 'resting':
      modes.stop = also ? 'touching' : 'clear'
      if (!also) tell.part(i, time)
      break
    case 'apart':
      if (also) {
        state[out] = 0
        modes.stop = 'clear'
      } else touch(vehicle, i, state, time, tell)
  }
}

/** Lets what a watch saw happen: the corner's modes change, and its state where something jumps. The corner has been looked at. */
export function happen(vehicle: Vehicle, place: number, state: Float64Array, time: number, tell: Happenings): void {
  const i = Math.floor(place / WATCHES)
  const { modes, wheel, table } = vehicle.corners[i]!
  const which = place % WATCHES
  if (which === WATCH.stop || which === WATCH.stopAlso)
    stopHappens(vehicle, i, which === WATCH.stopAlso, state, time, tell)
  else if (which === WATCH.ground) modes.ground = !modes.ground
  else if (which === WATCH.turn) modes.bumping = !modes.bumping
  else if (which === WATCH.region) modes.region = table.regionOf(wheel)
  else if (modes.end === 'none') {
    modes.end = which === WATCH.end ? 'bump' : 'droop'
    modes.endPushes = true
    if (modes.end === 'bump') tell.bottom(i, time)
  } else if (which === WATCH.end) {
    modes.end = 'none'
    modes.endPushes = false
  } else modes.endPushes = !modes.endPushes
}
