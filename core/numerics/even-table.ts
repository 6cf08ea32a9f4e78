/** A smooth function kept at evenly spaced places, for loops that ask it often. */
export interface EvenTable {
  /** Outside the table, the value of the nearer end. */
  value(x: number): number
  /** Slope there; 0 outside the table. */
  slope(x: number): number
  /** Both, for loops: what they give at `at` is left in `found` and `rising`. */
  at: number
  readonly found: number
  readonly rising: number
  look(): void
}

class Even implements EvenTable {
  at = 0
  found = 0
  rising = 0
  private readonly cubics: Float64Array
  private readonly count: number
  private readonly perUnit: number

  constructor(
    private readonly from: number,
    step: number,
    values: ArrayLike<number>,
    slopes: ArrayLike<number>,
  ) {
    const count = values.length - 1
    const cubics = new Float64Array(4 * count)
    for (let i = 0; i < count; i += 1) {
      const rise = values[i + 1]! - values[i]!
      const d0 = slopes[i]! * step
      const d1 = slopes[i + 1]! * step
      cubics[4 * i] = values[i]!
      cubics[4 * i + 1] = d0
      cubics[4 * i + 2] = 3 * rise - 2 * d0 - d1
      cubics[4 * i + 3] = d0 + d1 - 2 * rise
    }
    this.cubics = cubics
    this.count = count
    this.perUnit = 1 / step
  }

  value(x: number): number {
    this.at = x
    this.look()
    return this.found
  }

  slope(x: number): number {
    this.at = x
    this.look()
    return this.rising
  }

  look(): void {
    const { cubics, count } = this
    const place = (this.at - this.from) * this.perUnit
    const i = place <= 0 ? 0 : place >= count ? count - 1 : place | 0
    const t = place <= 0 ? 0 : place >= count ? 1 : place - i
    const c = 4 * i
    const b = cubics[c + 1]!
    const d = cubics[c + 2]!
    const e = cubics[c + 3]!
    this.found = cubics[c]! + t * (b + t * (d + t * e))
    this.rising = place < 0 || place > count ? 0 : (b + t * (2 * d + 3 * t * e)) * this.perUnit
  }
}

/**
 * Cubic Hermite interpolation between evenly spaced places: error of the value at most step⁴/384 times the largest fourth derivative
 * (any text on numerical analysis, such as C. de Boor, A Practical Guide to Splines, 1978, ch. IV).
 * @param from place of the first value
 * @param step distance of places, more than 0
 * @param values at least two; @param slopes as many, per unit of x
 */
export const evenTable = (
  from: number,
  step: number,
  values: ArrayLike<number>,
  slopes: ArrayLike<number>,
): EvenTable => new Even(from, step, values, slopes)
