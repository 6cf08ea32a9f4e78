import { memo } from 'react'
import type { Box } from '../../placement/box.ts'
import { type DemandActions, type HeadLink, rollLink } from '../demand-controls.ts'
import { type DemandBar, LEAST_PITCH } from '../demands-geometry.ts'
import type { Scene } from '../scene.ts'
import { demandSentence } from '../sentences.ts'
import { Press } from './Press.tsx'

/** A line under a name; through it while the load is not counted. */
function NameLine({ bar, baseline, size }: { bar: DemandBar; baseline: number; size: number }) {
  const y = bar.span.counted ? baseline + 3 : baseline - size * 0.32
  return (
    <path
      className="press-line"
      d={`M${bar.nameX - bar.nameWidth / 2} ${y}h${bar.nameWidth}`}
      stroke="var(--ink3)"
      strokeWidth={bar.span.counted ? 0.8 : 1.1}
    />
  )
}

const Link = ({ link }: { link: HeadLink }) => (
  <>
    <text x={link.x} y={link.y} textAnchor="end" fontSize={link.size} fill="var(--ink)">
      {link.words}
    </text>
    <path
      className="press-line"
      d={`M${link.x - link.width} ${link.y + 3}h${link.width}`}
      stroke="var(--ink3)"
      strokeWidth="0.8"
    />
  </>
)

/** As high as a finger needs, around lines of words. */
function around(lines: readonly Box[]): Box {
  const [left, right] = [Math.min(...lines.map(({ x }) => x)), Math.max(...lines.map(({ x, width }) => x + width))]
  const [top, bottom] = [Math.min(...lines.map(({ y }) => y)), Math.max(...lines.map(({ y, height }) => y + height))]
  const more = Math.max(4, (LEAST_PITCH - (bottom - top)) / 2)
  return { x: left - 4, y: top - more, width: right - left + 8, height: bottom - top + 2 * more }
}

interface DemandControlsProps {
  readonly scene: Scene
  /** Lines of words to begin with usual loads. */
  readonly offer: readonly Box[]
  readonly actions: DemandActions
}

/** Loads switched on and off by their names and edited by their bars, right where they stand: stepped by key, dragged, or pressed for the field. */
export const DemandControls = memo(function DemandControls({ scene, offer, actions }: DemandControlsProps) {
  const { demands, frame } = scene
  if (demands === null) return null
  const link = rollLink(scene)
  return (
    <>
      {link === null ? null : (
        <Press label="Axle in roll" reach={link.reach} onPress={actions.roll}>
          <Link link={link} />
        </Press>
      )}
      {demands.bars.map(bar =>
        bar.together ? null : (
          <g key={bar.span.id}>
            <Press
              label={`Count ${bar.span.label} among the demands`}
              reach={bar.nameReach}
              on={bar.span.counted}
              onPress={() => actions.count(bar.span.id, !bar.span.counted)}
            >
              {bar.name === '' ? null : <NameLine bar={bar} baseline={frame.subtitleBaseline} size={frame.type.axis} />}
            </Press>
            <Press
              label={`Edit ${demandSentence(bar.span, scene)}`}
              reach={bar.barReach}
              onPress={() => actions.edit(bar.span.id)}
              onStep={(direction, big, gesture) => actions.step(bar.span.id, direction, big, gesture)}
              onStepped={actions.stepped}
            />
          </g>
        ),
      )}
      {offer.length === 0 ? null : (
        <Press label="Begin with usual loads" reach={around(offer)} onPress={actions.begin}>
          <path
            className="press-line"
            d={offer.map(({ x, y, width, height }) => `M${x} ${y + height}h${width}`).join('')}
            stroke="var(--ink3)"
            strokeWidth="0.8"
          />
        </Press>
      )}
    </>
  )
})
