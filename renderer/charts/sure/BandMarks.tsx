import { memo } from 'react'
import { Unspoken } from '../marks/Group.tsx'
import type { Scene } from '../plate/scene.ts'
import type { LineBand } from './bands.ts'

const INKS: Readonly<Record<LineBand['id'], string>> = {
  bump: 'var(--ink)',
  droop: 'var(--ink)',
  engagement: 'var(--stop)',
  static: 'var(--ink)',
}

/** Bands shorter than this say no more than the line itself, px. */
const LEAST = 3

/** A bracket beside the budget bar for each line: from where to where 90 of 100 trials put it. What rests stands beside the sprung weight. */
export const BandMarks = memo(function BandMarks({ scene, bands }: { scene: Scene; bands: readonly LineBand[] }) {
  const { axis, budget, forces } = scene
  const at = (id: LineBand['id']): number =>
    id === 'static' ? forces.x(scene.view.budget.static.sprungWeight) : budget.barX + budget.barWidth + 2.5
  const held = (y: number): number => Math.min(axis.bottom, Math.max(axis.top, y))
  return (
    <Unspoken>
      {bands.map(({ id, low, high }) => {
        const [top, bottom] = [held(axis.y(high)), held(axis.y(low))]
        if (bottom - top < LEAST) return null
        const x = at(id)
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
