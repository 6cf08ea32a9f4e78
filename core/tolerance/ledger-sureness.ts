import type { Severity } from '../budget/results.ts'
import { type AxleLedger, setupLoads } from '../loads/ledger.ts'
import type { AxleId, Plan, Setup } from '../plan/schema.ts'
import { BAND, type Range } from './agreement.ts'
import { trialCar } from './car-measured.ts'
import { type CarTrials, drawnOf, trialLedgers } from './ledger-trials.ts'
import { BLOCK } from './monte-carlo.ts'
import { type RankedMeasurement, ranked } from './ranking.ts'
import { quantile, sorted } from './statistics.ts'
import type { TrialOptions, TrialProgress } from './steps.ts'
import { type FindingChance, likeliest } from './sureness.ts'
import { trialsOf, USUAL_SEED } from './trials.ts'

/** How sure one number of the ledger is, m of wheel travel. */
export interface LedgerBand extends Range {
  /** `rows.<load>`, `together`, `place`, `beforeStop` or `beforeBump`. */
  readonly id: string
  readonly name: string
  readonly value: number
  /** Share of the trials that have it at all, 0 to 1. */
  readonly present: number
}

/** How sure the ledger of one axle is, every value of the car and of what its loads ask for off by chance. */
export interface LedgerSureness {
  readonly axle: AxleId
  readonly trials: number
  readonly bands: readonly LedgerBand[]
  /** Chance that the chosen loads together reach the stop, and full bump, 0 to 1; among the trials that find a place for the wheels. */
  readonly reachStop: number | null
  readonly reachBump: number | null
  /** What loads are found to do to this axle, or to the car as a whole, each with its chance among all trials, the likeliest first. */
  readonly findings: readonly FindingChance[]
  /** Which measurement to repeat first for what the loads leave before the stop, or before full bump without one; paths as in the plan. */
  readonly ranking: readonly RankedMeasurement[]
}

/** Each trial of the ledger solves every load on the whole car: a tenth of the usual trials finds the ends of a band to one in thirty of its width. */
const LEDGER_TRIALS = 1000

interface LedgerFigure {
  readonly id: string
  readonly name: string
  readonly of: (ledger: AxleLedger) => number | null
}

const figuresOf = ({ rows }: AxleLedger): LedgerFigure[] => [
  ...rows.map(
    (row, i): LedgerFigure => ({
      id: `rows.${row.id}`,
      name: `“${row.label}” takes`,
      of: ledger => ledger.rows[i]!.takes,
    }),
  ),
  { id: 'together', name: 'taken together', of: ({ together }) => together.takes },
  { id: 'place', name: 'where that puts it', of: ({ together }) => together.to },
  { id: 'beforeStop', name: 'left before the stop', of: ({ balance }) => balance.beforeStop },
  { id: 'beforeBump', name: 'left before full bump', of: ({ balance }) => balance.beforeBump },
]

/** Trials of a step: each takes about a millisecond, and whoever types waits for none of them. */
const SHARE = 25

function chanceOf(values: Float64Array): number | null {
  const present = sorted(values)
  return present.length === 0 ? null : present.filter(value => value <= 0).length / present.length
}

/**
 * How sure the ledger of one setup is, some trials at a step; the answer has an entry for each axle, empty bands without loads.
 * @param chosen ids of the loads taken together; all when not given
 */
export function* ledgerSurenessSteps(
  plan: Plan,
  setup: Setup,
  chosen?: readonly string[],
  { trials = LEDGER_TRIALS, seed = USUAL_SEED, axle: only }: TrialOptions = {},
): Generator<TrialProgress, LedgerSureness[]> {
  const nominal = setupLoads(plan, setup, chosen).ledger
  const blocks = plan.loads.length === 0 ? 0 : Math.max(1, Math.ceil(trials / BLOCK))
  const figures = nominal.map(figuresOf)
  const values = figures.map(list => list.map(() => new Float64Array(blocks * BLOCK)))
  const all: CarTrials = {
    trials: setup.axles.map(axle => trialsOf(plan, axle, seed)),
    car: trialCar(plan, setup),
    seed,
  }
  const found = figures.map(() => new Map<string, { severity: Severity; count: number }>())
  let number = 0
  for (const { ledger: ledgers, findings } of trialLedgers(setup, chosen, all, blocks)) {
    for (const [i, { id: axle }] of ledgers.entries())
      for (const { id, severity, axle: whose } of findings)
        if (whose === null || whose === axle)
          found[i]!.set(id, { severity, count: (found[i]!.get(id)?.count ?? 0) + 1 })
    for (const [i, ledger] of ledgers.entries())
      for (const [j, { of }] of figures[i]!.entries()) values[i]![j]![number] = of(ledger) ?? Number.NaN
    number += 1
    if (number % SHARE === 0) yield { done: number, of: blocks * BLOCK }
  }
  const drawn = drawnOf(plan, setup, all, blocks)
  return nominal.flatMap((ledger, i): LedgerSureness[] => {
    if (only !== undefined && ledger.id !== only) return []
    const list = figures[i]!
    const listed = (id: string): Float64Array => values[i]![list.findIndex(figure => figure.id === id)]!
    return [
      {
        axle: ledger.id,
        trials: number,
        bands: list.flatMap((figure, j) => band(figure, ledger, values[i]![j]!)),
        reachStop: chanceOf(listed('beforeStop')),
        reachBump: chanceOf(listed('beforeBump')),
        findings: likeliest(found[i]!, number),
        ranking: ranked(drawn, listed(ledger.engagement === null ? 'beforeBump' : 'beforeStop')),
      },
    ]
  })
}

/** None where the ledger has no such number, or no trial has. */
function band({ id, name, of }: LedgerFigure, ledger: AxleLedger, values: Float64Array): LedgerBand[] {
  const value = of(ledger)
  const present = sorted(values)
  if (value === null || present.length === 0) return []
  const [low, high] = [quantile(present, BAND[0]), quantile(present, BAND[1])]
  return [{ id, name, value, low, high, present: present.length / values.length }]
}

/**
 * All steps at once.
 * @param tell hears how far it has come after each
 */
export function ledgerSureness(
  plan: Plan,
  setup: Setup,
  chosen?: readonly string[],
  options?: TrialOptions,
  tell?: (progress: TrialProgress) => void,
): LedgerSureness[] {
  const steps = ledgerSurenessSteps(plan, setup, chosen, options)
  for (;;) {
    const { done, value } = steps.next()
    if (done) return value
    tell?.(value)
  }
}
