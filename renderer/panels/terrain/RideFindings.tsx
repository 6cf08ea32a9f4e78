import type { Finding } from '../../../core/budget/results.ts'
import { countedFindings } from '../findings/counted.ts'
import { FindingLine } from '../findings/FindingLine.tsx'

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
      {(findings ?? []).map(({ id, severity, message, remedy, field }, i) => (
        <FindingLine key={id} {...{ id, severity, message, remedy, field }} number={i + 1} />
      ))}
    </ol>
  </section>
)
