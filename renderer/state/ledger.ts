import { type AxleLedger, setupLoads } from '../../core/loads/ledger.ts'
import type { Plan, Setup } from '../../core/plan/schema.ts'
import type { DemandBalance, DemandSpan, DemandsView } from '../charts/plate/demands.ts'
import { modelOf } from './results.ts'
import { comparedSetup, shownAxle, shownSetup } from './selectors.ts'
import type { State } from './state.ts'

interface Asked {
  readonly loads: Plan['loads']
  readonly vehicle: Plan['vehicle']
  readonly off: readonly string[]
}

/** Plans are never changed in place: a setup that is the same object, under the same loads, has the same ledger. */
const ledgers = new WeakMap<Setup, { asked: Asked; found: readonly AxleLedger[] }>()

function ledgerOf(state: State, setup: Setup): readonly AxleLedger[] {
  const { plan, view } = state
  const known = ledgers.get(setup)
  const asked: Asked = { loads: plan.loads, vehicle: plan.vehicle, off: view.loadsOff }
  if (
    known !== undefined &&
    known.asked.loads === asked.loads &&
    known.asked.vehicle === asked.vehicle &&
    known.asked.off === asked.off
  )
    return known.found
  const chosen = plan.loads.map(({ id }) => id).filter(id => !asked.off.includes(id))
  const models = setup.axles.map(({ corner }) => modelOf(corner))
  const found = setupLoads(plan, setup, chosen, models).ledger
  ledgers.set(setup, { asked, found })
  return found
}

const balanceOf = ({ balance }: AxleLedger): DemandBalance | null =>
  balance.beforeBump === null ? null : { beforeStop: balance.beforeStop, beforeBump: balance.beforeBump }

const views = new WeakMap<AxleLedger, { other: AxleLedger | null; view: DemandsView }>()

function viewOf(ledger: AxleLedger, other: AxleLedger | null): DemandsView {
  const known = views.get(ledger)
  if (known !== undefined && known.other === other) return known.view
  const { rows, together, from } = ledger
  const counted = rows.filter(row => together.chosen.includes(row.id))
  const spans = counted.map(
    (row): DemandSpan => ({
      id: row.id,
      label: row.label,
      short: row.shortLabel,
      from: row.from,
      to: row.to,
      assumed: row.assumed,
    }),
  )
  const all: DemandSpan = {
    id: 'together',
    label: counted.length === 2 ? 'Both' : 'Together',
    short: counted.length === 2 ? 'Both' : 'All',
    from,
    to: together.to,
    assumed: together.assumed,
  }
  const view: DemandsView = {
    spans,
    together: counted.length > 1 ? all : null,
    balance: balanceOf(ledger),
    otherBalance: other === null ? null : balanceOf(other),
  }
  views.set(ledger, { other, view })
  return view
}

/** What the loads take of the axle shown, beside what the compared setup leaves; null while no load is counted. */
export function demandsShown(state: State): DemandsView | null {
  if (state.plan.loads.every(({ id }) => state.view.loadsOff.includes(id))) return null
  const { axle } = shownAxle(state)
  const here = (setup: Setup): AxleLedger | null => ledgerOf(state, setup).find(({ id }) => id === axle.id) ?? null
  const ledger = here(shownSetup(state).setup)
  if (ledger === null) return null
  const compared = comparedSetup(state)
  return viewOf(ledger, compared === null ? null : here(compared.setup))
}
