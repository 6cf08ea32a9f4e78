import { lineAscent, lineDescent, lineWidth, type MeasureText, type Span } from '../text/span.ts'
import type { Box } from './box.ts'

export type Anchor = 'start' | 'middle' | 'end'
/** What lies under a label, so that its halo can match. */
export type Ground = 'sheet' | 'coil' | 'stop'

/** One placed line of text. */
export interface Label {
  readonly id: string
  readonly x: number
  /** Of the baseline. */
  readonly y: number
  readonly anchor: Anchor
  readonly ground: Ground
  readonly spans: readonly Span[]
  readonly box: Box
}

/** Lines of text set as one block. */
export interface Block {
  readonly width: number
  readonly height: number
  readonly lines: readonly {
    readonly spans: readonly Span[]
    readonly baseline: number
    readonly top: number
    readonly bottom: number
    readonly width: number
  }[]
}

const LEADING = 3

export function block(lines: readonly (readonly Span[])[], measure: MeasureText): Block {
  const set: Block['lines'][number][] = []
  let y = 0
  for (const spans of lines) {
    const top = set.length === 0 ? 0 : y + LEADING
    const baseline = top + lineAscent(spans)
    const bottom = baseline + lineDescent(spans)
    set.push({ spans, baseline, top, bottom, width: lineWidth(spans, measure) })
    y = bottom
  }
  return { width: Math.max(0, ...set.map(line => line.width)), height: y, lines: set }
}

const leftOf = (x: number, width: number, anchor: Anchor): number =>
  anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2

/** The box a block fills when it hangs at `x` with its top at `y`. */
export const blockBox = ({ width, height }: Block, x: number, y: number, anchor: Anchor): Box => ({
  x: leftOf(x, width, anchor),
  y,
  width,
  height,
})

/** The box of a block whose first baseline is at `y`. */
export const baselineBox = (text: Block, x: number, y: number, anchor: Anchor): Box =>
  blockBox(text, x, y - (text.lines[0]?.baseline ?? 0), anchor)

/** The labels of a block placed in `box`. */
export const blockLabels = (id: string, text: Block, box: Box, anchor: Anchor, ground: Ground): Label[] =>
  text.lines.map(({ spans, baseline, top, bottom, width }, index) => {
    const x = anchor === 'start' ? box.x : anchor === 'end' ? box.x + box.width : box.x + box.width / 2
    return {
      id: index === 0 ? id : `${id}-${index + 1}`,
      x,
      y: box.y + baseline,
      anchor,
      ground,
      spans,
      box: { x: leftOf(x, width, anchor), y: box.y + top, width, height: bottom - top },
    }
  })
