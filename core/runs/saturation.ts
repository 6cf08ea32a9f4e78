/** A reading that stays at the highest or lowest of the run for so many rows on end is the sensor's own end, not the car's. */
const STUCK_ROWS = 5

/** Share of the rows that stand at the end of what the sensor can tell. @param values as recorded, NaN where missing */
export function saturatedShare(values: Float64Array): { readonly low: number; readonly high: number } {
  let [least, most] = [Infinity, -Infinity]
  for (const value of values) {
    if (value < least) least = value
    if (value > most) most = value
  }
  if (least === most) return { low: 0, high: 0 }
  const stuck = (end: number): number => {
    let [all, run] = [0, 0]
    for (let i = 0; i <= values.length; i += 1) {
      if (i < values.length && values[i] === end) run += 1
      else {
        if (run >= STUCK_ROWS) all += run
        run = 0
      }
    }
    return all / values.length
  }
  return { low: stuck(least), high: stuck(most) }
}
