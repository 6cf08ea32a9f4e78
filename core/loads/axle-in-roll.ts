import type { CornerModel } from '../corner/corner-model.ts'
import { REACH } from '../linkage/movement.ts'
import { type Found, passingZero } from '../numerics/passing.ts'
import { POSITION_TOLERANCE } from '../numerics/roots.ts'
import type { Axle } from '../plan/schema.ts'
import { GRAVITY } from '../units/constants.ts'
import { type AxleState, mixStates, type SideState } from './axle-state.ts'
import { armOf, type Station, stationsOf } from './station.ts'

/** An axle under a weight, ready to be asked how it stands in roll. */
export interface LoadedAxle {
  readonly axle: Axle
  readonly model: CornerModel
  readonly stations: readonly Station[]
  /** What each of its two sides carries of the chassis, N. */
  readonly weight: number
  /** Where both wheels are without roll, m. */
  readonly level: number
}

/** @param weight that each of its two sides carries of the chassis, N; @param level where both wheels are without roll, m from ride height */
export const loadedAxle = (axle: Axle, model: CornerModel, weight: number, level: number): LoadedAxle => ({
  axle,
  model,
  stations: stationsOf(axle, model),
  weight,
  level,
})

/** Longest look along the force for an equilibrium, m. */
const LOOK = 0.01

/** Finest a roll angle is known to, rad: a wheel position within about 1e-13 m. */
export const ROLL_TOLERANCE = 1e-13

const sumOf = ({ springs, gas, stop, end }: SideState): number => springs + gas + stop + end

/** Without roll: each side carries half, an end of the travel what lies beyond it. */
function levelState({ model, weight, level }: LoadedAxle): AxleState {
  const above = model.forces(level, 'slow', 'above')
  const below = model.forces(level, 'slow', 'below')
  const { springs, gas } = above
  const stop = Math.min(above.stop, Math.max(below.stop, weight - springs - gas))
  const atEnd = level <= model.droop || level >= model.bump
  const end = atEnd ? weight - springs - gas - stop : 0
  const side: SideState = { wheel: level, atShock: level, atStop: level, springs, gas, stop, end }
  return { outer: side, inner: side, lift: 2 * sumOf(side), moment: 0, lifted: false }
}

/** Forces and moment with the middle of the chassis at one height, whatever the weight; ends of the travel and anti-roll bar aside. */
function standing({ axle, stations }: LoadedAxle, roll: number, mean: number): AxleState {
  let moment = 0
  const side = (sign: 1 | -1): SideState => {
    const at = (arm: number): number => mean + sign * roll * arm
    let [springs, gas, stop] = [0, 0, 0]
    for (const station of stations) {
      const carried = station.carried(at(station.arm))
      springs += carried.springs
      gas += carried.gas
      stop += carried.stop
      moment += sign * station.arm * (carried.springs + carried.gas + carried.stop)
    }
    const [atShock, atStop] = [at(armOf(axle, 'shock')), at(armOf(axle, 'stop'))]
    return { wheel: at(axle.track / 2), atShock, atStop, springs, gas, stop, end: 0 }
  }
  const outer = side(1)
  const inner = side(-1)
  return { outer, inner, lift: sumOf(outer) + sumOf(inner), moment, lifted: false }
}

/** With an end of the travel carrying what is missing: the outer side's at the top, the inner side's at the bottom. */
function onEnd(state: AxleState, missing: number, arm: number): AxleState {
  const { outer, inner } = state
  return {
    ...state,
    outer: missing > 0 ? { ...outer, end: missing } : outer,
    inner: missing > 0 ? inner : { ...inner, end: missing },
    lift: state.lift + missing,
    moment: state.moment + Math.abs(missing) * arm,
  }
}

/** `lift` of `standing`, by itself: what a search asks again and again. */
function liftAt({ stations }: LoadedAxle, roll: number, mean: number): number {
  let lift = 0
  for (const { arm, carried } of stations) {
    const outer = carried(mean + roll * arm)
    const inner = carried(mean - roll * arm)
    lift += outer.springs + outer.gas + outer.stop + inner.springs + inner.gas + inner.stop
  }
  return lift
}

/** Heaved so that it carries its weight; null where the travel does not reach so far round. */
function heaved(loaded: LoadedAxle, roll: number): AxleState | null {
  const { stations, weight, level } = loaded
  const lows = stations.map(({ low, arm }) => Math.max(low, -REACH) + roll * arm)
  const highs = stations.map(({ high, arm }) => Math.min(high, REACH) - roll * arm)
  const [lowest, highest] = [Math.max(...lows), Math.min(...highs)]
  if (lowest > highest) return null
  const ask = (mean: number): Found<number> => ({ value: liftAt(loaded, roll, mean) - 2 * weight, state: mean })
  let low = Math.min(highest, Math.max(lowest, level))
  let atLow = ask(low)
  const up = atLow.value < 0
  const end = up ? highest : lowest
  const looks = Math.ceil(Math.abs(end - low) / LOOK)
  const step = (end - low) / looks
  for (let i = 1; i <= looks; i += 1) {
    const high = i === looks ? end : low + step
    const atHigh = ask(high)
    if (atHigh.value >= 0 === up) {
      const { a, b, share } = passingZero(ask, [low, atLow], [high, atHigh], POSITION_TOLERANCE)
      return mixStates(standing(loaded, roll, a), standing(loaded, roll, b), share)
    }
    low = high
    atLow = atHigh
  }
  const state = standing(loaded, roll, low)
  const station = stations[up ? highs.indexOf(highest) : lows.indexOf(lowest)]!
  return onEnd(state, 2 * weight - state.lift, station.arm)
}

/** Most that an axle can resist, N·m: all that it carries on the outer wheel, the inner one about to leave the ground. */
export const liftingMoment = ({ axle, weight }: LoadedAxle): number =>
  Math.max(0, (weight + axle.corner.unsprungMass * GRAVITY) * axle.track)

/** With its inner wheel off the ground: as it stood when that wheel lifted, somewhere below this roll angle. */
function lifted(loaded: LoadedAxle, roll: number, most: number): AxleState {
  if (most === 0) return { ...levelState(loaded), lifted: true }
  const ask = (angle: number): Found<AxleState | null> => {
    const state = angle === 0 ? levelState(loaded) : onGround(loaded, angle)
    return { value: Math.min(most, state === null ? most : state.moment - most), state }
  }
  const { a, b, share } = passingZero(ask, [0, ask(0)], [roll, ask(roll)], ROLL_TOLERANCE)
  if (a !== null && b !== null) return { ...mixStates(a, b, share), moment: most, lifted: true }
  const last = a ?? b ?? levelState(loaded)
  const pull = (most - last.moment) / loaded.axle.track
  return {
    outer: { ...last.outer, end: last.outer.end + pull },
    inner: { ...last.inner, end: last.inner.end - pull },
    lift: last.lift,
    moment: most,
    lifted: true,
  }
}

function onGround(loaded: LoadedAxle, roll: number): AxleState | null {
  const state = heaved(loaded, roll)
  return state && { ...state, moment: state.moment + loaded.axle.antiRollRate * roll }
}

/**
 * An axle at a roll angle, its wheels on the ground; null once the inner one has left it. It heaves so that it carries its weight; an end of
 * the travel carries what lies beyond it. Moment: each station's forces times its arm (T. D. Gillespie, Fundamentals of Vehicle Dynamics,
 * SAE 1992, ch. 6, without small angles or straight springs), plus the anti-roll bar's rate times the angle.
 * @param roll rad, 0 or more
 */
export function axleOnGround(loaded: LoadedAxle, roll: number): AxleState | null {
  if (roll === 0) return levelState(loaded)
  const state = onGround(loaded, roll)
  return state !== null && state.moment <= liftingMoment(loaded) ? state : null
}

/** The same at any angle: once all the weight is on the outer wheel the axle resists no more, and stands as it did when the inner one lifted. */
export const axleInRoll = (loaded: LoadedAxle, roll: number): AxleState =>
  axleOnGround(loaded, roll) ?? lifted(loaded, roll, liftingMoment(loaded))
