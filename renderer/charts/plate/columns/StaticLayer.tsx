import { memo } from 'react'
import { Picture, Unspoken } from '../../marks/Group.tsx'
import { ChartText, HALO } from '../../text/ChartText.tsx'
import { crossLines } from '../cross-lines.ts'
import { demandHeadLabels, headLabels } from '../labels/heads.ts'
import { lineNames } from '../labels/line-names.ts'
import type { Scene } from '../scene.ts'
import { budgetSentence, demandsSentence } from '../sentences.ts'
import { BudgetBar } from './BudgetBar.tsx'
import { DemandBars } from './DemandBars.tsx'

interface LayerProps {
  readonly scene: Scene
  readonly patterns: string
}

/** Zone tints behind everything right of the axis. */
export const ZoneTints = memo(function ZoneTints({ scene }: { readonly scene: Scene }) {
  const { frame, axis, travel } = scene
  const width = frame.names.x - frame.budget.x
  const [top, middle, ride] = [axis.y(travel.bump), axis.y(travel.coiloverEnd), axis.y(0)]
  return (
    <Unspoken>
      <rect className="moves" x={frame.budget.x} y={top} width={width} height={middle - top} fill="var(--stop-z)" />
      <rect className="moves" x={frame.budget.x} y={middle} width={width} height={ride - middle} fill="var(--coil-z)" />
    </Unspoken>
  )
})

/** A tick where each named limit beyond full bump meets the names. */
const limitTicks = ({ axis, frame, travel, view }: Scene): string =>
  Object.values(view.budget.limits)
    .filter(wheel => wheel > travel.bump + 1e-6 && axis.y(wheel) >= axis.top + 4)
    .map(wheel => `M${frame.names.x} ${axis.y(wheel).toFixed(1)}h5`)
    .join('')

/** Column heads but the demands', dividers with their inch ticks, and the names of the lines. */
export const PlateRules = memo(function PlateRules({ scene }: { readonly scene: Scene }) {
  const { frame, ruler } = scene
  const columns = [frame.shafts, frame.forces, ...(frame.demands === null ? [] : [frame.demands]), frame.names]
  const names = lineNames(scene)
  const dividers = columns.map(({ x }) => `M${x} ${frame.head}V${frame.height}`).join('')
  const ticks = columns.flatMap(({ x }) => ruler.map(({ y, long }) => `M${x} ${y.toFixed(1)}h${long ? 6 : 3}`))
  return (
    <Unspoken>
      <path d={`M0 ${frame.head}H${frame.width}${dividers}${ticks.join('')}`} stroke="var(--rule)" fill="none" />
      {headLabels(scene).map(label => (
        <ChartText key={label.id} label={label} />
      ))}
      <path d={limitTicks(scene)} stroke="var(--ink)" fill="none" />
      {names.leaders.map(({ id, from, to }) => (
        <path key={id} d={`M${from.join(' ')}L${to.join(' ')}`} stroke="var(--ink3)" strokeWidth="0.8" fill="none" />
      ))}
      {names.labels.map(label => (
        <ChartText key={label.id} label={label} />
      ))}
    </Unspoken>
  )
})

/** The budget stays where it is while the wheel moves. */
export const BudgetColumn = memo(function BudgetColumn({ scene, patterns }: LayerProps) {
  return (
    <Picture label={budgetSentence(scene)}>
      <BudgetBar scene={scene} patterns={patterns} />
    </Picture>
  )
})

/** So do the demands. */
export const DemandColumn = memo(function DemandColumn({ scene }: { readonly scene: Scene }) {
  const { demands } = scene
  if (demands === null) return null
  return (
    <>
      <Unspoken>
        {demandHeadLabels(scene).map(label => (
          <ChartText key={label.id} label={label} />
        ))}
      </Unspoken>
      <Picture label={demandsSentence(scene)}>
        <DemandBars scene={scene} demands={demands} />
      </Picture>
    </>
  )
})

/** The lines across every column, over what they cross, and the step on the engagement line. */
export const CrossLines = memo(function CrossLines({ scene }: { readonly scene: Scene }) {
  const { forces, axis, frame } = scene
  return (
    <Unspoken>
      {crossLines(scene).map(({ id, y, width, ink, dash, from, to }) => (
        <g key={id}>
          {id === 'other engagement' ? (
            <path className="moves" d={`M${from} ${y}H${to}`} stroke={HALO[scene.groundAt(y)]} strokeWidth="3" />
          ) : null}
          <path
            className="moves"
            data-line={id}
            d={`M${from} ${y}H${to}`}
            stroke={ink}
            strokeWidth={width}
            strokeDasharray={dash}
          />
        </g>
      ))}
      {forces.step === null ? null : (
        <path
          className="moves"
          d={`M${forces.x(forces.step.below)} ${axis.y(forces.step.wheel)}H${forces.x(forces.step.above)}`}
          stroke="var(--ink)"
          strokeWidth="3.5"
        />
      )}
      <path d={`M${frame.budget.x} ${frame.head}V${frame.height}`} stroke="var(--ink)" strokeWidth="1.5" />
    </Unspoken>
  )
})
