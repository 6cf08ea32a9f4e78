import type { AxleLedger, LoadSpan } from '../../../core/loads/ledger.ts'

/** What one load takes: from where the wheel stands to where the load holds it, m of wheel travel from ride height. */
export interface DemandSpan {
  readonly id: string
  readonly label: string
  /** For narrow columns. */
  readonly short: string
  readonly from: number
  /** null when nothing holds it: the car rolls over. */
  readonly to: number | null
  /** Rests on a value nobody has measured. */
  readonly assumed?: boolean
}

/** What is left, m: below engagement and below full bump; negative when it is overdrawn, null without a stop in the travel. */
export interface DemandBalance {
  readonly beforeStop: number | null
  readonly beforeBump: number
}

/** The ledger of loads, ready to draw. */
export interface DemandsView {
  readonly spans: readonly DemandSpan[]
  /** All of them at once, solved together; null when there is but one. */
  readonly together: DemandSpan | null
  readonly balance: DemandBalance | null
  readonly otherBalance: DemandBalance | null
}

const balanceOf = ({ balance: { beforeStop, beforeBump } }: AxleLedger): DemandBalance | null =>
  beforeBump === null ? null : { beforeStop, beforeBump }

const drawable = ({ outcome }: LoadSpan): boolean => outcome !== 'needs two axles'

/**
 * What the plate draws of an axle's ledger: the loads that this setup can carry, what the chosen ones take together, and what is left; null
 * when there is nothing to draw.
 * @param other the other setup's ledger of the same axle
 */
export function demandsView(ledger: AxleLedger, other: AxleLedger | null): DemandsView | null {
  const spans = ledger.rows
    .filter(drawable)
    .map(({ id, label, shortLabel, from, to, assumed }) => ({ id, label, short: shortLabel, from, to, assumed }))
  if (spans.length === 0) return null
  const { together } = ledger
  const counted = together.chosen.length
  return {
    spans,
    together:
      counted < 2
        ? null
        : {
            id: 'together',
            label: 'Together',
            short: counted === 2 ? 'Both' : 'All',
            from: together.from,
            to: together.to,
            assumed: together.assumed,
          },
    balance: counted === 0 ? null : balanceOf(ledger),
    otherBalance: other === null || counted === 0 ? null : balanceOf(other),
  }
}
