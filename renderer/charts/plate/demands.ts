/** What one load takes: from where the wheel stands to where the load holds it, m of wheel travel from ride height. */
export interface DemandSpan {
  readonly id: string
  readonly label: string
  /** For narrow columns. */
  readonly short: string
  readonly from: number
  /** null when nothing holds it: the car rolls. */
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
  /** All of them at once, solved together; null when nothing holds it or there is but one. */
  readonly together: DemandSpan | null
  readonly balance: DemandBalance | null
  readonly otherBalance: DemandBalance | null
}
