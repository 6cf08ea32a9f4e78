import { type Block, beside, heading, paragraph, said, stack } from './block.tsx'
import type { Look } from './lines.ts'

/** A line of a list is cut, with dots, after so many lines of text: only words somebody typed are ever as long. */
const LONGEST = 6

/** Room a step's number takes. */
const NUMBER = 20

interface ListOptions {
  readonly look: Look
  readonly width: number
  readonly gap?: number
  /** Steps to be done in this order are numbered. */
  readonly ordered?: boolean
  /** Height there is, px. */
  readonly room?: number
  /** Lines to keep, the one that counts the rest among them. */
  readonly most?: number
}

function item(line: string, index: number | null, { look, width }: ListOptions): Block {
  if (index === null) return said({ role: 'listitem' }, paragraph(line, look, width, { most: LONGEST }))
  const number = paragraph(String(index + 1), { ...look, ink: 'ink2' }, NUMBER)
  const step = paragraph(line, look, width - NUMBER, { most: LONGEST })
  return said(
    { role: 'listitem' },
    beside([
      [0, number],
      [NUMBER, step],
    ]),
  )
}

/**
 * A heading over lines: those that do not fit are left out whole, and their number is said.
 * @param where those left out can be read
 */
export function list(head: string, lines: readonly string[], where: string, options: ListOptions): Block {
  const { look, width, gap = 2, ordered = false, room = Infinity, most = Infinity } = options
  const title = heading(paragraph(head, { ...look, size: look.size * 1.08, weight: 600 }, width))
  const items = lines.map((line, i) => item(line, ordered ? i : null, options))
  const stacked = (shown: number): Block => {
    const left = items.length - shown
    const all = [
      ...items.slice(0, shown),
      ...(left === 0 ? [] : [item(`And ${left} more: see ${where}.`, null, options)]),
    ]
    return stack(
      title,
      1,
      said({ role: 'list', name: head }, stack(...all.flatMap((each, i) => [i === 0 ? 0 : gap, each]))),
    )
  }
  let shown = items.length <= most ? items.length : Math.max(0, most - 1)
  let whole = stacked(shown)
  while (whole.height > room && shown > 0) {
    shown -= 1
    whole = stacked(shown)
  }
  return whole
}
