import { type Found, passingZero } from '../numerics/passing.ts'
import { axleInRoll, axleOnGround, type LoadedAxle, liftingMoment, ROLL_TOLERANCE } from './axle-in-roll.ts'
import { type AxleState, mixStates } from './axle-state.ts'

/** From here on it counts as rolling over, rad: 20°. */
const LARGEST_ROLL = Math.PI / 9

/** How many looks the search takes up to there: half a degree each. */
const LOOKS = 40

/** The whole chassis at one roll angle. */
export interface CarInRoll {
  /** Rad, 0 or more; `outer` of each axle is the side that has gone up. */
  readonly roll: number
  /** In the order of the axles. */
  readonly axles: readonly AxleState[]
}

/**
 * The roll angle at which the axles together resist what turns the chassis: Σ moments = pull + fall·roll, the first such angle from upright.
 * Steps and ends of the travel carry whatever balance asks for. Null when there is none below 20°: it rolls.
 * @param pull moment of the turn on the upright chassis, N·m, 0 or more
 * @param fall what its weight adds per radian, N·m: m·g·(cgHeight − rollAxisHeight), negative with the roll axis above
 */
export function carInRoll(axles: readonly LoadedAxle[], pull: number, fall: number): CarInRoll | null {
  const ask = (roll: number): Found<number> => {
    const resists = (loaded: LoadedAxle): number => axleOnGround(loaded, roll)?.moment ?? liftingMoment(loaded)
    return { value: axles.reduce((sum, loaded) => sum + resists(loaded), 0) - pull - fall * roll, state: roll }
  }
  if (pull === 0) return { roll: 0, axles: axles.map(loaded => axleInRoll(loaded, 0)) }
  let low = 0
  let atLow = ask(low)
  for (let i = 1; i <= LOOKS; i += 1) {
    const high = (i * LARGEST_ROLL) / LOOKS
    const atHigh = ask(high)
    if (atHigh.value >= 0) {
      const { a, b, share } = passingZero(ask, [low, atLow], [high, atHigh], ROLL_TOLERANCE)
      return {
        roll: a + (b - a) * share,
        axles: axles.map(loaded => mixStates(axleInRoll(loaded, a), axleInRoll(loaded, b), share)),
      }
    }
    low = high
    atLow = atHigh
  }
  return null
}
