import type { Plan } from '../../core/plan/schema.ts'
import { type LedgerSureness, ledgerSureness } from '../../core/tolerance/ledger-sureness.ts'
import type { RankedMeasurement } from '../../core/tolerance/ranking.ts'
import { type AxleSureness, planUnusedTolerances, setupSureness } from '../../core/tolerance/steps.ts'
import { budgetJson } from './budget-json.ts'
import { tellTrials } from './sure-progress.ts'

const rankedJson = ({ measured, share, width, narrowed }: RankedMeasurement) => ({
  path: measured.path,
  tolerance: measured.halfWidth,
  source: measured.source,
  share,
  width,
  narrowed,
})

/** Bands of what each load takes, of what the chosen ones take together and leave, m; chances that they reach the stop and full bump, and of what is found of them. */
const ledgerJson = ({ trials, bands, reachStop, reachBump, findings, ranking }: LedgerSureness) => ({
  trials,
  reachStop,
  reachBump,
  figures: Object.fromEntries(bands.map(({ id, value, low, high, present }) => [id, { value, low, high, present }])),
  findings,
  ranking: ranking.map(rankedJson),
})

const sureJson = ({ trials, seed, figures, findings, regimes, rankings }: AxleSureness, ledger: LedgerSureness) => ({
  trials,
  seed,
  figures: Object.fromEntries(
    figures.map(({ id, value, low, high, present, firstOrder, why }) => [
      id,
      { value, low, high, present, firstOrder, why },
    ]),
  ),
  findings,
  regimes: Object.fromEntries(
    regimes.map(({ id, chances }) => [id, Object.fromEntries(chances.map(({ name, chance }) => [name, chance]))]),
  ),
  rankings: Object.fromEntries(rankings.map(({ figure, ranking }) => [figure, ranking.map(rankedJson)])),
  ledger: ledgerJson(ledger),
})

/**
 * The budget of a plan for programs, each axle with how sure it is: bands from 5 to 95 of 100 trials, chances from 0 to 1. SI units;
 * figures go by their path in the axle, `beforeStop` is engagement less static position. A `high`, `width` or `narrowed` of null has no end:
 * gas runs out in those trials.
 * @param tell hears how far it has come
 */
export function sureBudgetJson(plan: Plan, tell: (line: string) => void) {
  const { setups } = budgetJson(plan)
  return {
    setups: setups.map(({ id, axles }, i) => {
      const setup = plan.setups[i]!
      const sure = setupSureness(plan, setup, {}, tellTrials(setup, tell))
      const ledgers = ledgerSureness(plan, setup, undefined, {}, tellTrials(setup, tell, 'trial of the loads'))
      return { id, axles: axles.map((axle, j) => ({ ...axle, sure: sureJson(sure.axles[j]!, ledgers[j]!) })) }
    }),
    unusedTolerances: planUnusedTolerances(plan),
  }
}
