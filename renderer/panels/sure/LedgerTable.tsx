import type { Plan } from '../../../core/plan/schema.ts'
import type { LedgerSureness } from '../../../core/tolerance/ledger-sureness.ts'
import { planMeasurementName } from '../../../core/tolerance/measurement-names.ts'
import { chanceText, doubtText } from '../../../core/tolerance/saying.ts'
import { BandTable } from './BandTable.tsx'

/** The ranking is told as far as this many measurements. */
const RANKED = 3

/** What each load takes, and what they take and leave together, with the band 90 of 100 trials of the whole car lie in. */
export function LedgerTable({ ledger, plan }: { ledger: LedgerSureness; plan: Plan }) {
  const { bands, reachStop, reachBump, ranking } = ledger
  const system = plan.units
  if (bands.length === 0) return <p>No trial found a place for the wheels under these loads together.</p>
  const lengths = bands.map(band => ({ ...band, quantity: 'length' as const, firstOrder: null, why: null }))
  return (
    <>
      <BandTable head="Demand" bands={lengths} system={system} />
      <p className="sure-why">
        {reachStop === null ? '' : `Together they reach the stop: ${chanceText(reachStop)}. `}
        {reachBump === null ? '' : `Together they reach full bump: ${chanceText(reachBump)}. `}
        The whole car and what the loads ask for are off by chance too.
      </p>
      {ranking[0] === undefined ? null : (
        <section className="sure-ranking">
          <h4>Measure first, for what they leave, {doubtText(ranking[0].width, 'length', system)} now</h4>
          <ol>
            {ranking.slice(0, RANKED).map(({ measured, share, narrowed }) => (
              <li key={measured.path}>
                {planMeasurementName(measured.path, plan)}
                {measured.source === 'assumed' ? ', assumed' : ''}: {chanceText(share)} of the doubt;{' '}
                {measured.source === 'assumed' ? 'measuring it' : 'once more with care'} leaves{' '}
                {doubtText(narrowed, 'length', system)}.
              </li>
            ))}
          </ol>
        </section>
      )}
    </>
  )
}
