import { axleBudget } from '../../core/budget/budget.ts'
import { unsaid } from '../../core/budget/findings/rule.ts'
import type { Axle } from '../../core/plan/schema.ts'
import { BLOCK, runBlock } from '../../core/tolerance/monte-carlo.ts'
import { USUAL_TRIALS } from '../../core/tolerance/steps.ts'
import { trialsOf, tryBlock } from '../../core/tolerance/trials.ts'
import type { Benchmark } from './benchmark.ts'
import { doubtful } from './doubtful-plan.ts'
import { sharedAmong, twoBesideOne, withTwoWorkers } from './in-workers.ts'
import { timed } from './stopwatch.ts'

const axles = doubtful.setups[0]!.axles.map(axle => trialsOf(doubtful, axle))

/** The axles of the first block of trials, drawn beforehand, each a thing of its own. */
const drawn: readonly Axle[] = axles.flatMap(({ trial, seed }) => {
  const list: Axle[] = []
  runBlock(trial.variables, seed, 0, deviations => list.push(structuredClone(trial.put(deviations))))
  return list
})

/** The usual trials in shares of a few blocks. */
const SHARE = 2
const shares = Array.from({ length: USUAL_TRIALS / BLOCK / SHARE }, (_, i) =>
  Array.from({ length: SHARE }, (_, j) => SHARE * i + j),
)
const worker = new URL('../../tests/bench/tolerance-worker.ts', import.meta.url)

const usual = `${USUAL_TRIALS.toLocaleString('en-US')} trials of a two-axle plan`

/** How sure a plan is, against what it is worked out from. */
export const tolerance: readonly Benchmark[] = [
  {
    name: 'trials of a two-axle plan',
    reference: 'a bare loop of plain budgets, no sentences, over the same axles drawn beforehand',
    budget: 1.2,
    measure: () =>
      timed(
        () => axles.map(trials => tryBlock(trials, 0)),
        () => {
          for (const axle of drawn) axleBudget(axle, doubtful, undefined, unsaid)
        },
      ),
  },
  {
    name: `${usual} on two cores`,
    reference: 'one second',
    budget: 1,
    measure: () =>
      withTwoWorkers(worker, shares.slice(0, 2), async workers => ({
        unit: 'ns',
        value: await sharedAmong(workers, shares),
        reference: 1e9,
      })),
  },
  {
    name: `${usual}, two workers beside one`,
    reference: 'the time one worker takes; 1.8 times as fast is asked',
    budget: 1 / 1.8,
    measure: () => twoBesideOne(worker, shares.slice(0, 2), shares),
  },
]
