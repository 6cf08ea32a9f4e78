import type { Shelf } from '../../core/changes/shelf.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { asItIs, type CustomerFacts, customerFacts, type Told } from './customer-facts.ts'
import type { Side } from './figures.ts'
import { foot, head, marked } from './Lines.tsx'
import { type Block, beside, framed, heading, paragraph, rule, said, stack, upright, written } from './page/block.tsx'
import type { Look } from './page/lines.ts'
import { list } from './page/list.ts'
import { numberSpans } from './page/number.ts'
import { type Paper, pageOf } from './page/paper.ts'
import { SheetDrawing } from './SheetDrawing.tsx'

export interface SheetProps {
  readonly plan: Plan
  readonly before: Side
  readonly after: Side
  readonly date: string | null
  readonly paper: Paper
  readonly shelf: Shelf
}

/** Heights of the drawings, px. */
const DRAWING = { least: 225, most: 330 } as const

/** Sizes of text to try, the roomiest first, and then how many lines of a list to keep. */
const SIZES = [13, 12.5, 12, 11.5] as const
const FEWER = [6, 5, 4, 3, 2] as const

const GAP = 28

/** One side beside the other; one car as it is has the page's width to itself. */
function drawings({ plan, before, after }: SheetProps, width: number, height: number): Block {
  const alone = asItIs(before, after)
  const span = Math.max(...[before, after].map(({ budget }) => budget.travel.total))
  const each = alone ? Math.min(width, 1.6 * height) : width / 2 - 16
  const names = alone ? [''] : ['Before', 'After']
  const sides = names.map((name, i): readonly [number, Block] => {
    const side = i === 0 ? before : after
    const title = heading(
      paragraph(
        [
          { text: name === '' ? '' : `${name} `, weight: 600 },
          { text: side.setup.name, ink: 'ink2' },
        ],
        { size: 13.5 },
        each,
        { most: 1 },
      ),
    )
    const picture = {
      height: height - title.height - 10,
      at: (x: number, y: number) => (
        <g transform={`translate(${x} ${y})`}>
          <SheetDrawing side={side} plan={plan} span={span} width={each} height={height - title.height - 10} />
        </g>
      ),
    }
    return [i * (width / 2 + 16), stack(6, title, picture, 4)]
  })
  return stack(
    rule(width, 1, 'ink'),
    beside(alone ? sides : [...sides, [width / 2, upright(height, 'rule')]]),
    rule(width, 1, 'ink'),
  )
}

const NUMBER_WIDTH = 132

/** The three numbers, before in regular grey and after in semibold black: the pair reads without colour. */
function numbers({ before, after }: SheetProps, facts: CustomerFacts, width: number): Block {
  const alone = asItIs(before, after)
  const heads = alone ? ['As it is'] : ['Before', 'After']
  const place = (i: number): number => width - NUMBER_WIDTH * (heads.length - i)
  const small: Look = { size: 12.5, ink: 'ink2' }
  const headRow = beside([
    [
      0,
      said({ role: 'columnheader' }, paragraph(alone ? 'Three numbers' : 'Three numbers to compare', small, place(0))),
    ],
    ...heads.map((name, i): readonly [number, Block] => [
      place(i),
      said({ role: 'columnheader' }, paragraph(name, small, NUMBER_WIDTH, { side: 'end' })),
    ]),
  ])
  const rows = facts.numbers.map(({ what, before: was, after: is }) => {
    const values = alone ? [is] : [was, is]
    const name = centred(paragraph(what, { size: 14 }, place(0) - 16, { most: 3 }), 30)
    const cells = values.map((value, i): readonly [number, Block] => {
      const last = i === values.length - 1
      const spans = numberSpans(value, { size: 23, weight: last ? 600 : 400, ink: last ? 'ink' : 'ink2' })
      const number = centred(written([spans], 30, NUMBER_WIDTH, 'end'), name.height)
      return [place(i), said({ role: 'cell', name: value }, number)]
    })
    return said(
      { role: 'row' },
      stack(rule(width, 1, 'rule'), 4, beside([[0, said({ role: 'rowheader' }, name)], ...cells]), 4),
    )
  })
  return said(
    { role: 'table', name: 'Three numbers' },
    stack(5, said({ role: 'row' }, headRow), 3, ...rows, rule(width, 1, 'ink')),
  )
}

const centred = (block: Block, height: number): Block =>
  block.height >= height ? block : stack((height - block.height) / 2, block, (height - block.height) / 2)

/** Everything below the drawings. */
function words(props: SheetProps, facts: CustomerFacts, width: number, size: number, most: number): Block {
  const column = (width - GAP) / 2
  const told = ({ head, lines, where }: Told): Block =>
    list(head, lines, where, { look: { size }, width: column, most })
  const pairs = facts.lists.map(([left, right]) =>
    stack(
      7,
      beside([
        [0, told(left)],
        [column + GAP, told(right)],
      ]),
      7,
    ),
  )
  const care = stack(
    heading(paragraph('Please read', { size: size * 1.08, weight: 600 }, width - 24)),
    2,
    said(
      { role: 'list', name: 'Please read' },
      stack(
        ...facts.cautions.flatMap(({ severity, text }) => [
          said({ role: 'listitem' }, marked(severity, text, { size }, width - 24)),
          4,
        ]),
      ),
    ),
  )
  return stack(
    numbers(props, facts, width),
    ...pairs.flatMap((pair, i) => (i === 0 ? [pair] : [rule(width, 1, 'ink'), pair])),
    framed(care, width, 10),
  )
}

/** What the customer takes home, on one page: sizes and lines give way until the drawings have their room. */
export function CustomerSheet(props: SheetProps) {
  const { plan, before, after, date, paper } = props
  const page = pageOf(paper, 14)
  const width = page.width - 2 * page.left
  const facts = customerFacts(plan, before, after)
  const top = stack(
    head(facts.title, 'For the owner', date, { size: 23 }, width),
    9,
    paragraph(facts.lead, { size: 14.5, lead: 1.4 }, width),
    9,
  )
  const signed = foot(
    ['Measured by', 'Checked by', 'Customer'],
    'Customer sheet',
    plan.units === 'inch' ? 'Lengths to the nearest 1/16 in' : 'Lengths to the nearest millimetre',
    width,
  )
  const SIGNING = 34
  const room = page.height - page.top - page.bottom - top.height - signed.height - SIGNING
  const tries = [
    ...SIZES.map(size => ({ size, most: Infinity })),
    ...FEWER.map(most => ({ size: SIZES.at(-1)!, most })),
  ]
  const made = tries.map(
    ({ size, most }) =>
      () =>
        words(props, facts, width, size, most),
  )
  let below = made[0]!()
  for (const make of made.slice(1)) {
    if (room - below.height >= DRAWING.least) break
    below = make()
  }
  const height = Math.min(DRAWING.most, Math.max(DRAWING.least, room - below.height))
  const body = stack(top, drawings(props, width, height), below)
  return (
    <>
      {body.at(page.left, page.top)}
      {signed.at(page.left, page.height - page.bottom - signed.height)}
    </>
  )
}
