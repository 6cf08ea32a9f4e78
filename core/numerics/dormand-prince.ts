/** Gives the slopes of a state into `slopes`. Smooth while a step lasts. */
export type Slopes = (time: number, state: Float64Array, slopes: Float64Array) => void

const C = [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1]
const A = [
  [],
  [1 / 5],
  [3 / 40, 9 / 40],
  [44 / 45, -56 / 15, 32 / 9],
  [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
  [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
  [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
]
const ERROR = [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40]
const DENSE = [
  -12715105075 / 11282082432,
  0,
  87487479700 / 32700410799,
  -10690763975 / 1880347072,
  701980252875 / 199316789632,
  -1453857185 / 822651844,
  69997945 / 29380423,
]

/**
 * One step after another of the embedded Runge–Kutta pair of order 5(4) of J. R. Dormand and P. J. Prince (J. Comput. Appl. Math. 6 (1980) 19),
 * with its continuous extension (E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, 2nd ed. 1993, §II.6).
 * The caller decides on the length of steps; `error` says what the step cost.
 */
export class DormandPrince {
  /** Time and state at the start of the step last taken, and where it ended. */
  time = 0
  length = 0
  readonly end: Float64Array
  private readonly start: Float64Array
  private readonly stages: readonly Float64Array[]
  private readonly trial: Float64Array

  constructor(
    private readonly slopes: Slopes,
    size: number,
  ) {
    const array = () => new Float64Array(size)
    this.end = array()
    this.start = array()
    this.trial = array()
    this.stages = C.map(array)
  }

  /**
   * Tries a step from (time, state) of `length` s.
   * @param tolerance largest error of each component that counts as 1, in that component's own unit; infinite to leave it out
   * @returns the step's error over the tolerance: 1 or less is good
   */
  attempt(time: number, state: Float64Array, length: number, tolerance: Float64Array): number {
    const { start, trial, stages, end } = this
    this.time = time
    this.length = length
    start.set(state)
    this.slopes(time, state, stages[0]!)
    for (let s = 1; s < 7; s += 1) {
      const row = A[s]!
      for (let i = 0; i < trial.length; i += 1) {
        let sum = 0
        for (let j = 0; j < s; j += 1) sum += row[j]! * stages[j]![i]!
        trial[i] = start[i]! + length * sum
      }
      if (s === 6) end.set(trial)
      this.slopes(time + C[s]! * length, trial, stages[s]!)
    }
    let worst = 0
    for (let i = 0; i < end.length; i += 1) {
      let sum = 0
      for (let s = 0; s < 7; s += 1) sum += ERROR[s]! * stages[s]![i]!
      worst = Math.max(worst, Math.abs(length * sum) / tolerance[i]!)
    }
    return worst
  }

  /** The state inside the step last tried, `share` of it along (0 to 1), into `state`; good to order 4. */
  within(share: number, state: Float64Array): void {
    const { start, end, stages, length } = this
    const rest = 1 - share
    for (let i = 0; i < state.length; i += 1) {
      const rise = end[i]! - start[i]!
      const bend = length * stages[0]![i]! - rise
      let dense = 0
      for (let s = 0; s < 7; s += 1) dense += DENSE[s]! * stages[s]![i]!
      const twist = rise - length * stages[6]![i]! - bend
      state[i] = start[i]! + share * (rise + rest * (bend + share * (twist + rest * length * dense)))
    }
  }
}
