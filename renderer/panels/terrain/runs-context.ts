import { createContext, useCallback, useContext, useEffect, useSyncExternalStore } from 'react'
import type { Axle, Setup } from '../../../core/plan/schema.ts'
import type { MeasuredCourse } from '../../../core/ride/measured-road.ts'
import { comparedSetup, shownAxle, shownSetup } from '../../state/selectors.ts'
import type { State } from '../../state/state.ts'
import { shownTerrain } from '../../state/terrain.ts'
import { RideCache } from '../../state/terrain-cache.ts'
import { cornerAlone, cornerOfCar, type DrivenCorner } from '../../state/terrain-driven.ts'
import { type RideRequest, type RunsView, sameRequest } from '../../state/terrain-request.ts'
import { RANK, TerrainRuns } from '../../state/terrain-runs.ts'
import { sweepOf } from '../../state/terrain-sweep.ts'
import { useSelect } from '../../window-context.ts'
import { ridePool } from '../../workers/ride-pool.ts'
import { useOwnRoad } from './own-road.ts'

let known: TerrainRuns | null = null

/** Rides are remembered as long as the window is open, whatever page is shown. */
const remembered = new RideCache()

const windowRuns = (): TerrainRuns => {
  known ??= new TerrainRuns(ridePool(), remembered)
  return known
}

/** Rides for a page that is not shown yet: the rides themselves, remembered for the page that is, and nothing further. */
export const ridesAhead = (): TerrainRuns => {
  const pool = ridePool()
  return new TerrainRuns(
    {
      warm: count => pool.warm(count),
      run: (ask, rank, hear) => (rank === RANK.ride ? pool.run(ask, rank, hear) : () => undefined),
    },
    remembered,
  )
}

/** Another place to ride than the window's own workers. */
export const RunsContext = createContext<TerrainRuns | null>(null)

function useRuns(): TerrainRuns {
  const given = useContext(RunsContext)
  return given ?? windowRuns()
}

/** What is driven in a setup: the corner of its axle by itself, or in the whole car. */
const drivenIn = ({ plan, view }: State, setup: Setup, axle: Axle): DrivenCorner | null =>
  view.wholeCar ? cornerOfCar(setup, axle.id, plan.vehicle.wheelbase) : cornerAlone(axle.corner)

const sameQuestion = (a: RideRequest | null, b: RideRequest | null): boolean =>
  a === b || (a !== null && b !== null && a.terrain === b.terrain && sameRequest(a, b))

/** What the page shows, as a question; null where there is nothing to ride. */
function asked(state: State, road: MeasuredCourse | null): RideRequest | null {
  const terrain = shownTerrain(state, road)?.terrain
  if (terrain === undefined) return null
  const { axle } = shownAxle(state)
  const { setup } = shownSetup(state)
  const compared = comparedSetup(state)
  // A setup with one axle has no whole car: its corner is ridden by itself.
  const own = drivenIn(state, setup, axle) ?? cornerAlone(axle.corner)
  const other = compared === null ? null : drivenIn(state, compared.setup, compared.axle)
  return {
    subject: [axle.id, setup.id, compared?.setup.id, terrain.id, own.driven.kind].join('\n'),
    axle,
    units: state.plan.units,
    terrain,
    corners: other === null ? [own] : [own, other],
    sweep: sweepOf(terrain, axle.corner.tire.radius),
  }
}

/** Rides of what is shown: asked for whenever that changes, called off when the page is left. */
export function useRides(): {
  readonly runs: TerrainRuns
  readonly request: RideRequest | null
  readonly view: RunsView
} {
  const runs = useRuns()
  const road = useOwnRoad()
  const request = useSelect(
    useCallback((state: State) => asked(state, road), [road]),
    sameQuestion,
  )
  useEffect(() => runs.warm(2), [runs])
  useEffect(() => runs.ask(request), [runs, request])
  useEffect(() => () => runs.ask(null), [runs])
  const view = useSyncExternalStore(
    runs.subscribe,
    useCallback(() => runs.readOf(request), [runs, request]),
  )
  return { runs, request, view }
}
