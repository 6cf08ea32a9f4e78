import type { SheetProps } from './CustomerSheet.tsx'
import type { Caution } from './cautions.ts'
import { foot, head, marked, THE_PLAN } from './Lines.tsx'
import { type Block, beside, framed, heading, paragraph, rule, said, stack } from './page/block.tsx'
import type { Look } from './page/lines.ts'
import { list } from './page/list.ts'
import { pageOf } from './page/paper.ts'
import { type ShopFacts, shopFacts } from './shop-facts.ts'
import { workTable } from './work-table.ts'

/** Sizes of text and heights of the table's rows to try, the roomiest first, px. */
const DENSITIES = [
  { size: 11.8, row: 25 },
  { size: 11.3, row: 23 },
  { size: 10.8, row: 20 },
] as const

type Density = (typeof DENSITIES)[number]

/** Least the lists keep when a table of many rows wants the page, px. */
const LISTS = 360

const GAP = 22

/** Room to sign in above the foot, px. */
const SIGNING = 26

/** Cautions in two columns of like height. */
function cautions(all: readonly Caution[], look: Look, width: number): Block {
  const inner = width - 20
  const column = (inner - GAP) / 2
  const items = all.map(({ text, source }) =>
    said(
      { role: 'listitem' },
      paragraph(
        [{ text }, ...(source === null ? [] : [{ text: ` After ${source}.`, ink: 'ink2' as const }])],
        look,
        column,
      ),
    ),
  )
  const columnOf = (blocks: readonly Block[]): Block => stack(...blocks.flatMap(block => [block, 2]))
  const splits = items.map((_, i) => [columnOf(items.slice(0, i + 1)), columnOf(items.slice(i + 1))] as const)
  const heightOf = ([left, right]: readonly [Block, Block]): number => Math.max(left.height, right.height)
  const [left, right] = splits.reduce((best, each) => (heightOf(each) < heightOf(best) ? each : best))
  return framed(
    stack(
      heading(paragraph('Cautions', { size: look.size * 1.08, weight: 600 }, inner)),
      1,
      said(
        { role: 'list', name: 'Cautions' },
        beside([
          [0, left],
          [column + GAP, right],
        ]),
      ),
    ),
    width,
    9,
  )
}

type Columns = readonly [Block, Block]

/** The two ways to put cut list, order of work and charge into two columns, no higher than `room`. */
function columns(
  facts: ShopFacts,
  look: Look,
  [wide, narrow]: readonly [number, number],
  room: number,
): readonly Columns[] {
  const told = (name: 'Cut list' | 'Charge' | 'Order of work', across: number, height: number): Block => {
    const lines = { 'Cut list': facts.cut, Charge: facts.charge, 'Order of work': facts.order }[name]
    return list(name, lines, THE_PLAN, { look, width: across, room: height, gap: 3, ordered: name === 'Order of work' })
  }
  // Each has what the other leaves; neither takes more than its part when both want more than there is.
  const withCharge = (name: 'Cut list' | 'Order of work', across: number): Block => {
    const charge = told('Charge', across, Math.max(room - 8 - told(name, across, Infinity).height, room * 0.4))
    return stack(told(name, across, room - charge.height - 8), 8, charge)
  }
  return [
    [withCharge('Cut list', wide), told('Order of work', narrow, room)],
    [told('Cut list', wide, room), withCharge('Order of work', narrow)],
  ]
}

/** Cut list, order of work and charge, no higher than `room`; the charge stands where the whole would be shortest. */
function lists(facts: ShopFacts, look: Look, width: number, room: number): Block {
  const widths = [(width - GAP) * 0.53, (width - GAP) * 0.47] as const
  const [under, beneath] = columns(facts, look, widths, Infinity).map(pair =>
    Math.max(...pair.map(({ height }) => height)),
  )
  const [left, right] = columns(facts, look, widths, room)[beneath! < under! ? 1 : 0]!
  return beside([
    [0, left],
    [widths[0] + GAP, right],
  ])
}

/** Lines to write on where the page is not full. */
function notes(width: number, room: number, look: Look): Block {
  const line = 24
  const count = Math.min(8, Math.floor((room - look.size * 2) / line))
  if (count < 2) return stack()
  const lines = Array.from({ length: count }, () => [line - 1, rule(width, 1, 'rule')])
  return stack(heading(paragraph('Notes', { ...look, size: look.size * 1.08, weight: 600 }, width)), ...lines.flat())
}

/** What the shop works from and writes on, on one page: it gets denser, then leaves out what does not change, and says how much. */
export function ShopSheet(props: SheetProps) {
  const { plan, before, after, date, paper, shelf } = props
  const facts = shopFacts(plan, before, after, shelf)
  const page = pageOf(paper, 12)
  const width = page.width - 2 * page.left
  const signed = foot(['Work done by', 'Checked by', 'Date'], 'Shop sheet', 'Lengths as a tape reads them', width)
  const whole = page.height - page.top - page.bottom - signed.height - SIGNING
  const build = ({ size, row }: Density, last: boolean): { readonly body: Block; readonly fits: boolean } => {
    const look: Look = { size, lead: 1.34 }
    const top = stack(
      head(facts.title, 'For the shop', date, { size: 20 }, width),
      6,
      marked('caution', facts.rules, { ...look, weight: 600 }, width),
      6,
    )
    const care = cautions(facts.cautions, look, width)
    const told = (left: number): Block =>
      stack(
        4,
        paragraph(
          [
            ...(facts.rows.some(({ changed }) => changed) ? ['Bold is changed.'] : []),
            ...(left === 0 ? [] : [`And ${left} more ${left === 1 ? 'row' : 'rows'}: see ${THE_PLAN}.`]),
            ...facts.results,
          ].join(' '),
          { ...look, ink: 'ink2' },
          width,
        ),
        6,
        rule(width, 1, 'ink'),
        6,
      )
    const wanted = lists(facts, look, width, Infinity).height
    const free = whole - top.height - care.height - told(1).height - 10
    const table = workTable(
      facts.rows,
      before.setup,
      after.setup,
      look,
      row,
      width,
      last ? free - Math.min(wanted, LISTS) : Infinity,
    )
    const room = free - table.height
    const listed = lists(facts, look, width, last ? room : Infinity)
    const rest = room - listed.height
    return {
      body: stack(top, table, told(table.left), listed, 8, care, 10, notes(width, rest - 10, look)),
      fits: rest >= 0,
    }
  }
  let made = build(DENSITIES[0], false)
  for (const density of DENSITIES.slice(1)) if (!made.fits) made = build(density, false)
  if (!made.fits) made = build(DENSITIES.at(-1)!, true)
  return (
    <>
      {made.body.at(page.left, page.top)}
      {signed.at(page.left, page.height - page.bottom - signed.height)}
    </>
  )
}
