import type { ValueAndSlope } from './roots.ts'

/** A curve through points that never overshoots them. */
export interface Pchip {
  /** Slopes at the points. */
  readonly slopes: readonly number[]
  /** Value and slope at x; outside the points, those of the nearer end. */
  at(x: number): ValueAndSlope
  /** Second derivative at x, which jumps at the points; x within them. */
  bend(x: number, side: 'below' | 'above'): number
  /** ∫ from the first point to x, exact; x within the points. */
  integral(x: number): number
}

/** Slope at an end from the three points nearest it, kept to the sign of the first chord (C. Moler, Numerical Computing with MATLAB, 2004, §3.6). */
function endSlope(h0: number, h1: number, chord0: number, chord1: number): number {
  const slope = ((2 * h0 + h1) * chord0 - h0 * chord1) / (h0 + h1)
  if (slope * chord0 <= 0) return 0
  return chord0 * chord1 < 0 && Math.abs(slope) > 3 * Math.abs(chord0) ? 3 * chord0 : slope
}

function slopesOf(x: readonly number[], y: readonly number[]): number[] {
  const h = x.slice(1).map((next, i) => next - x[i]!)
  const chord = h.map((width, i) => (y[i + 1]! - y[i]!) / width)
  if (chord.length === 1) return [chord[0]!, chord[0]!]
  const inner = h.slice(1).map((_, j) => {
    const [before, after] = [chord[j]!, chord[j + 1]!]
    if (before * after <= 0) return 0
    const w1 = 2 * h[j + 1]! + h[j]!
    const w2 = h[j + 1]! + 2 * h[j]!
    return (w1 + w2) / (w1 / before + w2 / after)
  })
  const last = h.length - 1
  return [
    endSlope(h[0]!, h[1]!, chord[0]!, chord[1]!),
    ...inner,
    endSlope(h[last]!, h[last - 1]!, chord[last]!, chord[last - 1]!),
  ]
}

/**
 * Monotone cubic Hermite interpolation with Fritsch–Butland slopes (F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300,
 * in the weighted harmonic mean of the usual PCHIP).
 * @param x at least two places, strictly rising
 * @param y values there, any unit
 */
export function pchip(x: readonly number[], y: readonly number[]): Pchip {
  const slopes = slopesOf(x, y)
  const last = x.length - 1
  /** The point below a place, how far on from it to the next, 0 to 1, and the cubic's coefficients between them. */
  const piece = (place: number, side: 'below' | 'above' = 'above') => {
    let low = 0
    let high = last
    while (high - low > 1) {
      const middle = (low + high) >> 1
      if (side === 'above' ? x[middle]! <= place : x[middle]! < place) low = middle
      else high = middle
    }
    const h = x[high]! - x[low]!
    const t = (place - x[low]!) / h
    const [y0, y1, d0, d1] = [y[low]!, y[high]!, slopes[low]! * h, slopes[high]! * h]
    const rise = y1 - y0
    return { low, h, t, y0, d0, c2: 3 * rise - 2 * d0 - d1, c3: d0 + d1 - 2 * rise }
  }
  const at = (place: number): ValueAndSlope => {
    if (place <= x[0]!) return { value: y[0]!, slope: slopes[0]! }
    if (place >= x[last]!) return { value: y[last]!, slope: slopes[last]! }
    const { h, t, y0, d0, c2, c3 } = piece(place)
    return { value: y0 + t * (d0 + t * (c2 + t * c3)), slope: (d0 + t * (2 * c2 + 3 * t * c3)) / h }
  }
  const bend = (place: number, side: 'below' | 'above'): number => {
    const { h, t, c2, c3 } = piece(place, side)
    return (2 * c2 + 6 * c3 * t) / h ** 2
  }
  const integral = (place: number): number => {
    const { low, h, t, y0, d0, c2, c3 } = piece(place)
    let sum = h * t * (y0 + t * (d0 / 2 + t * (c2 / 3 + (t * c3) / 4)))
    for (let i = 0; i < low; i += 1) {
      const width = x[i + 1]! - x[i]!
      sum += (width * (y[i]! + y[i + 1]!)) / 2 + (width ** 2 * (slopes[i]! - slopes[i + 1]!)) / 12
    }
    return sum
  }
  return { slopes, at, bend, integral }
}
