import { balancedOn, type DemandsGeometry } from '../demands-geometry.ts'
import type { Scene } from '../scene.ts'

interface DemandBarsProps {
  readonly scene: Scene
  readonly demands: DemandsGeometry
}

const LEAST = 1.5

/** Each load as a span from where the wheel stands to where the load holds it, only outlined while it is not counted; together in solid ink, with what is left above it. */
export function DemandBars({ scene, demands }: DemandBarsProps) {
  const { axis, travel, view } = scene
  const balanced = balancedOn(demands, view.demands?.balance ?? null, axis, travel)
  return (
    <>
      {demands.bars.map(({ span, together, x, width, top, bottom }) => (
        <rect
          key={span.id}
          className="moves"
          x={x}
          y={bottom - top < LEAST ? top - LEAST / 2 : top}
          width={width}
          height={Math.max(LEAST, bottom - top)}
          fill={together ? 'var(--ink)' : span.counted ? 'var(--metal2)' : 'none'}
          stroke={span.counted ? 'var(--ink)' : 'var(--ink3)'}
          strokeWidth="1.25"
        />
      ))}
      {balanced === null ? null : (
        <path
          className="moves"
          d={`M${balanced.bar.centre} ${balanced.end}V${balanced.line}M${balanced.bar.centre - 5} ${balanced.end}h10`}
          stroke="var(--ink)"
          strokeWidth="1.25"
          fill="none"
        />
      )}
    </>
  )
}
