import type { Finding } from '../../core/budget/results.ts'
import { worstFirst } from '../../core/budget/severity.ts'
import { type LoadFinding, loadFindings } from '../../core/loads/findings.ts'
import { type SetupLoads, setupLoads } from '../../core/loads/ledger.ts'
import type { AxleId, Plan, Setup } from '../../core/plan/schema.ts'
import { type DemandsView, demandsView } from '../charts/plate/demands.ts'
import { modelOf } from './results.ts'
import { comparedSetup, type Looked, resultsShown, shownAxle, shownSetup } from './selectors.ts'
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

function loadsOf({ plan, view }: Looked, setup: Setup): Found {
  const asked: Asked = { loads: plan.loads, vehicle: plan.vehicle, units: plan.units, off: view.loadsOff }
  const before = known.get(setup)
  if (before !== undefined && sameAsked(before.asked, asked)) return before
  const counted = (id: string): boolean => !asked.off.includes(id)
  const loads = setupLoads(
    plan,
    setup,
    plan.loads.map(({ id }) => id).filter(counted),
    setup.axles.map(({ corner }) => modelOf(corner)),
  )
  const told = { ...loads, loads: loads.loads.filter(({ id }) => counted(id)) }
  const found = { asked, loads, findings: loadFindings(plan, told) }
  known.set(setup, found)
  return found
}

/** What the counted loads do to the setup shown. */
export const loadsShown = (state: Looked): SetupLoads => loadsOf(state, shownSetup(state).setup).loads

/** The answer to the question last asked, so that asking again gives the very same object. */
function remembered<A extends readonly unknown[], R>(work: (...asked: A) => R): (...asked: A) => R {
  let last: { asked: A; answer: R } | null = null
  return (...asked) => {
    if (last?.asked.every((each, i) => each === asked[i])) return last.answer
    last = { asked, answer: work(...asked) }
    return last.answer
  }
}

const drawn = remembered((loads: SetupLoads, other: SetupLoads | null, axle: AxleId): DemandsView | null => {
  const of = (from: SetupLoads | null) => from?.ledger.find(({ id }) => id === axle) ?? null
  const ledger = of(loads)
  return ledger === null ? null : demandsView(ledger, of(other))
})

/** What every load takes of the axle shown and what the counted ones leave, beside what the compared setup leaves. */
export function demandsShown(state: Looked): DemandsView | null {
  const compared = comparedSetup(state)
  return drawn(
    loadsOf(state, shownSetup(state).setup).loads,
    compared === null ? null : loadsOf(state, compared.setup).loads,
    shownAxle(state).axle.id,
  )
}

/** Those of an axle and of its loads in one list, the worst first. */
const merged = remembered((own: readonly Finding[], loads: readonly LoadFinding[], axle: AxleId): readonly Finding[] =>
  [...own, ...loads.filter(finding => finding.axle === null || finding.axle === axle)].sort(worstFirst),
)

/** What is worth saying of the axle shown, its loads included, the worst first. */
export const findingsShown = (state: Looked): readonly Finding[] =>
  merged(
    resultsShown(state).budget.findings,
    loadsOf(state, shownSetup(state).setup).findings,
    shownAxle(state).axle.id,
  )

/** The finding pointed at. */
export function findingPointedAt(state: State): Finding | null {
  const { finding } = state.view
  return finding === null ? null : (findingsShown(state).find(({ id }) => id === finding) ?? null)
}
