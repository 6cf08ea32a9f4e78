import { axleBudget } from '../budget/budget.ts'
import type { AxleBudget, Severity } from '../budget/results.ts'
import type { AxleId } from '../plan/schema.ts'
import type { Quantity } from '../units/quantity.ts'
import { agree, BAND, firstOrderBand, type Range } from './agreement.ts'
import { standardUncertainty } from './distribution.ts'
import { FIGURES, figuresOf } from './figures.ts'
import { combined, type Slopes, slopesOf } from './first-order.ts'
import { kinksOf } from './kinks.ts'
import { BLOCK } from './monte-carlo.ts'
import { REGIMES } from './regimes.ts'
import { quantile, sorted } from './statistics.ts'
import type { TrialBlock, Trials } from './trials.ts'

/** How sure one figure is. SI. */
export interface FigureBand extends Range {
  /** Of FIGURES. */
  readonly id: string
  readonly name: string
  readonly quantity: Quantity
  /** From the plan's values as they stand. */
  readonly value: number
  /** Share of the trials that have such a figure at all, 0 to 1. */
  readonly present: number
  /** The same band by first-order propagation; null where a measurement has no slope. */
  readonly firstOrder: Range | null
  /** Why the two differ; null where they agree. */
  readonly why: string | null
}

export interface FindingChance {
  readonly id: string
  readonly severity: Severity
  /** Share of the trials that have it, 0 to 1. */
  readonly chance: number
}

/** How sure the budget of one axle is. */
export interface Sureness {
  readonly axle: AxleId
  readonly trials: number
  readonly seed: number
  /** Those the axle has; the rest are left out. */
  readonly figures: readonly FigureBand[]
  readonly findings: readonly FindingChance[]
  /** What ends the travel, how it rests and where crossover falls, with the chance of each, the likeliest first. */
  readonly regimes: readonly {
    readonly id: string
    readonly chances: readonly { readonly name: string; readonly chance: number }[]
  }[]
}

/** Steps for slopes, as a share of the tolerance: far above rounding, far below any curve. */
const STEP = 1e-3

/** Slopes of every figure over every variable. */
function slopes({ trial, plan }: Trials): Slopes {
  const figures = (deviations: readonly number[]): number[] => [...figuresOf(axleBudget(trial.put(deviations), plan))]
  return slopesOf(
    figures,
    trial.variables.map(({ halfWidth }) => STEP * halfWidth),
  )
}

/** All blocks' values of one figure, in one list. */
function gathered(lists: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(lists.length * BLOCK)
  for (const [i, list] of lists.entries()) all.set(list, i * BLOCK)
  return all
}

/** The blocks in their own order, whatever order they were finished in: the same trials give the same bands. */
const inOrder = (blocks: readonly TrialBlock[]): TrialBlock[] => blocks.toSorted((a, b) => a.block - b.block)

/**
 * What trials say of an axle's budget: a band for each figure, beside the one by slopes, and a chance for each finding.
 * @param blocks at least one, each of the same trials, none twice
 * @param nominal the budget of the axle as it stands, if already at hand
 */
export function surenessOf(
  trials: Trials,
  blocks: readonly TrialBlock[],
  nominal: AxleBudget = axleBudget(trials.axle, trials.plan),
): Sureness {
  const ordered = inOrder(blocks)
  const count = ordered.length * BLOCK
  const regimes = REGIMES.map(({ id }, i) => ({ id, chances: regimeChances(ordered, i) }))
  const uncertainties = combined(
    slopes(trials),
    trials.trial.variables.map(({ distribution }) => standardUncertainty(distribution)),
  )
  let kinks: ReturnType<typeof kinksOf> | null = null
  const whyNot = (figure: number): string => {
    kinks ??= kinksOf(trials, ordered)
    return kinks(figure)
  }
  const nominals = figuresOf(nominal)
  const figures = FIGURES.flatMap(({ id, name, quantity }, i): FigureBand[] => {
    const value = nominals[i]!
    const values = gathered(ordered.map(({ figures }) => figures[i]!))
    const present = sorted(values)
    if (Number.isNaN(value) || present.length === 0) return []
    const band = { low: quantile(present, BAND[0]), high: quantile(present, BAND[1]) }
    const uncertainty = uncertainties[i]!
    const firstOrder = Number.isNaN(uncertainty) ? null : firstOrderBand(value, uncertainty)
    const agrees = firstOrder !== null && agree(band, firstOrder, value)
    return [
      {
        id,
        name,
        quantity,
        value,
        ...band,
        present: present.length / count,
        firstOrder,
        why: agrees ? null : whyNot(i),
      },
    ]
  })
  return {
    axle: trials.axle.id,
    trials: count,
    seed: trials.seed,
    figures,
    findings: chances(ordered, count),
    regimes,
  }
}

function chances(blocks: readonly TrialBlock[], count: number): FindingChance[] {
  const found = new Map<string, { severity: Severity; count: number }>()
  for (const { findings } of blocks)
    for (const [id, each] of Object.entries(findings)) {
      const known = found.get(id)
      found.set(id, { severity: each.severity, count: (known?.count ?? 0) + each.count })
    }
  return likeliest(found, count)
}

/** Chances from counts among so many trials, the likeliest first. */
export const likeliest = (
  found: ReadonlyMap<string, { readonly severity: Severity; readonly count: number }>,
  count: number,
): FindingChance[] =>
  [...found]
    .map(([id, each]) => ({ id, severity: each.severity, chance: each.count / count }))
    .sort((a, b) => b.chance - a.chance || (a.id < b.id ? -1 : 1))

/** The kinds of trials of one regime, the likeliest first. */
function regimeChances(blocks: readonly TrialBlock[], regime: number): { name: string; chance: number }[] {
  const counts = new Map<string, number>()
  for (const { regimes } of blocks) {
    const { names, of } = regimes[regime]!
    for (const kind of of) counts.set(names[kind]!, (counts.get(names[kind]!) ?? 0) + 1)
  }
  return [...counts]
    .map(([name, count]) => ({ name, chance: count / (blocks.length * BLOCK) }))
    .sort((a, b) => b.chance - a.chance || (a.name < b.name ? -1 : 1))
}
