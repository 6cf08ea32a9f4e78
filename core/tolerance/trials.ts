import { axleBudget } from '../budget/budget.ts'
import { unsaid } from '../budget/findings/rule.ts'
import type { Severity } from '../budget/results.ts'
import type { Axle, Plan } from '../plan/schema.ts'
import { FIGURES, readFigures } from './figures.ts'
import { type Measured, measuredOf } from './measured.ts'
import { BLOCK, runBlock } from './monte-carlo.ts'
import { ON_GAS, REGIMES } from './regimes.ts'
import { asGoodAsSolid } from './solid.ts'
import { type TrialAxle, trialAxle } from './trial-axle.ts'

/** An axle made ready for trials. */
export interface Trials {
  readonly axle: Axle
  readonly plan: Pick<Plan, 'units' | 'targets'>
  readonly measured: readonly Measured[]
  readonly trial: TrialAxle
  readonly seed: number
}

/** What one block of trials found. Plain data, to be sent from a worker. */
export interface TrialBlock {
  readonly block: number
  /** One list of values for each of FIGURES; NaN where a trial has none, Infinity where it has no end. */
  readonly figures: readonly Float64Array[]
  /** One list for each of REGIMES: the place of its name in `names`. */
  readonly regimes: readonly { readonly names: readonly string[]; readonly of: Uint8Array }[]
  readonly findings: Readonly<Record<string, { readonly severity: Severity; readonly count: number }>>
}

/** What a set of trials starts from when nobody says: any number would do, but the same one gives the same bands. */
export const USUAL_SEED = 1

/** Trials of one axle, each of its measurements off within its tolerance; the same seed gives the same ones. */
export function trialsOf(plan: Plan, axle: Axle, seed = USUAL_SEED): Trials {
  const measured = measuredOf(axle, plan.tolerances)
  return { axle, plan: { units: plan.units, targets: plan.targets }, measured, trial: trialAxle(axle, measured), seed }
}

/** Places of those of FIGURES that rest on the gas at the end of the stroke. */
const onGas = FIGURES.flatMap(({ id }, i) => (ON_GAS.test(id) ? [i] : []))

/** Works through one block of trials: each the whole budget of the axle with every measurement off by chance, within its tolerance. */
export function tryBlock({ plan, trial, seed }: Trials, block: number): TrialBlock {
  // All lists in one piece of memory, one after the other.
  const all = new Float64Array(FIGURES.length * BLOCK)
  const regimes = REGIMES.map(() => ({ names: [] as string[], of: new Uint8Array(BLOCK) }))
  const findings: Record<string, { severity: Severity; count: number }> = {}
  runBlock(trial.variables, seed, block, (deviations, number) => {
    const axle = trial.put(deviations)
    const budget = axleBudget(axle, plan, undefined, unsaid)
    const solid = asGoodAsSolid(budget, axle.corner, trial.gasLasts)
    readFigures(budget, all, number, BLOCK)
    if (solid) for (const i of onGas) all[i * BLOCK + number] = Infinity
    for (let i = 0; i < REGIMES.length; i += 1) {
      const regime = regimes[i]!
      const name = REGIMES[i]!.of(budget, solid)
      const known = regime.names.indexOf(name)
      regime.of[number] = known < 0 ? regime.names.push(name) - 1 : known
    }
    for (const { id, severity } of budget.findings) {
      const found = findings[id]
      if (found === undefined) findings[id] = { severity, count: 1 }
      else found.count += 1
    }
  })
  const figures = FIGURES.map((_, i) => all.subarray(i * BLOCK, (i + 1) * BLOCK))
  return { block, figures, regimes, findings }
}
