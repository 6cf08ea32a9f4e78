import type { RunsView } from '../../state/terrain-request.ts'
import type { TerrainRuns } from '../../state/terrain-runs.ts'
import { WorkFault } from '../notices/WorkFault.tsx'

/** How far the rides are, once they take longer than people wait for, with a way to stop them; or why there are none. */
export function RideWork({ runs, view }: { readonly runs: TerrainRuns; readonly view: RunsView }) {
  const { work, stopped, fault } = view
  if (fault !== null)
    return (
      <WorkFault
        className="ride-work"
        what="It could not be worked out."
        about="rides"
        fault={fault}
        onAgain={() => runs.resume()}
      />
    )
  if (stopped)
    return (
      <p className="ride-work">
        Stopped.{' '}
        <button type="button" className="step" onClick={() => runs.resume()}>
          Go on
        </button>
      </p>
    )
  if (work === null) return null
  return (
    <p className="ride-work">
      <progress className="work-bar" max={work.total} value={work.done} aria-label="Rides worked out" />
      <span className="wide-only">Ride </span>
      {work.done + 1} of {work.total}{' '}
      <button type="button" className="step" onClick={() => runs.stop()}>
        Stop
      </button>
    </p>
  )
}
