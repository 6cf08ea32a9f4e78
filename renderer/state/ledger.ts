import type { Finding, Severity } from '../../core/budget/results.ts'
import { type LoadFinding, loadFindings } from '../../core/loads/findings.ts'
import { type SetupLoads, setupLoads } from '../../core/loads/ledger.ts'
import type { Plan, Setup } from '../../core/plan/schema.ts'
import { type DemandsView, demandsView } from '../charts/plate/demands.ts'
import { modelOf } from './results.ts'
import { comparedSetup, resultsShown, shownAxle, shownSetup } from './selectors.ts'
import type { State } from './state.ts'

interface Asked {
  readonly loads: Plan['loads']
  readonly vehicle: Plan['vehicle']
  readonly units: Plan['units']
  readonly off: readonly string[]
}

interface Found {
  readonly asked: Asked
  readonly loads: SetupLoads
  readonly findings: readonly LoadFinding[]
}

const sameAsked = (a: Asked, b: Asked): boolean =>
  a.loads === b.loads && a.vehicle === b.vehicle && a.units === b.units && a.off === b.off

/** Plans are never changed in place: a setup that is the same object, under the same loads, comes to the same. */
const known = new WeakMap<Setup, Found>()

function loadsOf({ plan, view }: State, setup: Setup): Found {
  const asked: Asked = { loads: plan.loads, vehicle: plan.vehicle, units: plan.units, off: view.loadsOff }
  const before = known.get(setup)
  if (before !== undefined && sameAsked(before.asked, asked)) return before
  const counted = { ...plan, loads: plan.loads.filter(({ id }) => !asked.off.includes(id)) }
  const loads = setupLoads(
    counted,
    setup,
    undefined,
    setup.axles.map(({ corner }) => modelOf(corner)),
  )
  const found = { asked, loads, findings: loadFindings(counted, loads) }
  known.set(setup, found)
  return found
}

/** What the counted loads do to the setup shown. */
export const loadsShown = (state: State): SetupLoads => loadsOf(state, shownSetup(state).setup).loads

/** The answer to the question last asked, so that asking again gives the very same object. */
function remembered<A extends readonly unknown[], R>(work: (...asked: A) => R): (...asked: A) => R {
  let last: { asked: A; answer: R } | null = null
  return (...asked) => {
    if (last?.asked.every((each, i) => each === asked[i])) return last.answer
    last = { asked, answer: work(...asked) }
    return last.answer
  }
}

const drawn = remembered((loads: SetupLoads, other: SetupLoads | null, axle: string): DemandsView | null => {
  const of = (from: SetupLoads | null) => from?.ledger.find(({ id }) => id === axle) ?? null
  const ledger = of(loads)
  return ledger === null ? null : demandsView(ledger, of(other))
})

/** What the counted loads take of the axle shown, beside what the compared setup leaves; null when there is nothing to draw. */
export function demandsShown(state: State): DemandsView | null {
  if (state.plan.loads.length === state.view.loadsOff.length) return null
  const compared = comparedSetup(state)
  return drawn(
    loadsOf(state, shownSetup(state).setup).loads,
    compared === null ? null : loadsOf(state, compared.setup).loads,
    shownAxle(state).axle.id,
  )
}

const RANK: Readonly<Record<Severity, number>> = { danger: 0, caution: 1, note: 2 }

const together = remembered(
  (own: readonly Finding[], loads: readonly LoadFinding[], axle: string): readonly Finding[] =>
    [...own, ...loads.filter(finding => finding.axle === null || finding.axle === axle)].sort(
      (a, b) => RANK[a.severity] - RANK[b.severity],
    ),
)

/** What is worth saying of the axle shown, its loads included, the worst first. */
export const findingsShown = (state: State): readonly Finding[] =>
  together(
    resultsShown(state).budget.findings,
    loadsOf(state, shownSetup(state).setup).findings,
    shownAxle(state).axle.id,
  )

/** The finding pointed at. */
export const findingPointedAt = (state: State): Finding | null =>
  state.view.finding === null ? null : (findingsShown(state).find(({ id }) => id === state.view.finding) ?? null)
