import { BAND } from './agreement.ts'
import { FIGURES } from './figures.ts'
import type { Measured } from './measured.ts'
import { BLOCK, deviationsOf } from './monte-carlo.ts'
import { mean, quantile, sorted } from './statistics.ts'
import type { Variable } from './trial-axle.ts'
import type { TrialBlock, Trials } from './trials.ts'

/** What one measurement does to how sure a figure is. */
export interface RankedMeasurement {
  readonly measured: Measured
  /** Of the figure's variance, 0 to 1; where a few trials lie far out, of the variance of its order. */
  readonly share: number
  /** Width of the figure's band now, and once this measurement is repeated with care (or taken for the first time); Infinity where it has no end. */
  readonly width: number
  readonly narrowed: number
}

/** Less of the variance than this is not worth a word; with 10 000 trials chance alone gives 0.0001. */
const LEAST_SHARE = 0.01

/**
 * The values' places in order of size: a figure with a long tail, such as a force where the gas runs short, follows what it hangs on in
 * order, not in size (C. Spearman, American Journal of Psychology 15 (1904) 72).
 */
function ranks(values: Float64Array): Float64Array {
  const order = [...values.keys()].filter(i => !Number.isNaN(values[i]!)).sort((a, b) => values[a]! - values[b]!)
  const found = new Float64Array(values.length).fill(Number.NaN)
  for (let from = 0; from < order.length; ) {
    let to = from + 1
    while (to < order.length && values[order[to]!] === values[order[from]!]) to += 1
    for (let i = from; i < to; i += 1) found[order[i]!] = (from + to - 1) / 2
    from = to
  }
  return found
}

/** Of 10 000 trials of a normal distribution the farthest two lie 2.3 of its bands apart; further than this is a tail. */
const LONG_TAIL = 4

/** Part of a figure's variance that follows one variable: the square of their correlation, the inputs being independent of each other. */
function correlated(values: Float64Array, column: Float64Array): number {
  let [count, sumX, sumY, sumXX, sumYY, sumXY] = [0, 0, 0, 0, 0, 0]
  const middle = mean(values.filter(value => !Number.isNaN(value)))
  for (let i = 0; i < values.length; i += 1) {
    const y = values[i]! - middle
    if (Number.isNaN(y)) continue
    const x = column[i]!
    count += 1
    sumX += x
    sumY += y
    sumXX += x * x
    sumYY += y * y
    sumXY += x * y
  }
  const [xx, yy, xy] = [sumXX - sumX ** 2 / count, sumYY - sumY ** 2 / count, sumXY - (sumX * sumY) / count]
  return xx <= 0 || yy <= 0 ? 0 : xy ** 2 / (xx * yy)
}

/** Fewer trials than this make no band. */
const ENOUGH = 500

const widthOf = (present: Float64Array): number => {
  const [low, high] = [quantile(present, BAND[0]), quantile(present, BAND[1])]
  return low === high ? 0 : high - low
}

/**
 * Width of the band of those trials in which a measurement is off by no more than it would be once repeated: what a tail leaves is read off
 * the trials themselves, its variance says nothing of it. Null where they are too few.
 */
function among(values: Float64Array, { measured: { path, halfWidth, repeated }, variables, seed, blocks }: Repeated) {
  const left = Float64Array.from(values)
  for (const variable of variables.filter(each => each.path === path))
    for (const [i, block] of blocks.entries())
      for (const [number, deviation] of deviationsOf(variable, seed, block).entries())
        if (Math.abs(deviation) > variable.halfWidth * (repeated / halfWidth)) left[i * BLOCK + number] = Number.NaN
  const present = sorted(left)
  return present.length < ENOUGH ? null : widthOf(present)
}

/**
 * Which measurement to repeat first for one figure, and what that would buy: the largest part of its variance first.
 * @param figure id of FIGURES
 * @param blocks of these trials
 */
export function rankingOf(
  { trial, measured, seed }: Trials,
  blocks: readonly TrialBlock[],
  figure: string,
): RankedMeasurement[] {
  const place = FIGURES.findIndex(({ id }) => id === figure)
  if (place < 0) throw new RangeError(`no figure ${figure}`)
  const values = new Float64Array(blocks.length * BLOCK)
  for (const [i, { figures }] of blocks.entries()) values.set(figures[place]!, i * BLOCK)
  const numbers = blocks.map(({ block }) => block)
  return ranked({ variables: trial.variables, measured, seed, blocks: numbers }, values)
}

/** What was drawn in trials: the variables, whose paths are those of the measurements, and the numbers of the blocks in their order. */
interface Drawn {
  readonly variables: readonly Variable[]
  readonly measured: readonly Measured[]
  readonly seed: number
  readonly blocks: readonly number[]
}

interface Repeated extends Omit<Drawn, 'measured'> {
  readonly measured: Measured
}

/**
 * The same for any list of values that trials gave.
 * @param values one for each trial, NaN where it has none
 */
export function ranked({ variables, measured, seed, blocks }: Drawn, values: Float64Array): RankedMeasurement[] {
  const present = sorted(values)
  if (present.length === 0 || present[0] === present.at(-1)) return []
  const width = widthOf(present)
  const column = new Float64Array(values.length)
  const longTail = present.at(-1) === Infinity || present.at(-1)! - present[0]! > LONG_TAIL * width
  const followed = longTail ? ranks(values) : values
  const shares = new Map<string, number>()
  for (const variable of variables) {
    for (const [i, block] of blocks.entries()) column.set(deviationsOf(variable, seed, block), i * BLOCK)
    shares.set(variable.path, (shares.get(variable.path) ?? 0) + correlated(followed, column))
  }
  // Chance can take the parts together a little past the whole.
  const whole = Math.max(
    1,
    [...shares.values()].reduce((sum, share) => sum + share, 0),
  )
  return measured
    .flatMap((each): RankedMeasurement[] => {
      const share = (shares.get(each.path) ?? 0) / whole
      if (share < LEAST_SHARE) return []
      const left = 1 - share * (1 - (each.repeated / each.halfWidth) ** 2)
      const seen = longTail ? among(values, { measured: each, variables, seed, blocks }) : null
      return [{ measured: each, share, width, narrowed: seen ?? width * Math.sqrt(left) }]
    })
    .sort((a, b) => b.share - a.share)
}
