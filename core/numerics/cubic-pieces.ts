import { pchip } from './pchip.ts'

/** A rising curve of cubic pieces, for loops that ask it often: nothing is made anew on a look. */
export interface CubicPieces {
  /** Outside the places, the value of the nearer end. */
  value(x: number): number
  /** The place where the value is first reached, for a value between those of the ends; good to 10⁻¹² of the piece it is in. */
  where(value: number): number
  /** For loops that look for themselves: the places, one over the width of each piece, and its four coefficients in shares of that width. */
  readonly places: Float64Array
  readonly perWidth: Float64Array
  readonly cubics: Float64Array
  /** Slopes at the first and the last place. */
  readonly firstSlope: number
  readonly lastSlope: number
}

class Pieces implements CubicPieces {
  readonly firstSlope: number
  readonly lastSlope: number
  readonly places: Float64Array
  private readonly values: Float64Array
  readonly cubics: Float64Array
  readonly perWidth: Float64Array
  private readonly last: number
  /** The piece last looked at: the next look is mostly near. */
  private here = 0

  constructor(x: readonly number[], y: readonly number[]) {
    const { slopes } = pchip(x, y)
    const last = x.length - 1
    this.last = last
    this.places = Float64Array.from(x)
    this.values = Float64Array.from(y)
    this.cubics = new Float64Array(4 * last)
    this.perWidth = new Float64Array(last)
    this.firstSlope = slopes[0]!
    this.lastSlope = slopes[last]!
    for (let i = 0; i < last; i += 1) {
      const width = x[i + 1]! - x[i]!
      this.perWidth[i] = 1 / width
      const rise = y[i + 1]! - y[i]!
      const [d0, d1] = [slopes[i]! * width, slopes[i + 1]! * width]
      this.cubics.set([y[i]!, d0, 3 * rise - 2 * d0 - d1, d0 + d1 - 2 * rise], 4 * i)
    }
  }

  private inPiece(piece: number, t: number): number {
    const { cubics } = this
    const c = 4 * piece
    return cubics[c]! + t * (cubics[c + 1]! + t * (cubics[c + 2]! + t * cubics[c + 3]!))
  }

  value(at: number): number {
    const { places, values, last } = this
    if (at <= places[0]!) return values[0]!
    if (at >= places[last]!) return values[last]!
    let i = this.here
    while (at >= places[i + 1]!) i += 1
    while (at < places[i]!) i -= 1
    this.here = i
    return this.inPiece(i, (at - places[i]!) * this.perWidth[i]!)
  }

  where(wanted: number): number {
    const { places, values, cubics, last } = this
    if (wanted <= values[0]!) return places[0]!
    if (wanted >= values[last]!) return places[last]!
    let piece = 0
    for (let over = last; over - piece > 1; ) {
      const middle = (piece + over) >> 1
      if (values[middle]! <= wanted) piece = middle
      else over = middle
    }
    const c = 4 * piece
    let [low, high] = [0, 1]
    let t = (wanted - values[piece]!) / (values[piece + 1]! - values[piece]!)
    // Newton's steps, halving where one would leave the bracket.
    for (let round = 0; round < 60 && high - low > 1e-12; round += 1) {
      const off = this.inPiece(piece, t) - wanted
      if (off === 0) break
      if (off > 0) high = t
      else low = t
      const slope = cubics[c + 1]! + t * (2 * cubics[c + 2]! + 3 * t * cubics[c + 3]!)
      const next = t - off / slope
      const inside = next > low && next < high
      if (inside && Math.abs(next - t) < 1e-13) break
      t = inside ? next : (low + high) / 2
    }
    return places[piece]! + t * (places[piece + 1]! - places[piece]!)
  }
}

/**
 * The shape-preserving curve of pchip.ts through rows that do not fall.
 * @param x at least two places, strictly rising; @param y values there, not falling
 */
export const cubicPieces = (x: readonly number[], y: readonly number[]): CubicPieces => new Pieces(x, y)
