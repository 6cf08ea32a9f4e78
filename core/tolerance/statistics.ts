/** A value sorted from small to large; NaN marks a trial without one and is left out. */
export const sorted = (values: Float64Array): Float64Array => values.filter(value => !Number.isNaN(value)).sort()

/**
 * The value below which a share of sorted values lies, between neighbours in proportion (R. J. Hyndman and Y. Fan, The American Statistician
 * 50 (1996) 361, definition 7).
 * @param values sorted, at least one
 * @param share 0 to 1
 */
export function quantile(values: Float64Array, share: number): number {
  const place = share * (values.length - 1)
  const low = Math.floor(place)
  const [below, above] = [values[low]!, values[Math.min(values.length - 1, low + 1)]!]
  return below === above || place === low ? below : below + (above - below) * (place - low)
}

/** The arithmetic mean of values, one or more, in their own unit. */
export function mean(values: Float64Array): number {
  let sum = 0
  for (const value of values) sum += value
  return sum / values.length
}

/** Standard deviation of trials, JCGM 101:2008 7.6. */
export function deviation(values: Float64Array): number {
  const middle = mean(values)
  let sum = 0
  for (const value of values) sum += (value - middle) ** 2
  return Math.sqrt(sum / (values.length - 1))
}
