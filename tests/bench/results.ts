import { planBudget } from '../../core/budget/budget.ts'
import { formatPlan } from '../../core/plan/file-text.ts'
import { otherAxle, startingPlan } from '../../core/plan/starting.ts'
import { INCH } from '../../core/units/constants.ts'
import type { Benchmark } from './benchmark.ts'
import { timed } from './stopwatch.ts'

/** A trailing-arm car, measured in a hurry: two springs, a hydraulic stop, both axles. */
const plan = startingPlan({
  title: 'Measured in a hurry',
  units: 'inch',
  axle: 'front',
  suspension: 'independent',
  cornerMass: 460,
  shockStroke: 12 * INCH,
  shaftShowing: 6.5 * INCH,
  ratio: { shock: 0.6, stop: 0.55 },
  springRates: [35_000, 52_000],
  stop: { stroke: 2.5 * INCH, gap: 2 * INCH },
})
const bothAxles = {
  ...plan,
  setups: plan.setups.map(setup => ({ ...setup, axles: [...setup.axles, ...setup.axles.map(otherAxle)] })),
}
const text = formatPlan(bothAxles)

/** What the window waits for after each key typed. */
export const results: readonly Benchmark[] = [
  {
    name: 'travel budget of a whole plan',
    reference: 'JSON.parse of its text',
    budget: 40,
    measure: () =>
      timed(
        () => planBudget(bothAxles),
        () => JSON.parse(text),
      ),
  },
]
