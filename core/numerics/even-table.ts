/** A smooth function kept at evenly spaced places, for loops that ask it often. */
export interface EvenTable {
  /** Outside the table, the value of the nearer end. */
  value(x: number): number
  /** Slope there; 0 outside the table. */
  slope(x: number): number
}

/**
 * Cubic Hermite interpolation between evenly spaced places: error of the value at most step⁴/384 times the largest fourth derivative
 * (any text on numerical analysis, such as C. de Boor, A Practical Guide to Splines, 1978, ch. IV).
 * @param from place of the first value
 * @param step distance of places, more than 0
 * @param values at least two; @param slopes as many, per unit of x
 */
export function evenTable(from: number, step: number, values: ArrayLike<number>, slopes: ArrayLike<number>): EvenTable {
  const last = values.length - 2
  const cubics = new Float64Array(4 * (last + 1))
  for (let i = 0; i <= last; i += 1) {
    const rise = values[i + 1]! - values[i]!
    const d0 = slopes[i]! * step
    const d1 = slopes[i + 1]! * step
    cubics[4 * i] = values[i]!
    cubics[4 * i + 1] = d0
    cubics[4 * i + 2] = 3 * rise - 2 * d0 - d1
    cubics[4 * i + 3] = d0 + d1 - 2 * rise
  }
  const width = 1 / step
  return {
    value: x => {
      const place = (x - from) * width
      const i = place <= 0 ? 0 : place >= last + 1 ? last : Math.floor(place)
      const t = place <= 0 ? 0 : place >= last + 1 ? 1 : place - i
      const c = 4 * i
      return cubics[c]! + t * (cubics[c + 1]! + t * (cubics[c + 2]! + t * cubics[c + 3]!))
    },
    slope: x => {
      const place = (x - from) * width
      if (place < 0 || place > last + 1) return 0
      const i = Math.min(last, Math.floor(place))
      const t = place - i
      const c = 4 * i
      return (cubics[c + 1]! + t * (2 * cubics[c + 2]! + 3 * t * cubics[c + 3]!)) * width
    },
  }
}
