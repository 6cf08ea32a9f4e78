import { memo } from 'react'
import { HALO, Spans, sameSpans } from '../text/ChartText.tsx'
import type { Span } from '../text/span.ts'

interface WordsProps {
  readonly x: number
  readonly y: number
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly spans: readonly Span[]
}

/** One line of text in the drawing; the sheet goes around all its letters first, so that lines below do not run into them. */
export const Words = memo(
  function Words({ x, y, anchor = 'start', spans }: WordsProps) {
    return (
      <>
        <text x={x} y={y} textAnchor={anchor} fill="none" stroke={HALO.sheet} strokeWidth={4} strokeLinejoin="round">
          <Spans spans={spans} inked={false} />
        </text>
        <text x={x} y={y} textAnchor={anchor}>
          <Spans spans={spans} />
        </text>
      </>
    )
  },
  (a, b) => a.x === b.x && a.y === b.y && a.anchor === b.anchor && sameSpans(a.spans, b.spans),
)
