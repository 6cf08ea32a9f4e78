import { memo } from 'react'
import type { Finding, Severity } from '../../../core/budget/results.ts'
import { chanceText } from '../../../core/tolerance/saying.ts'
import { FindingBadge } from '../../charts/marks/FindingShape.tsx'
import { plainName } from '../../fields/field-spec.ts'
import { specOf } from '../../fields/field-table.ts'
import { focusFinding } from '../../state/view.ts'
import { useSureView } from '../../sure-context.ts'
import { useSelect, useStore } from '../../window-context.ts'
import { goToField } from '../measurements/go-to-field.ts'
import { BesideOther } from './BesideOther.tsx'
import { countedFindings } from './counted.ts'
import { unbroken } from './unbroken.ts'
import { useDiagnosis } from './use-diagnosis.ts'
import { useFindings } from './use-findings.ts'
import { WhyLine } from './WhyLine.tsx'

const words: Readonly<Record<Severity, string>> = { danger: 'Danger', caution: 'Caution', note: 'Note' }

/** What is wrong, in a sentence with its number, and what would change it. */
export function Findings() {
  const findings = useFindings()
  const why = useDiagnosis()
  const { sureness, ledger } = useSureView()
  const chances = [...(sureness?.findings ?? []), ...(ledger?.findings ?? [])]
  return (
    <section className="find" aria-label="Findings">
      <div className="find-head">
        <h2>
          Findings <span>{countedFindings(findings)}</span>
        </h2>
        <BesideOther />
      </div>
      <ol>
        {findings.map(({ id, severity, message, remedy, field }, i) => (
          <FindingLine
            key={id}
            {...{ id, severity, message, remedy, field }}
            number={i + 1}
            chance={chances.find(each => each.id === id)?.chance}
          />
        ))}
        {why === null ? null : <WhyLine {...why} />}
      </ol>
    </section>
  )
}

interface LineProps extends Pick<Finding, 'id' | 'severity' | 'message' | 'remedy' | 'field'> {
  readonly number: number
  /** Share of the trials that find it; undefined while that is not known. */
  readonly chance: number | undefined
}

const FindingLine = memo(function FindingLine({ id, severity, message, remedy, field, number, chance }: LineProps) {
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
      <span className="sev">{words[severity]}</span>
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
