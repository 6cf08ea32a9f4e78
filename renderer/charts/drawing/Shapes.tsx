import { LOOKS, type Shape } from './look.ts'

/** Shapes as paths, in order. Their order is fixed by the figure, so a path's place in it is its identity. */
export const Shapes = ({ shapes, className }: { readonly shapes: readonly Shape[]; readonly className?: string }) =>
  shapes.map((shape, i) => (
    <path
      // biome-ignore lint/suspicious/noArrayIndexKey: layers keep their order
      key={i}
      className={className}
      d={shape.d}
      style={shape.width === undefined ? LOOKS[shape.look] : { ...LOOKS[shape.look], strokeWidth: shape.width }}
    />
  ))
