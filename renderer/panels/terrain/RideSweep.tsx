import { useMemo } from 'react'
import type { AxleBudget } from '../../../core/budget/results.ts'
import { type System, unitOf } from '../../../core/units/quantity.ts'
import { travelMarks } from '../../charts/plate/travel.ts'
import { SweepChart } from '../../charts/terrain/SweepChart.tsx'
import type { SweepKind, SweepView } from '../../charts/terrain/sweep-geometry.ts'
import type { SweptPoint } from '../../state/terrain-cache.ts'
import type { Sweep, SweptBy } from '../../state/terrain-sweep.ts'

interface Props {
  readonly sweep: Sweep
  readonly swept: readonly (readonly SweptPoint[])[]
  /** Of the setup shown, and of the one it is compared with. */
  readonly names: readonly string[]
  readonly budget: AxleBudget
  readonly otherBudget: AxleBudget | null
  readonly system: System
  /** Whether there is a stop to be on. */
  readonly stop: boolean
}

/** A wheel that bottoms comes to full bump: how far it presses into steel is no travel. */
const held = (points: readonly SweptPoint[], { travel }: AxleBudget): SweptPoint[] =>
  points.map(point => (point.bottoms > 0 ? { ...point, wheelMax: travel.bump } : point))

/** What is drawn for each thing a ride can be swept by. */
const KINDS: Readonly<Record<SweptBy, readonly SweepKind[]>> = {
  drop: ['highest wheel'],
  speed: ['on the stop', 'highest wheel'],
}

const AGAINST = { speed: 'speed', drop: 'height of the drop' } as const

/** The ride at other speeds, or from other heights. */
export function RideSweep({ sweep, swept, names, budget, otherBudget, system, stop }: Props) {
  const [shown = [], other = null] = swept
  const views = useMemo(
    () =>
      KINDS[sweep.by]
        .filter(kind => stop || kind !== 'on the stop')
        .map(
          (kind): SweepView => ({
            kind,
            by: sweep.by,
            present: sweep.present,
            far: sweep.values.at(-1) ?? sweep.present,
            shown: held(shown, budget),
            other: other === null || otherBudget === null ? null : held(other, otherBudget),
            travel: travelMarks(budget),
            system,
          }),
        ),
    [sweep, shown, other, budget, otherBudget, system, stop],
  )
  const against = AGAINST[sweep.by]
  const unit = unitOf(sweep.by === 'drop' ? 'length' : 'speed', system).label
  return (
    <section className="ride-sweep" aria-label={`At other ${sweep.by === 'drop' ? 'heights' : 'speeds'}`}>
      {views.map(view => (
        <figure key={view.kind}>
          <figcaption>
            {view.kind === 'on the stop' ? 'Time on the stop' : 'Highest wheel'}{' '}
            <span>
              by {against}, {unit}
            </span>
          </figcaption>
          <SweepChart view={view} names={names} against={against} />
        </figure>
      ))}
    </section>
  )
}
