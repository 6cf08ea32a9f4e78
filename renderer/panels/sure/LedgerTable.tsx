import type { Plan } from '../../../core/plan/schema.ts'
import type { LedgerSureness } from '../../../core/tolerance/ledger-sureness.ts'
import { planMeasurementName } from '../../../core/tolerance/measurement-names.ts'
import { doubtText, MOST_RANKED, reachText, repeatText } from '../../../core/tolerance/saying.ts'
import { BandTable } from './BandTable.tsx'

/** What each load takes, and what they take and leave together, with the band 90 of 100 trials of the whole car lie in. */
export function LedgerTable({ ledger, plan }: { ledger: LedgerSureness; plan: Plan }) {
  const { bands, ranking } = ledger
  const system = plan.units
  if (bands.length === 0) return <p>No trial found a place for the wheels under these loads together.</p>
  const lengths = bands.map(band => ({ ...band, quantity: 'length' as const, firstOrder: null, why: null }))
  return (
    <>
      <BandTable head="Demand" bands={lengths} system={system} />
      <p className="sure-why">{reachText(ledger)} The whole car and what the loads ask for are off by chance too.</p>
      {ranking[0] === undefined ? null : (
        <section className="sure-ranking">
          <h4>Measure first, for what they leave, {doubtText(ranking[0].width, 'length', system)} now</h4>
          <ol>
            {ranking.slice(0, MOST_RANKED).map(each => (
              <li key={each.measured.path}>
                {planMeasurementName(each.measured.path, plan)}
                {repeatText(each, 'length', system)}
              </li>
            ))}
          </ol>
        </section>
      )}
    </>
  )
}
