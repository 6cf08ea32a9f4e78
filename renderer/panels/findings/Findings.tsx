import { useSureView } from '../../sure-context.ts'
import { BesideOther } from './BesideOther.tsx'
import { countedFindings } from './counted.ts'
import { FindingLine } from './FindingLine.tsx'
import { useDiagnosis } from './use-diagnosis.ts'
import { useFindings } from './use-findings.ts'
import { WhyLine } from './WhyLine.tsx'

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
