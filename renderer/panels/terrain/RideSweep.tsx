import { useMemo } from 'react'
import type { AxleBudget } from '../../../core/budget/results.ts'
import type { System } from '../../../core/units/quantity.ts'
import { travelMarks } from '../../charts/plate/travel.ts'
import { SweepChart } from '../../charts/terrain/SweepChart.tsx'
import type { SweepKind, SweepView } from '../../charts/terrain/sweep-geometry.ts'
import type { SweptPoint } from '../../state/terrain-cache.ts'
import type { Sweep } from '../../state/terrain-sweep.ts'

interface Props {
  readonly sweep: Sweep
  readonly swept: readonly (readonly SweptPoint[])[]
  /** Of the setup shown, and of the one it is compared with. */
  readonly names: readonly string[]
  readonly budget: AxleBudget
  readonly system: System
}

const AGAINST = { speed: 'speed', drop: 'height of the drop' } as const

/** The ride at other speeds, or from other heights. */
export function RideSweep({ sweep, swept, names, budget, system }: Props) {
  const [shown = [], other = null] = swept
  const kinds: readonly SweepKind[] = sweep.by === 'drop' ? ['highest wheel'] : ['on the stop', 'highest wheel']
  const views = useMemo(
    () =>
      kinds.map(
        (kind): SweepView => ({
          kind,
          by: sweep.by,
          present: sweep.present,
          far: sweep.values.at(-1) ?? sweep.present,
          shown,
          other,
          travel: travelMarks(budget),
          system,
        }),
      ),
    [kinds, sweep, shown, other, budget, system],
  )
  const against = AGAINST[sweep.by]
  return (
    <section className="ride-sweep" aria-label={`At other ${sweep.by === 'drop' ? 'heights' : 'speeds'}`}>
      {views.map(view => (
        <figure key={view.kind}>
          <figcaption>
            {view.kind === 'on the stop' ? 'Time on the stop' : 'Highest wheel'} <span>by {against}</span>
          </figcaption>
          <SweepChart view={view} names={names} against={against} />
        </figure>
      ))}
    </section>
  )
}
