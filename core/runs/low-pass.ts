/**
 * Run over the values forwards and backwards a second-order Butterworth filter passes the square of its gain; its own cutoff is put up so
 * that the two passes together are 3 dB down where the cutoff was asked for (D. A. Winter, Biomechanics and Motor Control of Human
 * Movement, ch. 2, from memory: (2^(1/passes) − 1)^(1/4) = 0.802).
 */
const TWO_PASSES = (Math.SQRT2 - 1) ** 0.25

/** A cutoff must lie below this share of the rows per second, or there is nothing left to take away. */
export const HIGHEST_CUTOFF = 0.35

const warped = (cutoff: number, step: number): number => Math.tan(Math.PI * cutoff * step) / TWO_PASSES

/**
 * Takes away what is faster than the cutoff and shifts nothing in time. The ends are turned over about their end value (odd extension), so
 * that a level or a slope there stays one.
 * @param cutoff Hz, more than 0 and no more than HIGHEST_CUTOFF/step; @param step s
 */
export function lowPass(values: Float64Array, cutoff: number, step: number): Float64Array {
  if (values.length < 2) return values.slice()
  const w = warped(cutoff, step)
  const scale = 1 / (1 + Math.SQRT2 * w + w * w)
  const b = w * w * scale
  const a1 = 2 * (w * w - 1) * scale
  const a2 = (1 - Math.SQRT2 * w + w * w) * scale
  const beyond = Math.min(values.length - 1, Math.ceil(3 / (cutoff * step)))
  const [first, last] = [values[0]!, values.at(-1)!]
  const longer = new Float64Array(values.length + 2 * beyond)
  longer.set(values, beyond)
  for (let i = 1; i <= beyond; i += 1) {
    longer[beyond - i] = 2 * first - values[i]!
    longer[beyond + values.length - 1 + i] = 2 * last - values[values.length - 1 - i]!
  }
  for (let pass = 0; pass < 2; pass += 1) {
    let x1 = longer[0]!
    let [x2, y1, y2] = [x1, x1, x1]
    for (let i = 0; i < longer.length; i += 1) {
      const x = longer[i]!
      const y = b * (x + 2 * x1 + x2) - a1 * y1 - a2 * y2
      ;[x2, x1, y2, y1] = [x1, x, y1, y]
      longer[i] = y
    }
    longer.reverse()
  }
  return longer.slice(beyond, beyond + values.length)
}
