import type { ReactNode } from 'react'
import { Picture } from '../charts/marks/Group.tsx'
import { type Block, balanced, beside, heading, paragraph, rule, stack } from './page/block.tsx'
import type { Look } from './page/lines.ts'

/** Where a line that had no room is read. */
export const THE_PLAN = 'the plan'

/** Title at the left, whom it is for and the day at the right; without a day, room to write it. */
export function head(title: string, whom: string, date: string | null, look: Look, width: number): Block {
  const small: Look = { size: look.size * 0.56, ink: 'ink2', lead: 1.4 }
  const right = 140
  const day =
    date === null
      ? beside(
          [
            [0, paragraph('Date', small, 40)],
            [34, stack(rule(right - 34, 1, 'ink3'), 3)],
          ],
          true,
        )
      : paragraph(date, small, right, { most: 1, side: 'end' })
  return stack(
    beside(
      [
        [0, heading(balanced(title, { ...look, weight: 600, lead: 1.2 }, width - right - 24, 2))],
        [width - right, stack(paragraph(whom, small, right, { most: 1, side: 'end' }), day)],
      ],
      true,
    ),
    7,
    rule(width, 2, 'ink'),
  )
}

/** Places to sign. */
export function foot(names: readonly string[], left: string, right: string, width: number): Block {
  const look: Look = { size: 10.8, ink: 'ink2' }
  const gap = 24
  const each = (width - gap * (names.length - 1)) / names.length
  const half = width / 2
  return stack(
    beside(names.map((name, i) => [i * (each + gap), stack(rule(each, 1, 'ink'), 2, paragraph(name, look, each))])),
    5,
    beside([
      [0, paragraph(left, look, half, { most: 1 })],
      [half, paragraph(right, look, half, { most: 1, side: 'end' })],
    ]),
  )
}

const MARK: Readonly<Record<'danger' | 'caution' | 'note', ReactNode>> = {
  danger: (
    <path
      d="M-3.8 -8.5h7.6l4.7 4.7v7.6l-4.7 4.7h-7.6l-4.7 -4.7v-7.6zM-1 -5h2v6h-2zM-1 3h2v2h-2z"
      fill="var(--alarm)"
      fillRule="evenodd"
    />
  ),
  caution: <path d="M0 -8.5L9.5 7.5H-9.5zM-1 -3.6h2v5.4h-2zM-1 3.4h2v2h-2z" fill="var(--ink)" fillRule="evenodd" />,
  note: (
    <path
      d="M-8 0a8 8 0 1 0 16 0a8 8 0 1 0 -16 0M0 -1.5v5.5M0 -5v2"
      fill="none"
      stroke="var(--ink)"
      strokeWidth={1.5}
    />
  ),
}

/** Octagon, triangle or circle: shape tells how much it matters, in grey too. */
const mark = (severity: 'danger' | 'caution' | 'note', size: number): Block => ({
  height: size,
  at: (x, y) => (
    <Picture label={severity}>
      <g transform={`translate(${x + size / 2} ${y + size / 2}) scale(${size / 20})`}>{MARK[severity]}</g>
    </Picture>
  ),
})

/** A sentence with its mark before it. */
export const marked = (severity: 'danger' | 'caution' | 'note', text: string, look: Look, width: number): Block =>
  beside([
    [0, mark(severity, 17)],
    [26, paragraph(text, look, width - 26, { most: 4 })],
  ])
