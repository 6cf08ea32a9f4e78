import type { PlanRun } from '../../../core/plan/schema.ts'
import type { Opening } from './keeping.ts'

export interface NotOpened {
  readonly run: PlanRun
  readonly opening: Exclude<Opening, { kind: 'opened' }>
}

interface Props {
  readonly unopened: NotOpened
  /** Takes a run that changed since it was kept as it is now. */
  readonly onTake: (unopened: NotOpened) => void
  readonly onClose: () => void
}

/** Says that a kept run is missing or changed, and what can be done. The plan is as good without it. */
export const Unopened = ({ unopened, onTake, onClose }: Props) => (
  <p className="run-trouble" role="alert">
    {unopened.opening.reason}{' '}
    {unopened.opening.kind === 'changed' ? (
      <>
        <button type="button" className="step" onClick={() => onTake(unopened)}>
          Take it as it is now
        </button>{' '}
      </>
    ) : null}
    <button type="button" className="step" onClick={onClose}>
      Close
    </button>
  </p>
)
