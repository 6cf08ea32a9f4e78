import { Unspoken } from '../../marks/Group.tsx'
import type { Scene } from '../scene.ts'

interface WheelMarksProps {
  readonly scene: Scene
  readonly wheel: number
}

/** The wheel line across every column, and slow and fast force on it. */
export function WheelMarks({ scene, wheel }: WheelMarksProps) {
  const { frame, axis, forces, view } = scene
  const y = axis.y(wheel)
  const [slow, fast] = (['slow', 'fast'] as const).map(law => forces.x(view.model.forces(wheel, law).total))
  return (
    <Unspoken>
      <path d={`M${frame.budget.x} ${y}H${frame.names.x}`} stroke="var(--ink)" strokeWidth="1.25" />
      <circle cx={fast} cy={y} r="3.4" fill="var(--sheet)" stroke="var(--stop)" strokeWidth="1.5" />
      <circle cx={slow} cy={y} r="3.4" fill="var(--sheet)" stroke="var(--ink)" strokeWidth="1.75" />
    </Unspoken>
  )
}

/** The sprung weight at the height the car settles at. */
export function WeightMark({ scene }: { readonly scene: Scene }) {
  const { axis, forces, view } = scene
  const x = forces.x(forces.weight)
  const y = axis.y(view.budget.static.position)
  return (
    <path
      className="moves"
      d={`M${x} ${y - 6}L${x + 5} ${y}L${x} ${y + 6}L${x - 5} ${y}Z`}
      fill="var(--sheet)"
      stroke="var(--ink)"
      strokeWidth="1.5"
    />
  )
}
