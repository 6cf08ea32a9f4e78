import type { CornerModel } from '../corner/corner-model.ts'
import type { AxleId, Load, Plan, Setup } from '../plan/schema.ts'
import { demandOf } from './demand.ts'
import { type SetupModel, setupModel } from './setup-model.ts'
import { type AxleUnderLoad, type Solved, solve } from './solve.ts'

/** What loads do to one axle: a span from static on the axis of wheel travel. SI; positions in m from ride height, positive in bump. */
export interface LoadSpan {
  /** Static position. */
  readonly from: number
  /**
   * Where the outer side stands, as its stop sees it: on a solid axle in roll the wheel itself goes further. Null when there is no
   * such place: see `outcome`.
   */
  readonly to: number | null
  /** Taken out of the coilover zone, `to` − `from`; negative when given back. */
  readonly takes: number | null
  readonly outcome: Solved['outcome']
}

export interface LedgerRow extends LoadSpan {
  readonly id: string
  readonly kind: Load['kind']
  /** The load's name; its kind where it has none. */
  readonly label: string
  /** One word, for the head of a narrow column. */
  readonly shortLabel: string
  /** Its size is taken on trust. */
  readonly assumed: boolean
}

/** What a load is called where it has no name of its own, or no room for it. */
const KIND_NAMES: Readonly<Record<Load['kind'], string>> = {
  payload: 'Payload',
  cornering: 'Corner',
  braking: 'Braking',
  terrain: 'Terrain',
}

/** Where the wheel travel of one axle goes before the stop does any work. */
export interface AxleLedger {
  readonly id: AxleId
  /** Static position. */
  readonly from: number
  /** Where pad and stop meet; null without a stop in the travel. */
  readonly engagement: number | null
  readonly bump: number
  /** What there is to spend, from static to engagement, or to full bump without one; negative when it already rests on the stop. */
  readonly zone: number
  /** Each load on its own. */
  readonly rows: readonly LedgerRow[]
  /** All chosen loads at once, solved together; those that cannot be are left out and named. */
  readonly together: LoadSpan & {
    readonly assumed: boolean
    readonly chosen: readonly string[]
    readonly leftOut: readonly string[]
  }
  /** What the loads take together beyond the sum of what each chosen one takes alone; null when one of them has no place. */
  readonly difference: number | null
  readonly balance: {
    /** Left before pad and stop meet, negative when they have; null without a stop in the travel, or without a place to count from. */
    readonly beforeStop: number | null
    /** Left before something ends the travel. */
    readonly beforeBump: number | null
  }
}

/** One load, or several at once, with what comes of it. */
export interface LoadResult {
  readonly id: string
  readonly kind: Load['kind']
  readonly solved: Solved
}

export interface SetupLoads {
  readonly id: string
  /** The setup without loads. */
  readonly model: SetupModel
  readonly loads: readonly LoadResult[]
  readonly together: Solved
  readonly ledger: readonly AxleLedger[]
}

const axleOf = (solved: Solved, id: AxleId): AxleUnderLoad | null =>
  solved.outcome === 'settles' ? (solved.axles.find(axle => axle.id === id) ?? null) : null

function span(solved: Solved, { id, rest }: { id: AxleId; rest: number }): LoadSpan {
  const axle = axleOf(solved, id)
  return {
    from: rest,
    to: axle === null ? null : axle.atStop,
    takes: axle === null ? null : axle.atStop - rest,
    outcome: solved.outcome,
  }
}

/** One word for each load: its kind, unless another of that kind stands beside it. */
function shortLabel(load: Load, loads: readonly Load[]): string {
  const alone = loads.filter(({ kind }) => kind === load.kind).length === 1
  return alone || load.name === '' ? KIND_NAMES[load.kind] : load.name
}

/**
 * Every load of a plan on one setup, each alone and the chosen ones together, and the ledger of each axle.
 * @param chosen ids of the loads taken together; all when not given
 * @param models of the setup's axles in their order, if already at hand
 */
export function setupLoads(
  plan: Plan,
  setup: Setup,
  chosen: readonly string[] = plan.loads.map(({ id }) => id),
  models?: readonly CornerModel[],
): SetupLoads {
  const ready = setupModel(plan, setup, models)
  const loads = plan.loads.map(load => ({ id: load.id, kind: load.kind, load, solved: solve(ready, demandOf([load])) }))
  const taken = loads.filter(({ id }) => chosen.includes(id))
  const possible = taken.filter(({ solved }) => solved.outcome !== 'needs two axles')
  const together = solve(ready, demandOf(possible.map(({ load }) => load)))
  return {
    id: setup.id,
    model: ready,
    loads: loads.map(({ id, kind, solved }) => ({ id, kind, solved })),
    together,
    ledger: ready.axles.map(({ axle, model, rest }): AxleLedger => {
      const rows = loads.map(
        ({ load, solved }): LedgerRow => ({
          id: load.id,
          kind: load.kind,
          label: load.name === '' ? KIND_NAMES[load.kind] : load.name,
          shortLabel: shortLabel(load, plan.loads),
          assumed: load.assumed ?? false,
          ...span(solved, { id: axle.id, rest }),
        }),
      )
      const all = span(together, { id: axle.id, rest })
      const counted = rows.filter(({ id }) => possible.some(load => load.id === id))
      const sum = counted.reduce((total, { takes }) => total + (takes ?? Number.NaN), 0)
      const state = axleOf(together, axle.id)
      return {
        id: axle.id,
        from: rest,
        engagement: model.engagement,
        bump: model.bump,
        zone: (model.engagement ?? model.bump) - rest,
        rows,
        together: {
          ...all,
          assumed: counted.some(({ assumed }) => assumed),
          chosen: possible.map(({ id }) => id),
          leftOut: taken.filter(load => !possible.includes(load)).map(({ id }) => id),
        },
        difference: all.takes === null || Number.isNaN(sum) ? null : all.takes - sum,
        balance: { beforeStop: state?.beforeStop ?? null, beforeBump: state?.beforeBump ?? null },
      }
    }),
  }
}

/** The same for every setup of a plan that parsePlan accepts. */
export const planLoads = (plan: Plan, chosen?: readonly string[]): SetupLoads[] =>
  plan.setups.map(setup => setupLoads(plan, setup, chosen))
