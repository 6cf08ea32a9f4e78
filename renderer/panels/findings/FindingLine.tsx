import { memo } from 'react'
import type { Finding } from '../../../core/budget/results.ts'
import { chanceText } from '../../../core/tolerance/saying.ts'
import { FindingBadge } from '../../charts/marks/FindingShape.tsx'
import { plainName } from '../../fields/field-spec.ts'
import { specOf } from '../../fields/field-table.ts'
import { focusFinding } from '../../state/view.ts'
import { useSelect, useStore } from '../../window-context.ts'
import { goToField } from '../measurements/go-to-field.ts'
import { severityWords } from './severity-words.ts'
import { unbroken } from './unbroken.ts'

interface LineProps extends Pick<Finding, 'id' | 'severity' | 'message' | 'remedy' | 'field'> {
  readonly number: number
  /** Share of the trials that find it; undefined while that is not known. */
  readonly chance?: number | undefined
}

/** What is wrong, in a sentence with its number, and what would change it; where it is marked in the drawing is lit meanwhile. */
export const FindingLine = memo(function FindingLine({
  id,
  severity,
  message,
  remedy,
  field,
  number,
  chance,
}: LineProps) {
  const store = useStore()
  const focused = useSelect(state => state.view.finding === id)
  const spec = specOf(field)
  const enter = () => focusFinding(store, id)
  const leave = () => {
    if (store.read().view.finding === id) focusFinding(store, null)
  }
  return (
    <li
      className={focused ? `${severity} on` : severity}
      data-finding={id}
      onPointerEnter={enter}
      onPointerLeave={leave}
    >
      <FindingBadge severity={severity} number={number} />
      <span className="sev">{severityWords[severity]}</span>
      <span>
        {unbroken(message)}
        {chance === undefined || chance >= 0.995 ? null : (
          <>
            {' '}
            <span className="chance">Chance {chanceText(chance)}.</span>
          </>
        )}
      </span>
      <span className="next">
        {unbroken(remedy)}{' '}
        <button type="button" className="step" onFocus={enter} onBlur={leave} onClick={() => goToField(store, field)}>
          {spec === null ? 'Show where' : `See ${plainName(spec)}`}
        </button>
      </span>
    </li>
  )
})
