import { memo } from 'react'
import { Unspoken } from '../../marks/Group.tsx'
import { patternFill } from '../../patterns/ChartPatterns.tsx'
import type { Scene } from '../scene.ts'
import type { ShaftBar } from '../shafts-geometry.ts'

/** The open zigzag that says a bar goes on beyond the frame. */
function breakLine({ x, width, top }: ShaftBar): string {
  const step = width / 4
  return `M${x - 3} ${top + 3}L${x + step} ${top - 2}L${x + 2 * step} ${top + 3}L${x + 3 * step} ${top - 2}L${x + width + 3} ${top + 3}`
}

const outline = ({ x, width, top, bottom, cut }: ShaftBar): string =>
  cut ? `M${x} ${top}V${bottom}H${x + width}V${top}` : `M${x} ${top}H${x + width}V${bottom}H${x}Z`

/** What does not move of the bars: ground, the limit lines running out to their names. */
export const ShaftGrounds = memo(function ShaftGrounds({ scene }: { readonly scene: Scene }) {
  const { shafts, frame } = scene
  return (
    <Unspoken>
      {shafts.map(bar => (
        <g key={bar.id}>
          <rect
            className="moves"
            x={bar.x}
            y={bar.top}
            width={bar.width}
            height={bar.bottom - bar.top}
            fill="var(--sheet)"
          />
          {bar.cut || bar.spare === null || bar.absent !== null ? null : (
            <path
              className="moves"
              d={`M${bar.x + bar.width} ${bar.top}H${frame.names.x + 5}`}
              stroke="var(--rule)"
              fill="none"
            />
          )}
        </g>
      ))}
    </Unspoken>
  )
})

interface ShaftFillsProps {
  readonly scene: Scene
  readonly patterns: string
  /** px of the wheel position. */
  readonly y: number
}

/** How far each shaft is used at the wheel position. */
export function ShaftFills({ scene, patterns, y }: ShaftFillsProps) {
  return scene.shafts.map(bar => {
    const top = Math.max(y, bar.top)
    if (bar.absent !== null || top >= bar.bottom) return null
    return (
      <g key={bar.id}>
        <rect x={bar.x} y={top} width={bar.width} height={bar.bottom - top} fill={patternFill(patterns, bar.fill)} />
        <path d={`M${bar.x} ${top}h${bar.width}`} stroke={`var(--${bar.ink})`} strokeWidth="2.5" />
      </g>
    )
  })
}

/** Outlines and ticks, over the fills. */
export const ShaftOutlines = memo(function ShaftOutlines({ scene }: { readonly scene: Scene }) {
  return (
    <Unspoken>
      {scene.shafts.map(bar => {
        const ink = `var(--${bar.ink})`
        const ticks = bar.ticks.map(({ y, length }) => `M${bar.x + bar.width} ${y.toFixed(1)}h${-length}`).join('')
        return (
          <g key={bar.id} fill="none">
            <path d={ticks} stroke={ink} />
            <path className="moves" d={outline(bar)} stroke={ink} strokeWidth={bar.absent === null ? 1.5 : 1} />
            {bar.cut ? <path d={breakLine(bar)} stroke={ink} strokeWidth="1.25" /> : null}
          </g>
        )
      })}
    </Unspoken>
  )
})
