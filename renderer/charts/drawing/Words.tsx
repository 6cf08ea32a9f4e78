import type { Span } from '../text/span.ts'

interface WordsProps {
  readonly x: number
  readonly y: number
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly spans: readonly Span[]
  /** Draws the sheet around the letters, so that lines below do not run into them. */
  readonly halo?: boolean
}

/** One line of text on the plate. */
export const Words = ({ x, y, anchor = 'start', spans, halo = false }: WordsProps) => (
  <text
    x={x}
    y={y}
    textAnchor={anchor}
    style={halo ? { paintOrder: 'stroke', stroke: 'var(--sheet)', strokeWidth: 4, strokeLinejoin: 'round' } : undefined}
  >
    {spans.map(({ text, size, weight, ink, space, rise }, i) => (
      <tspan
        // biome-ignore lint/suspicious/noArrayIndexKey: runs of one line keep their order
        key={i}
        dx={space === 0 ? undefined : space}
        dy={lift(spans, i, rise)}
        style={{ fontSize: size, fontWeight: weight, fill: `var(--${ink})` }}
      >
        {text}
      </tspan>
    ))}
  </text>
)

/** A tspan's dy counts from the one before it. */
function lift(spans: readonly Span[], i: number, rise: number): number | undefined {
  const dy = (spans[i - 1]?.rise ?? 0) - rise
  return dy === 0 ? undefined : dy
}
