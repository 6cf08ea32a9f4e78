import type { Finding, Severity } from '../../../core/budget/results.ts'
import { FindingBadge } from '../../charts/marks/FindingShape.tsx'
import { plainName } from '../../fields/field-spec.ts'
import { specOf } from '../../fields/field-table.ts'
import { focusFinding } from '../../state/view.ts'
import { useSureView } from '../../sure-context.ts'
import { useSelect, useStore } from '../../window-context.ts'
import { goToField } from '../measurements/go-to-field.ts'
import { chanceText } from '../sure/words.ts'
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
  return (
    <section className="find" aria-label="Findings">
      <h2>
        Findings <span>{countedFindings(findings)}</span>
      </h2>
      <ol>
        {findings.map((finding, i) => (
          <FindingLine key={finding.id} finding={finding} number={i + 1} />
        ))}
        {why === null ? null : <WhyLine {...why} />}
      </ol>
    </section>
  )
}

function FindingLine({ finding, number }: { finding: Finding; number: number }) {
  const store = useStore()
  const focused = useSelect(state => state.view.finding === finding.id)
  const { id, severity, message, remedy, field } = finding
  const spec = specOf(field)
  const chance = useSureView().sureness?.findings.find(each => each.id === id)?.chance
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
        {chance === undefined || chance >= 0.995 ? null : <span className="chance"> Chance {chanceText(chance)}.</span>}
      </span>
      <span className="next">
        {unbroken(remedy)}{' '}
        <button type="button" className="step" onFocus={enter} onBlur={leave} onClick={() => goToField(store, field)}>
          {spec === null ? 'Show where' : `See ${plainName(spec)}`}
        </button>
      </span>
    </li>
  )
}
