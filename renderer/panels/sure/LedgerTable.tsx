import type { LedgerSureness } from '../../../core/tolerance/ledger-sureness.ts'
import type { System } from '../../../core/units/quantity.ts'
import { BandPicture } from './BandPicture.tsx'
import { chanceText, figureText } from './words.ts'

/** What each load takes, and what they take and leave together, with the band 90 of 100 trials of the whole car lie in. */
export function LedgerTable({ ledger, system }: { ledger: LedgerSureness; system: System }) {
  const { bands, reachStop, reachBump } = ledger
  if (bands.length === 0) return <p>No trial found a place for the wheels under these loads together.</p>
  return (
    <>
      <table className="sure-figures">
        <thead>
          <tr>
            <th scope="col">Demand</th>
            <th scope="col">as it stands</th>
            <th scope="col">5 of 100 below</th>
            <th scope="col">5 of 100 above</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {bands.map(band => (
            <tr key={band.id}>
              <th scope="row">
                {band.name}
                {band.present > 0.995 ? null : <small> {chanceText(band.present)} of trials have one</small>}
              </th>
              {[band.value, band.low, band.high].map((each, i) => (
                <td key={['value', 'low', 'high'][i]}>{figureText(each, 'length', system)}</td>
              ))}
              <td>
                <BandPicture {...band} firstOrder={null} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="sure-why">
        {reachStop === null ? '' : `Together they reach the stop: ${chanceText(reachStop)}. `}
        {reachBump === null ? '' : `Together they reach full bump: ${chanceText(reachBump)}. `}
        What the loads ask for, the center of gravity and the anti-roll bars are taken as stated.
      </p>
    </>
  )
}
