import { axleInRoll, type LoadedAxle, ROLL_TOLERANCE } from './axle-in-roll.ts'
import { type AxleState, mixStates, passingZero } from './axle-state.ts'

/** From here on it counts as rolling over, rad: 20°. */
export const LARGEST_ROLL = Math.PI / 9

/** Longest look over the roll angle, rad. */
const LOOK = LARGEST_ROLL / 40

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
  const at = (roll: number): AxleState[] => axles.map(loaded => axleInRoll(loaded, roll))
  const over = (roll: number): number => at(roll).reduce((sum, { moment }) => sum + moment, 0) - pull - fall * roll
  if (pull === 0) return { roll: 0, axles: at(0) }
  let low = 0
  for (let i = 1; i <= 40; i += 1) {
    const high = i * LOOK
    if (over(high) >= 0) {
      const { before, behind, share } = passingZero(over, low, high, ROLL_TOLERANCE)
      const [a, b] = [at(before), at(behind)]
      return { roll: before + (behind - before) * share, axles: a.map((state, j) => mixStates(state, b[j]!, share)) }
    }
    low = high
  }
  return null
}
