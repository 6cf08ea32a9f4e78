/** Share of trials between the two ends of a band: 5 to 95 of 100. */
export const BAND = [0.05, 0.95] as const

/** Standard deviations from the middle to either end of the same band of a normal distribution (its 95 % quantile). */
const NORMAL_REACH = 1.644_853_626_951_473

/** A band: SI, low no more than high; Infinity where it has no end. */
export interface Range {
  readonly low: number
  readonly high: number
}

/** The band first-order propagation gives. */
export const firstOrderBand = (value: number, uncertainty: number): Range => ({
  low: value - NORMAL_REACH * uncertainty,
  high: value + NORMAL_REACH * uncertainty,
})

/**
 * How far the ends of the two bands may lie apart, as a share of half the wider one. A single rectangle differs by 0.06 from the normal
 * distribution it is taken for, so more than this is another shape: the comparison of JCGM 101:2008, clause 8, with a band instead of digits.
 */
const MOST_APART = 0.2

/** Bands narrower than this share of the value are rounding. */
const ROUNDING = 1e-9

/** Whether trials and first order give the same band of a value, all SI; a band without an end agrees with none. */
export function agree(trials: Range, firstOrder: Range, value: number): boolean {
  if (!Number.isFinite(trials.high)) return false
  const apart = Math.max(Math.abs(trials.low - firstOrder.low), Math.abs(trials.high - firstOrder.high))
  const half = Math.max(trials.high - trials.low, firstOrder.high - firstOrder.low) / 2
  return apart <= Math.max(MOST_APART * half, ROUNDING * Math.abs(value))
}
