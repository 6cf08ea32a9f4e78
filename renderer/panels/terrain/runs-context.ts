import { createContext, useContext, useEffect, useMemo, useSyncExternalStore } from 'react'
import { comparedSetup, shownAxle, shownSetup } from '../../state/selectors.ts'
import { shownTerrain } from '../../state/terrain.ts'
import { type RideRequest, type RunsView, TerrainRuns } from '../../state/terrain-runs.ts'
import { sweepOf } from '../../state/terrain-sweep.ts'
import { useSelectGroup } from '../../window-context.ts'
import { ridePool } from '../../workers/ride-pool.ts'

let known: TerrainRuns | null = null

/** Rides are remembered as long as the window is open, whatever page is shown. */
const windowRuns = (): TerrainRuns => {
  known ??= new TerrainRuns(ridePool())
  return known
}

/** Another place to ride than the window's own workers. */
export const RunsContext = createContext<TerrainRuns | null>(null)

function useRuns(): TerrainRuns {
  const given = useContext(RunsContext)
  return given ?? windowRuns()
}

/** Rides of what is shown: asked for whenever that changes, called off when the page is left. */
export function useRides(): { readonly runs: TerrainRuns; readonly view: RunsView } {
  const runs = useRuns()
  const { terrain, axle, setup, compared, other } = useSelectGroup(state => {
    const against = comparedSetup(state)
    return {
      terrain: shownTerrain(state)?.terrain ?? null,
      axle: shownAxle(state).axle,
      setup: shownSetup(state).setup.id,
      compared: against?.setup.id ?? null,
      other: against?.axle.corner ?? null,
    }
  })
  const request = useMemo((): RideRequest | null => {
    if (terrain === null) return null
    const corners = other === null ? [axle.corner] : [axle.corner, other]
    const subject = [axle.id, setup, compared, terrain.id].join('\n')
    return { subject, terrain, corners, sweep: sweepOf(terrain, axle.corner.tire.radius) }
  }, [terrain, axle.corner, axle.id, other, setup, compared])
  useEffect(() => runs.warm(2), [runs])
  useEffect(() => runs.ask(request), [runs, request])
  useEffect(() => () => runs.ask(null), [runs])
  const view = useSyncExternalStore(runs.subscribe, runs.read)
  return { runs, view }
}
