import { patternFill } from '../../patterns/ChartPatterns.tsx'
import type { Scene } from '../scene.ts'

interface BudgetBarProps {
  readonly scene: Scene
  readonly patterns: string
}

/** The travel as one bar: engagement zone, coilover zone, droop; ruler ticks at the axis. */
export function BudgetBar({ scene, patterns }: BudgetBarProps) {
  const { frame, axis, travel, budget, ruler } = scene
  const [top, middle, ride, bottom] = [axis.y(travel.bump), axis.y(travel.coiloverEnd), axis.y(0), axis.y(travel.droop)]
  const { barX: x, barWidth: width } = budget
  const ticks = ruler.map(({ y, long }) => `M${frame.budget.x} ${y.toFixed(1)}h${long ? 7 : 4}`).join('')
  return (
    <>
      <path d={ticks} stroke="var(--ink)" fill="none" />
      <rect className="moves" x={x} y={ride} width={width} height={bottom - ride} fill="var(--sheet)" />
      <rect
        className="moves"
        x={x}
        y={middle}
        width={width}
        height={ride - middle}
        fill={patternFill(patterns, 'springs')}
      />
      <rect className="moves" x={x} y={top} width={width} height={middle - top} fill={patternFill(patterns, 'stop')} />
      <rect
        className="moves"
        x={x}
        y={top}
        width={width}
        height={bottom - top}
        fill="none"
        stroke="var(--ink)"
        strokeWidth="1.25"
      />
    </>
  )
}
