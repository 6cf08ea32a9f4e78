import { useSure, useSureView } from '../../sure-context.ts'
import { ResultAnnouncer } from '../notices/ResultAnnouncer.tsx'
import { WorkFault } from '../notices/WorkFault.tsx'

/** How far the trials are, with a way to stop them; or why there are none, with a way to begin. */
export function SureProgress() {
  const sure = useSure()
  const { sureness, ledger, share, stopped, fault } = useSureView()
  if (sureness !== null && share === null && !stopped)
    return (
      <p className="sure-state">
        {sureness.trials.toLocaleString('en-US')} trials
        {ledger === null ? '' : `, ${ledger.trials.toLocaleString('en-US')} of the loads`}, each with every measurement
        off by chance, within its tolerance.
        <ResultAnnouncer said={`${sureness.trials} trials are done. The figures are in the table.`} />
      </p>
    )
  if (fault !== null)
    return (
      <WorkFault
        className="sure-state"
        what="The trials could not be run."
        about="trials"
        fault={fault}
        onAgain={sure.again}
      />
    )
  if (stopped)
    return (
      <p className="sure-state">
        Stopped.{' '}
        <button type="button" className="step" onClick={sure.again}>
          Run the trials
        </button>
      </p>
    )
  return (
    <p className="sure-state">
      <progress max={1} value={share ?? 0} aria-label="Trials" />
      {share === null
        ? 'Trials begin when your hands rest.'
        : `${Math.round(share * 100)} % of the trials${sureness === null ? '' : ' of the loads'}.`}{' '}
      {share === null ? null : (
        <button type="button" className="step" onClick={sure.stop}>
          Stop
        </button>
      )}
    </p>
  )
}
