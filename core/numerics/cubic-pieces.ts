import { pchip } from './pchip.ts'

/** A rising curve of cubic pieces, for loops that ask it often: nothing is made anew on a look. */
export interface CubicPieces {
  /** Outside the places, the value of the nearer end. */
  value(x: number): number
  /** The place where the value is first reached, for a value between those of the ends; good to 10⁻¹² of the piece it is in. */
  where(value: number): number
  /** Slope at the last place. */
  readonly lastSlope: number
}

/**
 * The shape-preserving curve of pchip.ts through rows that do not fall.
 * @param x at least two places, strictly rising; @param y values there, not falling
 */
export function cubicPieces(x: readonly number[], y: readonly number[]): CubicPieces {
  const { slopes } = pchip(x, y)
  const last = x.length - 1
  const places = Float64Array.from(x)
  const values = Float64Array.from(y)
  const cubics = new Float64Array(4 * last)
  for (let i = 0; i < last; i += 1) {
    const width = x[i + 1]! - x[i]!
    const rise = y[i + 1]! - y[i]!
    const [d0, d1] = [slopes[i]! * width, slopes[i + 1]! * width]
    cubics.set([y[i]!, d0, 3 * rise - 2 * d0 - d1, d0 + d1 - 2 * rise], 4 * i)
  }
  /** The piece a number is in, among rising ones. */
  const pieceOf = (rising: Float64Array, at: number): number => {
    let low = 0
    let high = last
    while (high - low > 1) {
      const middle = (low + high) >> 1
      if (rising[middle]! <= at) low = middle
      else high = middle
    }
    return low
  }
  const inPiece = (piece: number, t: number): number => {
    const c = 4 * piece
    return cubics[c]! + t * (cubics[c + 1]! + t * (cubics[c + 2]! + t * cubics[c + 3]!))
  }
  return {
    value: at => {
      if (at <= places[0]!) return values[0]!
      if (at >= places[last]!) return values[last]!
      const piece = pieceOf(places, at)
      return inPiece(piece, (at - places[piece]!) / (places[piece + 1]! - places[piece]!))
    },
    where: wanted => {
      if (wanted <= values[0]!) return places[0]!
      if (wanted >= values[last]!) return places[last]!
      const piece = pieceOf(values, wanted)
      const c = 4 * piece
      let [low, high] = [0, 1]
      let t = (wanted - values[piece]!) / (values[piece + 1]! - values[piece]!)
      // Newton's steps, halving where one would leave the bracket.
      for (let round = 0; round < 60 && high - low > 1e-12; round += 1) {
        const off = inPiece(piece, t) - wanted
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
    },
    lastSlope: slopes[last]!,
  }
}
