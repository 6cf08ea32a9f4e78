import { memo } from 'react'
import { LOOKS, type Look, type Shape } from './look.ts'

interface InkedProps {
  readonly look: Look
  readonly d: string
  readonly width: number | undefined
  readonly className: string | undefined
}

/** Most of what an edit leaves where it is, React leaves alone. */
const Inked = memo(function Inked({ look, d, width, className }: InkedProps) {
  return (
    <path
      className={className}
      d={d}
      style={width === undefined ? LOOKS[look] : { ...LOOKS[look], strokeWidth: width }}
    />
  )
})

/** Shapes as paths, in order. What an edit adds or takes away is drawn in its place, and those after it in theirs. */
export const Shapes = ({ shapes, className }: { readonly shapes: readonly Shape[]; readonly className?: string }) =>
  shapes.map(({ look, d, width }, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a shape has no name but its place among the others
    <Inked key={i} className={className} look={look} d={d} width={width} />
  ))
