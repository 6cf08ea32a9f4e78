import { GENERIC_SHELF } from '../../core/changes/shelf.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { CustomerSheet } from './CustomerSheet.tsx'
import { type Side, sideOf } from './figures.ts'
import { PAPER_SIZES, pageOf } from './page/paper.ts'
import { type Pair, pairOf, SHEETS, type SheetKind, type SheetRequest } from './request.ts'
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

interface SheetProps {
  readonly kind: SheetKind
  readonly request: SheetRequest
  readonly sides: Sides
}

/** The sheets' own font; those after it are for letters it does not have, and for programs that read no font out of a file. */
const FONTS = "Sheet, 'Open Sans', 'Segoe UI', 'Noto Sans', Arial, sans-serif"

/** What is on the page, from its upper left corner, px. Letters are drawn as wide as they were measured, not rounded to the screen's dots. */
export function SheetContent({ kind, request: { plan, paper, date, shelf = GENERIC_SHELF }, sides }: SheetProps) {
  const Content = kind === 'customer' ? CustomerSheet : ShopSheet
  const { width, height } = pageOf(paper, 0)
  return (
    <g fontFamily={FONTS} textRendering="geometricPrecision">
      <rect width={width} height={height} fill="var(--sheet)" />
      <Content plan={plan} {...sides} date={date} paper={paper} shelf={shelf} />
    </g>
  )
}

/** One page. Every word on it is text, whatever is in a title. */
export function Sheet(props: SheetProps) {
  const { kind, request } = props
  const size = PAPER_SIZES[request.paper]
  const { width, height } = pageOf(request.paper, 0)
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      className={`sheet ${kind} ${request.paper}`}
      role="document"
      aria-label={SHEETS[kind]}
      lang="en"
      width={`${size.width}mm`}
      height={`${size.height}mm`}
      viewBox={`0 0 ${width} ${height}`}
    >
      <SheetContent {...props} />
    </svg>
  )
}
