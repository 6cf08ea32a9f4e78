import type { AxleId, Plan, Setup } from '../plan/schema.ts'
import { carMeasuredOf } from './car-measured.ts'
import { HEADLINES } from './figures.ts'
import { unusedTolerances } from './measured.ts'
import { BLOCK } from './monte-carlo.ts'
import { type RankedMeasurement, rankingOf } from './ranking.ts'
import { type Sureness, surenessOf } from './sureness.ts'
import { type TrialBlock, trialsOf, tryBlock, USUAL_SEED } from './trials.ts'

/** Trials that are enough for a 5 to 95 band to about one in a hundred of its width: JCGM 101:2008 7.2 asks for 10⁴ or more. */
export const USUAL_TRIALS = 10_000

/** How far it has come. */
export interface TrialProgress {
  readonly done: number
  readonly of: number
}

export interface AxleSureness extends Sureness {
  /** For each of HEADLINES: which measurement to repeat first. */
  readonly rankings: readonly { readonly figure: string; readonly ranking: readonly RankedMeasurement[] }[]
}

export interface SetupSureness {
  readonly id: string
  readonly axles: readonly AxleSureness[]
}

export interface TrialOptions {
  /** Rounded up to whole blocks. */
  readonly trials?: number
  readonly seed?: number
  /** One axle alone; all of them when not given. */
  readonly axle?: AxleId
}

/** How sure the budget of one setup is, a block of trials at a step: stop asking, and nothing more is done. */
export function* setupSurenessSteps(
  plan: Plan,
  setup: Setup,
  { trials: count = USUAL_TRIALS, seed = USUAL_SEED, axle: only }: TrialOptions = {},
): Generator<TrialProgress, SetupSureness> {
  const blocks = Math.max(1, Math.ceil(count / BLOCK))
  const axles = setup.axles.filter(({ id }) => only === undefined || id === only)
  const found: AxleSureness[] = []
  for (const [i, axle] of axles.entries()) {
    const trials = trialsOf(plan, axle, seed)
    const done: TrialBlock[] = []
    for (let block = 0; block < blocks; block += 1) {
      done.push(tryBlock(trials, block))
      yield { done: (i * blocks + block + 1) * BLOCK, of: axles.length * blocks * BLOCK }
    }
    found.push({
      ...surenessOf(trials, done),
      rankings: HEADLINES.map(figure => ({ figure, ranking: rankingOf(trials, done, figure) })),
    })
  }
  return { id: setup.id, axles: found }
}

/**
 * All steps at once.
 * @param tell hears how far it has come after each
 */
export function setupSureness(
  plan: Plan,
  setup: Setup,
  options?: TrialOptions,
  tell?: (progress: TrialProgress) => void,
): SetupSureness {
  const steps = setupSurenessSteps(plan, setup, options)
  for (;;) {
    const { done, value } = steps.next()
    if (done) return value
    tell?.(value)
  }
}

/** Paths the plan gives a tolerance for that no setup has a measurement at. */
export const planUnusedTolerances = (plan: Plan): string[] =>
  unusedTolerances(
    plan.setups.flatMap(({ axles }) => axles),
    plan.tolerances,
    plan.setups.flatMap(setup => carMeasuredOf(plan, setup).map(({ path }) => path)),
  )
