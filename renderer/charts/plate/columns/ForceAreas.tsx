import { memo } from 'react'
import { Unspoken } from '../../marks/Group.tsx'
import { patternFill } from '../../patterns/ChartPatterns.tsx'
import { OTHER_DASH } from '../cross-lines.ts'
import type { Scene } from '../scene.ts'

interface ForceAreasProps {
  readonly scene: Scene
  readonly patterns: string
}

/** Force against wheel travel: springs, gas and stop stacked, the slow total, the band up to fast gas, the other setup as a ghost. */
export const ForceAreas = memo(function ForceAreas({ scene, patterns }: ForceAreasProps) {
  const { forces, axis, travel, foot } = scene
  const { paths, ticks, x } = forces
  const top = axis.y(travel.bump)
  const grid = ticks
    .filter(force => force > 0)
    .map(force => `M${x(force).toFixed(1)} ${top.toFixed(1)}V${foot.toFixed(1)}`)
  const marks = ticks.map(force => `M${x(force).toFixed(1)} ${foot.toFixed(1)}v5`)
  return (
    <Unspoken>
      <path d={grid.join('')} stroke="var(--hair)" fill="none" />
      <path className="moves" d={paths.springs} fill={patternFill(patterns, 'springs')} />
      <path className="moves" d={paths.gas} fill={patternFill(patterns, 'gas')} />
      <path className="moves" d={paths.stop} fill={patternFill(patterns, 'stop')} />
      <path className="moves" d={paths.band} fill="var(--sheet)" />
      <path className="moves" d={paths.band} fill={patternFill(patterns, 'band')} />
      <path className="moves" d={paths.springsEdge} fill="none" stroke="var(--coil)" strokeWidth="1.25" />
      <path className="moves" d={paths.fast} fill="none" stroke="var(--stop)" />
      <path className="moves" d={paths.ghost} fill="none" stroke="var(--sheet)" strokeWidth="3.5" />
      <path
        className="moves"
        d={paths.ghost}
        fill="none"
        stroke="var(--ink)"
        strokeWidth="1.25"
        strokeDasharray={OTHER_DASH}
      />
      <path className="moves" d={paths.slow} fill="none" stroke="var(--ink)" strokeWidth="2" strokeLinejoin="round" />
      <path d={`M${x(0)} ${top}V${foot}${marks.join('')}`} stroke="var(--ink)" fill="none" />
    </Unspoken>
  )
})
