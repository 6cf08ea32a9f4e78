import type { ProposeView, Proposing } from '../../state/proposing.ts'
import { ResultAnnouncer } from '../notices/ResultAnnouncer.tsx'
import { WorkFault } from '../notices/WorkFault.tsx'

/** How far the candidates are, with a way to stop them; or why there are none, with a way to begin again. */
export function ProposeWork({ proposing, view }: { proposing: Proposing; view: ProposeView }) {
  const { fault, stopped, running, done, of, proposals } = view
  if (fault !== null)
    return (
      <WorkFault
        className="sure-state"
        what="The candidates could not be worked out."
        about="candidates"
        fault={fault}
        onAgain={proposing.again}
      />
    )
  if (stopped)
    return (
      <p className="sure-state">
        Stopped after {done.toLocaleString('en-US')} of {of.toLocaleString('en-US')}.{' '}
        <button type="button" className="step" onClick={proposing.again}>
          Work them out
        </button>
      </p>
    )
  if (!running)
    return proposals === null ? null : (
      <ResultAnnouncer said={`${proposals.feasible} of ${proposals.order.length} candidates meet every target.`} />
    )
  return (
    <p className="sure-state">
      <progress max={Math.max(1, of)} value={done} aria-label="Candidates worked out" /> {done.toLocaleString('en-US')}{' '}
      of {of.toLocaleString('en-US')}{' '}
      <button type="button" className="step" onClick={proposing.stop}>
        Stop
      </button>
    </p>
  )
}
