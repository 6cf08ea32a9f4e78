import { memo } from 'react'
import type { Label } from '../placement/label.ts'
import type { Span } from './span.ts'

/** Spans on one baseline; a raised span takes the following ones back down. */
export function Spans({ spans, inked = true }: { readonly spans: readonly Span[]; readonly inked?: boolean }) {
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
}

/** Colour of the plate under a label. */
export const HALO = { sheet: 'var(--sheet)', coil: 'var(--coil-z)', stop: 'var(--stop-z)' } as const

const sameSpan = (a: Span, b: Span | undefined): boolean =>
  b !== undefined &&
  a.text === b.text &&
  a.size === b.size &&
  a.weight === b.weight &&
  a.ink === b.ink &&
  a.space === b.space &&
  a.rise === b.rise

const sameLabel = ({ label: a }: { readonly label: Label }, { label: b }: { readonly label: Label }): boolean =>
  a.x === b.x &&
  a.y === b.y &&
  a.anchor === b.anchor &&
  a.ground === b.ground &&
  a.spans.length === b.spans.length &&
  a.spans.every((part, index) => sameSpan(part, b.spans[index]))

/** One placed line of text, with a halo in the colour of its ground. */
export const ChartText = memo(function ChartText({ label }: { readonly label: Label }) {
  const { x, y, anchor, ground, spans } = label
  const place = { x: Math.round(x * 10) / 10, y: Math.round(y * 10) / 10, textAnchor: anchor, xmlSpace: 'preserve' }
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
