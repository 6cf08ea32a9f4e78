import type { AxleLedger, LedgerRow, LoadSpan } from '../../../core/loads/ledger.ts'

/** What one load takes: from where the wheel stands to where the load holds it, m of wheel travel from ride height. */
export interface DemandSpan {
  readonly id: string
  readonly label: string
  /** For narrow columns. */
  readonly short: string
  /** For the narrowest. */
  readonly tight: string
  readonly from: number
  /** null where there is no such place: see `outcome`. */
  readonly to: number | null
  readonly outcome: LoadSpan['outcome']
  /** Among those taken together. */
  readonly counted: boolean
  /** Rests on a value nobody has measured. */
  readonly assumed: boolean
}

/** What is left, m: below engagement and below full bump; negative when it is overdrawn, null without a stop in the travel. */
export interface DemandBalance {
  readonly beforeStop: number | null
  readonly beforeBump: number
}

/** The ledger of loads, ready to draw. */
export interface DemandsView {
  /** Every load of the plan; none where it has none yet. */
  readonly spans: readonly DemandSpan[]
  /** The counted ones at once, solved together; null when there is but one, or none. */
  readonly together: DemandSpan | null
  readonly balance: DemandBalance | null
  readonly otherBalance: DemandBalance | null
}

const TIGHT: Readonly<Record<LedgerRow['kind'], string>> = {
  payload: 'Load',
  cornering: 'Turn',
  braking: 'Brake',
  terrain: 'Ruts',
}

const balanceOf = ({ balance: { beforeStop, beforeBump } }: AxleLedger): DemandBalance | null =>
  beforeBump === null ? null : { beforeStop, beforeBump }

/**
 * What the plate draws of an axle's ledger: every load, what the counted ones take together, and what is left.
 * @param other the other setup's ledger of the same axle
 */
export function demandsView(ledger: AxleLedger, other: AxleLedger | null): DemandsView {
  const { rows, together } = ledger
  const counted = together.chosen.length
  return {
    spans: rows.map(({ id, kind, label, shortLabel, from, to, outcome, assumed }) => ({
      id,
      label,
      short: shortLabel,
      tight: rows.filter(row => row.kind === kind).length === 1 ? TIGHT[kind] : shortLabel,
      from,
      to,
      outcome,
      counted: together.chosen.includes(id) || together.leftOut.includes(id),
      assumed,
    })),
    together:
      counted < 2
        ? null
        : {
            id: 'together',
            label: 'Together',
            short: counted === 2 ? 'Both' : 'All',
            tight: counted === 2 ? 'Both' : 'All',
            from: together.from,
            to: together.to,
            outcome: together.outcome,
            counted: true,
            assumed: together.assumed,
          },
    balance: counted === 0 ? null : balanceOf(ledger),
    otherBalance: other === null || counted === 0 ? null : balanceOf(other),
  }
}
