import type { Finding, Severity } from '../../../core/budget/results.ts'
import { FindingBadge } from '../../charts/marks/FindingShape.tsx'
import { plainName } from '../../fields/field-spec.ts'
import { specOf } from '../../fields/field-table.ts'
import { focusFinding } from '../../state/view.ts'
import { useSelect, useStore } from '../../window-context.ts'
import { countedFindings } from '../findings/counted.ts'
import { goToField } from '../measurements/go-to-field.ts'

const words: Readonly<Record<Severity, string>> = { danger: 'Danger', caution: 'Caution', note: 'Note' }

const counted = (findings: readonly Finding[] | null): string =>
  findings === null
    ? 'not known yet'
    : findings.length === 0
      ? 'nothing stands out on this ride'
      : countedFindings(findings)

interface Props {
  /** Of the setup shown; null until they are known. */
  readonly findings: readonly Finding[] | null
  /** The setup shown. */
  readonly name: string
}

/** What is worth saying of the ride, and what would change it: that was tried. */
export const RideFindings = ({ findings, name }: Props) => (
  <section className="find" aria-label="Findings of the ride">
    <h2>
      Findings{' '}
      <span>
        {name}: {counted(findings)}
      </span>
    </h2>
    <ol>
      {(findings ?? []).map((finding, i) => (
        <FindingLine key={finding.id} finding={finding} number={i + 1} />
      ))}
    </ol>
  </section>
)

function FindingLine({ finding, number }: { finding: Finding; number: number }) {
  const store = useStore()
  const focused = useSelect(state => state.view.finding === finding.id)
  const { id, severity, message, remedy, field } = finding
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
      <span>{message}</span>
      <span className="next">
        {remedy}{' '}
        <button type="button" className="step" onFocus={enter} onBlur={leave} onClick={() => goToField(store, field)}>
          {spec === null ? 'Show where' : `See ${plainName(spec)}`}
        </button>
      </span>
    </li>
  )
}
