/** Values at even times, between two gaps. */
export interface Stretch {
  /** Time of the first, s. */
  readonly start: number
  readonly values: Float64Array
}

export interface EvenRun {
  /** Between values, s. */
  readonly step: number
  readonly stretches: readonly Stretch[]
  readonly gaps: number
  /** Time in the gaps, s. */
  readonly lost: number
}

/** A pause of more steps than this is a gap, where nobody says how long one is: nothing is told of what happened in it. */
const GAP_STEPS = 5
/** However long a pause may be that is no gap, it is one when it is longer than so many steps: a straight line over it tells nothing. */
const MOST_STEPS = 1000
/** Steps the usual one is taken from, evenly spread over the run. */
const LOOKED_AT = 20_001

/** The usual time between rows: the median, s; null with fewer than two rows. */
function usualStep(time: Float64Array): number | null {
  if (time.length < 2) return null
  const every = Math.max(1, Math.floor((time.length - 1) / LOOKED_AT))
  const steps: number[] = []
  for (let i = 1; i < time.length; i += every) steps.push(time[i]! - time[i - 1]!)
  steps.sort((a, b) => a - b)
  return steps[Math.floor(steps.length / 2)]!
}

/**
 * A recorded channel at even times, straight between its rows and never across a gap.
 * @param time strictly rising, s; @param values NaN where missing; @param longestPause that is no gap, s; null: five of the usual steps
 * @returns null when no two rows follow each other
 */
export function evenly(time: Float64Array, values: Float64Array, longestPause: number | null): EvenRun | null {
  const step = usualStep(time)
  if (step === null) return null
  const pause = Math.min(longestPause ?? GAP_STEPS * step, MOST_STEPS * step)
  const stretches: Stretch[] = []
  let [gaps, lost] = [0, 0]
  const kept = Int32Array.from(values, (_, i) => i).filter(i => !Number.isNaN(values[i]!))
  for (let from = 0; from < kept.length; ) {
    let to = from
    while (to + 1 < kept.length && time[kept[to + 1]!]! - time[kept[to]!]! <= pause) to += 1
    // Two rows nearer than a step have nothing even between them.
    const stretch = to > from ? between(time, values, kept.subarray(from, to + 1), step) : null
    if (stretch !== null && stretch.values.length > 1) stretches.push(stretch)
    if (to + 1 < kept.length) {
      gaps += 1
      lost += time[kept[to + 1]!]! - time[kept[to]!]!
    }
    from = to + 1
  }
  return stretches.length === 0 ? null : { step, stretches, gaps, lost }
}

/** Share of a step that rounding of times may take away. */
const ROUNDING = 1e-6

function between(time: Float64Array, values: Float64Array, rows: Int32Array, step: number): Stretch {
  const start = time[rows[0]!]!
  const count = Math.floor((time[rows.at(-1)!]! - start) / step + ROUNDING) + 1
  const even = new Float64Array(count)
  let row = 0
  for (let i = 0; i < count; i += 1) {
    const at = start + i * step
    while (row < rows.length - 2 && time[rows[row + 1]!]! < at) row += 1
    const [a, b] = [rows[row]!, rows[row + 1]!]
    const share = Math.min(1, (at - time[a]!) / (time[b]! - time[a]!))
    even[i] = values[a]! + (values[b]! - values[a]!) * share
  }
  return { start, values: even }
}
