import { createElement, Fragment, type ReactNode } from 'react'
import { Spans } from '../../charts/text/ChartText.tsx'
import type { Ink, Span } from '../../charts/text/span.ts'
import { broken, cut, type Look, type Run, widthOf } from './lines.ts'

/** Something on a page whose height is known before it is drawn, px. */
export interface Block {
  readonly height: number
  /** Drawn with its upper left corner here. */
  at(x: number, y: number): ReactNode
}

export type Side = 'start' | 'end'

/** Several things one after another. */
const together = (parts: readonly ReactNode[]): ReactNode => createElement(Fragment, null, ...parts)

const rounded = (value: number): number => Math.round(value * 100) / 100

/** Where letters stand in a line of this height, from its top: the font reaches 1.069 of its size above and 0.293 below. */
const baseline = (height: number, size: number): number => height / 2 + 0.388 * size

/** Lines of spans, as high as each says; each span was measured to the width it carries. */
export function written(
  lines: readonly (readonly Span[])[],
  height: number,
  width: number,
  side: Side = 'start',
): Block {
  return {
    height: lines.length * height,
    at: (x, y) =>
      together(
        lines.map((line, i) => (
          <text
            // biome-ignore lint/suspicious/noArrayIndexKey: the lines of a text keep their order
            key={i}
            x={rounded(side === 'start' ? x : x + width)}
            y={rounded(y + i * height + baseline(height, Math.max(0, ...line.map(({ size }) => size))))}
            textAnchor={side === 'start' ? undefined : 'end'}
            data-widths={line.map(({ text, size, weight }) => rounded(widthOf(text, size, weight))).join(' ')}
          >
            <Spans spans={line} />
          </text>
        )),
      ),
  }
}

const LEAD = 1.36

/** Text in lines no wider than `width`, at most so many of them. */
export function paragraph(
  text: string | readonly Run[],
  look: Look,
  width: number,
  { most = Infinity, side = 'start' }: { readonly most?: number; readonly side?: Side } = {},
): Block {
  const lines = broken(typeof text === 'string' ? [{ text }] : text, look, width)
  return written(cut(lines, most, width), look.size * (look.lead ?? LEAD), width, side)
}

/** A heading's lines, as even as they can be: no word stands alone on the last. */
export function balanced(text: string, look: Look, width: number, most: number): Block {
  const count = broken([{ text }], look, width).length
  let [narrow, wide] = [0, width]
  for (let i = 0; count > 1 && i < 8; i += 1) {
    const middle = (narrow + wide) / 2
    if (broken([{ text }], look, middle).length > count) narrow = middle
    else wide = middle
  }
  return paragraph(text, look, wide, { most })
}

/** Blocks below one another; a number is a gap. */
export function stack(...parts: readonly (Block | number)[]): Block {
  const height = parts.reduce<number>((sum, part) => sum + (typeof part === 'number' ? part : part.height), 0)
  return {
    height,
    at: (x, y) => {
      let down = y
      return together(
        parts.map(part => {
          const top = down
          down += typeof part === 'number' ? part : part.height
          return typeof part === 'number' ? null : part.at(x, top)
        }),
      )
    },
  }
}

/** Blocks side by side, each so far from the left; `low`: they stand on one line at the bottom. */
export function beside(parts: readonly (readonly [number, Block])[], low = false): Block {
  const height = Math.max(0, ...parts.map(([, block]) => block.height))
  return {
    height,
    at: (x, y) => together(parts.map(([right, block]) => block.at(x + right, low ? y + height - block.height : y))),
  }
}

export const rule = (width: number, thickness: number, ink: Ink | 'rule'): Block => ({
  height: thickness,
  at: (x, y) => <rect x={rounded(x)} y={rounded(y)} width={rounded(width)} height={thickness} fill={`var(--${ink})`} />,
})

/** A line down, as long as it is told. */
export const upright = (height: number, ink: Ink | 'rule'): Block => ({
  height,
  at: (x, y) => <rect x={rounded(x)} y={rounded(y)} width={1} height={rounded(height)} fill={`var(--${ink})`} />,
})

/** What it is, for whoever hears the page read. */
export interface Said {
  readonly role: 'table' | 'row' | 'columnheader' | 'rowheader' | 'cell' | 'list' | 'listitem'
  readonly name?: string
}

export const said = ({ role, name }: Said, block: Block): Block => ({
  height: block.height,
  at: (x, y) => (
    <g role={role} aria-label={name}>
      {block.at(x, y)}
    </g>
  ),
})

const HEADING = { role: 'heading', 'aria-level': 3 } as const

export const heading = (block: Block): Block => ({
  height: block.height,
  at: (x, y) => <g {...HEADING}>{block.at(x, y)}</g>,
})

/** A block inside a frame, so far from its edge. */
export function framed(block: Block, width: number, padding: number): Block {
  const height = block.height + 2 * padding
  return {
    height,
    at: (x, y) =>
      together([
        <rect
          key="frame"
          x={rounded(x + 0.75)}
          y={rounded(y + 0.75)}
          width={rounded(width - 1.5)}
          height={rounded(height - 1.5)}
          fill="none"
          stroke="var(--ink)"
          strokeWidth={1.5}
        />,
        block.at(x + padding, y + padding),
      ]),
  }
}
