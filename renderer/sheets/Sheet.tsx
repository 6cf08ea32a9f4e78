import type { Plan } from '../../core/plan/schema.ts'
import { CustomerSheet } from './CustomerSheet.tsx'
import { type Side, sideOf } from './figures.ts'
import { type Pair, pairOf, type SheetKind, type SheetRequest } from './request.ts'
import { ShopSheet } from './ShopSheet.tsx'

export interface Sides {
  readonly before: Side
  readonly after: Side
}

const sidesOf = (plan: Plan, { before, after }: Pair): Sides => ({
  before: sideOf(plan, before.setup, before.axle),
  after: sideOf(plan, after.setup, after.axle),
})

/** The figures of both sides, or why there is no sheet. */
export function sheetSides(request: SheetRequest): Sides | { readonly problem: string } {
  const pair = pairOf(request)
  return 'problem' in pair ? pair : sidesOf(request.plan, pair)
}

/** One page. Every word on it is text, whatever is in a title. */
export function Sheet({ kind, request, sides }: { kind: SheetKind; request: SheetRequest; sides: Sides }) {
  const Page = kind === 'customer' ? CustomerSheet : ShopSheet
  return (
    <div className={`sheet ${kind} ${request.paper}`} lang="en">
      <Page plan={request.plan} {...sides} date={request.date} />
    </div>
  )
}
