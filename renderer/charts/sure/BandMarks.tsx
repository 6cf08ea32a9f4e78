import { memo } from 'react'
import { Unspoken } from '../marks/Group.tsx'
import { type DemandsGeometry, lastCounted } from '../plate/demands-geometry.ts'
import type { Scene } from '../plate/scene.ts'
import type { LineBand } from './bands.ts'

const INKS: Readonly<Record<LineBand['id'], string>> = {
  bump: 'var(--ink)',
  droop: 'var(--ink)',
  engagement: 'var(--stop)',
  static: 'var(--ink)',
  loaded: 'var(--ink)',
}

/** Bands shorter than this say no more than the line itself, px. */
const LEAST = 3

interface BandMarksProps {
  readonly scene: Scene
  readonly demands: DemandsGeometry | null
  readonly bands: readonly LineBand[]
}

/** A bracket beside the budget bar for each line: from where to where 90 of 100 trials put it. What rests stands beside the sprung weight, what is loaded beside its bar. */
export const BandMarks = memo(function BandMarks({ scene, demands, bands }: BandMarksProps) {
  const { axis, budget, forces } = scene
  const last = demands === null ? undefined : lastCounted(demands)
  const at = (id: LineBand['id']): number | null => {
    if (id === 'loaded') return last === undefined ? null : last.x + last.width + 1.5
    return id === 'static' ? forces.x(scene.view.budget.static.sprungWeight) : budget.barX + budget.barWidth + 2.5
  }
  const held = (y: number): number => Math.min(axis.bottom, Math.max(axis.top, y))
  return (
    <Unspoken>
      {bands.map(({ id, low, high }) => {
        const [top, bottom] = [held(axis.y(high)), held(axis.y(low))]
        if (bottom - top < LEAST) return null
        const x = at(id)
        if (x === null) return null
        const end = id === 'static' ? `M${x - 4} ${top}h8M${x - 4} ${bottom}h8` : `M${x} ${top}h4M${x} ${bottom}h4`
        const stem = id === 'static' ? x : x + 4
        return (
          <path
            key={id}
            className="moves"
            d={`${end}M${stem} ${top}V${bottom}`}
            stroke={INKS[id]}
            strokeWidth="1.25"
            fill="none"
          />
        )
      })}
    </Unspoken>
  )
})
