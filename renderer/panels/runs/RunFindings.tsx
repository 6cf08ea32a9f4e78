import type { RunFinding } from '../../../core/runs/findings.ts'
import { FindingBadge } from '../../charts/marks/FindingShape.tsx'
import { countedFindings } from '../findings/counted.ts'
import { severityWords } from '../findings/severity-words.ts'

interface Props {
  /** null until they are known. */
  readonly findings: readonly RunFinding[] | null
  readonly name: string
}

const counted = (findings: readonly RunFinding[] | null): string =>
  findings === null ? 'not known yet' : findings.length === 0 ? 'the run and the plan agree' : countedFindings(findings)

/** What the run says of the plan, and what to do about it. */
export const RunFindings = ({ findings, name }: Props) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls in a small window must scroll by the keys as well
  <section className="find" aria-label="Findings of the run" tabIndex={0}>
    <h2>
      Findings{' '}
      <span>
        {name}: {counted(findings)}
      </span>
    </h2>
    <ol>
      {(findings ?? []).map(({ id, severity, message, remedy }, i) => (
        <li key={id} className={severity} data-finding={id}>
          <FindingBadge severity={severity} number={i + 1} />
          <span className="sev">{severityWords[severity]}</span>
          <span>{message}</span>
          <span className="next">{remedy}</span>
        </li>
      ))}
    </ol>
  </section>
)
