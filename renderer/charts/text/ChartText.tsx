import { memo } from 'react'
import type { Label } from '../placement/label.ts'
import type { Span } from './span.ts'

const sameSpan = (a: Span, b: Span | undefined): boolean =>
  b !== undefined &&
  a.text === b.text &&
  a.size === b.size &&
  a.weight === b.weight &&
  a.ink === b.ink &&
  a.space === b.space &&
  a.rise === b.rise

export const sameSpans = (a: readonly Span[], b: readonly Span[]): boolean =>
  a === b || (a.length === b.length && a.every((part, index) => sameSpan(part, b[index])))

interface SpansProps {
  readonly spans: readonly Span[]
  readonly inked?: boolean
}

/** Spans on one baseline; a raised span takes the following ones back down. A line that only moves keeps them as they are. */
export const Spans = memo(
  function Spans({ spans, inked = true }: SpansProps) {
    return spans.map(({ text, size, weight, ink, space, rise }, index) => {
      const lift = (spans[index - 1]?.rise ?? 0) - rise
      return (
        <tspan
          // biome-ignore lint/suspicious/noArrayIndexKey: the spans of a label have no other identity
          key={index}
          dx={space === 0 ? undefined : space}
          dy={lift === 0 ? undefined : lift}
          fontSize={size}
          fontWeight={weight}
          fill={inked ? `var(--${ink})` : undefined}
        >
          {text}
        </tspan>
      )
    })
  },
  (a, b) => a.inked === b.inked && sameSpans(a.spans, b.spans),
)

/** Colour of the plate under a label. */
export const HALO = { sheet: 'var(--sheet)', coil: 'var(--coil-z)', stop: 'var(--stop-z)' } as const

/** Where a label is drawn, px: a tenth of one is not seen. */
const drawnAt = (length: number): number => Math.round(length * 10) / 10

const sameLabel = ({ label: a }: { readonly label: Label }, { label: b }: { readonly label: Label }): boolean =>
  drawnAt(a.x) === drawnAt(b.x) &&
  drawnAt(a.y) === drawnAt(b.y) &&
  a.anchor === b.anchor &&
  a.ground === b.ground &&
  sameSpans(a.spans, b.spans)

/** One placed line of text, with a halo in the colour of its ground. */
export const ChartText = memo(function ChartText({ label }: { readonly label: Label }) {
  const { x, y, anchor, ground, spans } = label
  const place = { x: drawnAt(x), y: drawnAt(y), textAnchor: anchor, xmlSpace: 'preserve' }
  const halo = { stroke: HALO[ground], strokeWidth: 4, strokeLinejoin: 'round', paintOrder: 'stroke' } as const
  if (spans.length === 1)
    return (
      <text {...place} {...halo}>
        <Spans spans={spans} />
      </text>
    )
  // The halo goes under the whole line first: one span's would eat into its neighbour.
  return (
    <>
      <text {...place} {...halo} fill="none">
        <Spans spans={spans} inked={false} />
      </text>
      <text {...place}>
        <Spans spans={spans} />
      </text>
    </>
  )
}, sameLabel)
