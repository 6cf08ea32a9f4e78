import { squaresLeft } from '../numerics/least-squares.ts'
import { BLOCK, deviationsOf } from './monte-carlo.ts'
import { OUT_OF_GAS, REGIMES } from './regimes.ts'
import type { TrialBlock, Trials } from './trials.ts'

/** A kind met in fewer trials than this bends nothing, as a share. */
const SELDOM = 0.02

/** Lines of their own must take this much of what one line for all trials leaves before the kinds are called the reason. */
const EXPLAINS = 0.5

/** So many trials for each variable are enough to lay a line through. */
const ENOUGH = 3

/** Trials of each kind of one regime, by number. */
function kindsOf(blocks: readonly TrialBlock[], regime: number, having: readonly number[]): number[][] {
  const kinds = new Map<string, number[]>()
  for (const trial of having) {
    const { names, of } = blocks[Math.floor(trial / BLOCK)]!.regimes[regime]!
    const name = names[of[trial % BLOCK]!]!
    const known = kinds.get(name)
    if (known === undefined) kinds.set(name, [trial])
    else known.push(trial)
  }
  return [...kinds.values()]
}

/** Why some trials have no such figure, or one without an end: for want of gas, or because there is none to have. */
function missing(blocks: readonly TrialBlock[], values: Float64Array): string {
  const gas = REGIMES.findIndex(({ id }) => id === 'gas')
  const without = [...values.keys()].filter(trial => !Number.isFinite(values[trial]!))
  const [largest] = kindsOf(blocks, gas, without).sort((a, b) => b.length - a.length)
  const { names, of } = blocks[Math.floor(largest![0]! / BLOCK)]!.regimes[gas]!
  return names[of[largest![0]! % BLOCK]!] === OUT_OF_GAS ? REGIMES[gas]!.why : 'some trials have none'
}

/**
 * Why figures do not follow their slopes, worked out from the trials themselves: the regime whose kinds each have a line of their own where
 * all trials together have none, so that the figure has a kink between them; or that trials have no such figure; or else that it bends.
 * @param blocks in their own order
 * @returns asks for one of FIGURES by its place
 */
export function kinksOf({ trial, seed }: Trials, blocks: readonly TrialBlock[]): (figure: number) => string {
  const columns = trial.variables.length
  const x = new Float64Array(blocks.length * BLOCK * columns)
  for (const [j, variable] of trial.variables.entries())
    for (const [i, { block }] of blocks.entries()) {
      const deviations = deviationsOf(variable, seed, block)
      for (let number = 0; number < BLOCK; number += 1)
        x[(i * BLOCK + number) * columns + j] = deviations[number]! / variable.halfWidth
    }
  return figure => {
    const y = new Float64Array(blocks.length * BLOCK)
    for (const [i, { figures }] of blocks.entries()) y.set(figures[figure]!, i * BLOCK)
    const having: number[] = []
    for (let i = 0; i < y.length; i += 1) if (Number.isFinite(y[i]!)) having.push(i)
    if (having.length < (1 - SELDOM) * y.length) return missing(blocks, y)
    const left = REGIMES.map(({ id }, regime) => {
      // Without gas there is no end, and of that there is nothing to lay a line through.
      if (id === 'gas') return 1
      const kinds = kindsOf(blocks, regime, having)
      const large = kinds.filter(kind => kind.length > Math.max(SELDOM * having.length, ENOUGH * columns))
      if (large.length < 2) return 1
      const apart = large.reduce((sum, kind) => sum + squaresLeft(kind, x, columns, y), 0)
      const together = squaresLeft(large.flat(), x, columns, y)
      return together === 0 ? 1 : apart / together
    })
    const least = Math.min(...left)
    return least <= 1 - EXPLAINS ? REGIMES[left.indexOf(least)]!.why : 'it bends within the tolerances'
  }
}
