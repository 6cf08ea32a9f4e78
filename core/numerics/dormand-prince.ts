/** Gives the slopes of a state into `slopes`. Smooth while a step lasts. */
export type Slopes = (time: number, state: Float64Array, slopes: Float64Array) => void

/**
 * One step after another of the embedded Runge–Kutta pair of order 5(4) of J. R. Dormand and P. J. Prince (J. Comput. Appl. Math. 6 (1980) 19),
 * with its continuous extension (E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, 2nd ed. 1993, §II.6).
 * The last look of a step is the first of the next one, so a step costs six looks. The caller decides on the length of steps.
 * Places from `steered` on are carried: quadratures no slope depends on, which cost no stages and do not steer the length.
 */
export class DormandPrince {
  /** Where the step starts, and its state. */
  time = 0
  readonly start: Float64Array
  /** Which look of a step is being taken: 0 at its start, 2 three tenths and 3 eight tenths along, 6 at its end. */
  stage = 0
  /** Length of the step last tried, and the state at its end. */
  length = 0
  readonly end: Float64Array
  private readonly trial: Float64Array
  private first: Float64Array
  private readonly second: Float64Array
  private readonly third: Float64Array
  private readonly fourth: Float64Array
  private readonly fifth: Float64Array
  private readonly sixth: Float64Array
  private last: Float64Array
  /** The continuous extension of the step last tried, worked out for so many places when it is first asked for. */
  private laid = 0
  private readonly bend: Float64Array
  private readonly twist: Float64Array
  private readonly bulge: Float64Array

  constructor(
    private readonly slopes: Slopes,
    private readonly steered: number,
    size = steered,
  ) {
    const array = (): Float64Array => new Float64Array(size)
    this.start = array()
    this.end = array()
    this.trial = array()
    this.first = array()
    this.second = array()
    this.third = array()
    this.fourth = array()
    this.fifth = array()
    this.sixth = array()
    this.last = array()
    this.bend = array()
    this.twist = array()
    this.bulge = array()
  }

  /** Starts from a time and state anew: after a jump, or when the slopes have become others. */
  begin(time: number, state: Float64Array): void {
    this.time = time
    this.start.set(state)
    this.stage = 0
    this.slopes(time, this.start, this.first)
  }

  /**
   * Tries a step of `length`.
   * @param tolerance largest error of each steered place that counts as 1, in its own unit; infinite to leave it out
   * @returns the step's error over the tolerance, the worst of all places: 1 or less is good
   */
  attempt(length: number, tolerance: Float64Array): number {
    const { slopes, steered, time, start: y, end, trial } = this
    const { first: k1, second: k2, third: k3, fourth: k4, fifth: k5, sixth: k6, last: k7 } = this
    const h = length
    this.length = h
    this.laid = 0
    this.stage = 1
    for (let i = 0; i < steered; i += 1) trial[i] = y[i]! + h * (1 / 5) * k1[i]!
    slopes(time + h / 5, trial, k2)
    for (let i = 0; i < steered; i += 1) trial[i] = y[i]! + h * ((3 / 40) * k1[i]! + (9 / 40) * k2[i]!)
    this.stage = 2
    slopes(time + h * (3 / 10), trial, k3)
    for (let i = 0; i < steered; i += 1)
      trial[i] = y[i]! + h * ((44 / 45) * k1[i]! - (56 / 15) * k2[i]! + (32 / 9) * k3[i]!)
    this.stage = 3
    slopes(time + h * (4 / 5), trial, k4)
    this.stage = 4
    for (let i = 0; i < steered; i += 1)
      trial[i] =
        y[i]! + h * ((19372 / 6561) * k1[i]! - (25360 / 2187) * k2[i]! + (64448 / 6561) * k3[i]! - (212 / 729) * k4[i]!)
    slopes(time + h * (8 / 9), trial, k5)
    for (let i = 0; i < steered; i += 1)
      trial[i] =
        y[i]! +
        h *
          ((9017 / 3168) * k1[i]! -
            (355 / 33) * k2[i]! +
            (46732 / 5247) * k3[i]! +
            (49 / 176) * k4[i]! -
            (5103 / 18656) * k5[i]!)
    slopes(time + h, trial, k6)
    for (let i = 0; i < end.length; i += 1)
      end[i] =
        y[i]! +
        h *
          ((35 / 384) * k1[i]! +
            (500 / 1113) * k3[i]! +
            (125 / 192) * k4[i]! -
            (2187 / 6784) * k5[i]! +
            (11 / 84) * k6[i]!)
    this.stage = 6
    slopes(time + h, end, k7)
    let worst = 0
    for (let i = 0; i < steered; i += 1) {
      const off =
        (71 / 57600) * k1[i]! -
        (71 / 16695) * k3[i]! +
        (71 / 1920) * k4[i]! -
        (17253 / 339200) * k5[i]! +
        (22 / 525) * k6[i]! -
        (1 / 40) * k7[i]!
      const error = Math.abs(h * off) / tolerance[i]!
      if (!(error <= worst)) worst = error
    }
    return worst
  }

  /** Goes on from the end of the step last tried. */
  advance(): void {
    this.time += this.length
    const { start, end } = this
    for (let i = 0; i < end.length; i += 1) start[i] = end[i]!
    const done = this.first
    this.first = this.last
    this.last = done
  }

  private lay(places: number): void {
    const { start: y, end, length: h, bend, twist, bulge } = this
    const { first: k1, third: k3, fourth: k4, fifth: k5, sixth: k6, last: k7 } = this
    for (let i = this.laid; i < places; i += 1) {
      const rise = end[i]! - y[i]!
      bend[i] = h * k1[i]! - rise
      twist[i] = rise - h * k7[i]! - bend[i]!
      bulge[i] =
        h *
        ((-12715105075 / 11282082432) * k1[i]! +
          (87487479700 / 32700410799) * k3[i]! -
          (10690763975 / 1880347072) * k4[i]! +
          (701980252875 / 199316789632) * k5[i]! -
          (1453857185 / 822651844) * k6[i]! +
          (69997945 / 29380423) * k7[i]!)
    }
    this.laid = places
  }

  /** The state inside the step last tried, `share` of it along (0 to 1), into `state`, its first `places`; good to order 4. */
  within(share: number, state: Float64Array, places = state.length): void {
    if (this.laid < places) this.lay(places)
    const { start: y, end, bend, twist, bulge } = this
    const rest = 1 - share
    for (let i = 0; i < places; i += 1)
      state[i] = y[i]! + share * (end[i]! - y[i]! + rest * (bend[i]! + share * (twist[i]! + rest * bulge[i]!)))
  }
}
