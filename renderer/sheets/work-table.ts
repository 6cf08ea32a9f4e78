import type { Setup } from '../../core/plan/schema.ts'
import { type Block, beside, paragraph, rule, said, stack, upright } from './page/block.tsx'
import type { Look } from './page/lines.ts'
import type { ShopRow } from './shop-facts.ts'

interface Column {
  readonly name: string
  /** Of the page's width. */
  readonly part: number
  readonly text?: (row: ShopRow) => string
  /** Where something is written by hand. */
  readonly blank?: true
}

function columnsOf(before: Setup, after: Setup): readonly Column[] {
  const alone = before.id === after.id
  return [
    { name: 'Each side', part: 0.24, text: row => row.name },
    ...(alone ? [] : [{ name: before.name, part: 0.13, text: (row: ShopRow) => row.before }]),
    { name: after.name, part: alone ? 0.16 : 0.13, text: row => row.after },
    { name: 'Hold', part: 0.11, text: row => row.tolerance },
    { name: 'Left, as built', part: alone ? 0.2 : 0.155, blank: true },
    { name: 'Right, as built', part: alone ? 0.2 : 0.155, blank: true },
    { name: 'Initials', part: alone ? 0.09 : 0.08, blank: true },
  ]
}

const PAD = 8

/** A text in the middle of a row of some height; a row grows with it. */
const middle = (block: Block, height: number): Block => {
  const spare = Math.max(0, height - block.height) / 2
  return stack(spare, block, spare)
}

/**
 * Values before and after with what is to be held, and blanks to write in. When there is no room for all rows, those that do not change
 * are left out first; `left` says how many.
 * @param rowHeight least height of a row, px
 * @param room height of the whole table, px
 */
export function workTable(
  rows: readonly ShopRow[],
  before: Setup,
  after: Setup,
  look: Look,
  rowHeight: number,
  width: number,
  room: number,
): Block & { readonly left: number } {
  const columns = columnsOf(before, after)
  let right = 0
  const placed = columns.map(column => {
    const x = right
    right += column.part * width
    return { ...column, x, width: column.part * width }
  })
  const bold = (row: ShopRow, i: number): boolean =>
    row.changed && (i === 0 || placed[i]!.name === after.name) && placed[i]!.blank === undefined
  const line = (texts: readonly (Block | null)[], role: 'columnheader' | 'cell'): Block => {
    const height = Math.max(rowHeight, ...texts.map(text => (text?.height ?? 0) + 5))
    const cells = placed.flatMap((column, i): (readonly [number, Block])[] => {
      const text = texts[i]
      return [
        ...(column.blank === undefined ? [] : [[column.x, upright(height, 'rule')] as const]),
        ...(text === null || text === undefined
          ? []
          : [
              [
                column.x,
                said({ role: i === 0 && role === 'cell' ? 'rowheader' : role }, middle(text, height)),
              ] as const,
            ]),
      ]
    })
    return said({ role: 'row' }, beside(cells))
  }
  const text = (column: (typeof placed)[number], i: number, value: string, heavy: boolean, most: number): Block => {
    const ink = heavy || i === 0 || (column.name === after.name && column.blank === undefined) ? 'ink' : 'ink2'
    const style: Look = { ...look, weight: heavy ? 600 : 400, ink }
    return paragraph(value, style, column.width - PAD, { most, side: i === 0 ? 'start' : 'end' })
  }
  const heads = line(
    placed.map((column, i) =>
      paragraph(column.name, { ...look, ink: 'ink2' }, column.width - PAD, {
        most: 2,
        side: i === 0 ? 'start' : 'end',
      }),
    ),
    'columnheader',
  )
  const made = rows.map(row => ({
    changed: row.changed,
    block: stack(
      rule(width, 1, 'rule'),
      line(
        placed.map((column, i) =>
          column.text === undefined ? null : text(column, i, column.text(row), bold(row, i), i === 0 ? 2 : 3),
        ),
        'cell',
      ),
    ),
  }))
  const kept = new Set<(typeof made)[number]>()
  let height = heads.height + 2
  for (const row of [...made.filter(({ changed }) => changed), ...made.filter(({ changed }) => !changed)]) {
    if (height + row.block.height > room) break
    height += row.block.height
    kept.add(row)
  }
  const table = said(
    { role: 'table', name: 'Each side' },
    stack(
      rule(width, 1, 'ink'),
      heads,
      ...made.filter(row => kept.has(row)).map(({ block }) => block),
      rule(width, 1, 'ink'),
    ),
  )
  return { ...table, left: made.length - kept.size }
}
