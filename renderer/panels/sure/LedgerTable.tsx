import type { LedgerSureness } from '../../../core/tolerance/ledger-sureness.ts'
import { chanceText } from '../../../core/tolerance/saying.ts'
import type { System } from '../../../core/units/quantity.ts'
import { BandTable } from './BandTable.tsx'

/** What each load takes, and what they take and leave together, with the band 90 of 100 trials of the whole car lie in. */
export function LedgerTable({ ledger, system }: { ledger: LedgerSureness; system: System }) {
  const { bands, reachStop, reachBump } = ledger
  if (bands.length === 0) return <p>No trial found a place for the wheels under these loads together.</p>
  const lengths = bands.map(band => ({ ...band, quantity: 'length' as const, firstOrder: null, why: null }))
  return (
    <>
      <BandTable head="Demand" bands={lengths} system={system} />
      <p className="sure-why">
        {reachStop === null ? '' : `Together they reach the stop: ${chanceText(reachStop)}. `}
        {reachBump === null ? '' : `Together they reach full bump: ${chanceText(reachBump)}. `}
        What the loads ask for, the center of gravity and the anti-roll bars are taken as stated.
      </p>
    </>
  )
}
