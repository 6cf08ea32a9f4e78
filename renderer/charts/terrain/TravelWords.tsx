import { Unspoken } from '../marks/Group.tsx'
import { ChartText } from '../text/ChartText.tsx'
import type { TerrainLabels } from './labels.ts'
import { travelLines } from './travel-lines.ts'
import type { TravelScene } from './travel-scene.ts'

/** The lines across, and every word that stands still. */
export const TravelWords = ({ scene, words }: { readonly scene: TravelScene; readonly words: TerrainLabels }) => (
  <Unspoken>
    {travelLines(scene).map(({ id, y, width, ink, dash, from, to }) => (
      <path key={id} d={`M${from} ${y}H${to}`} stroke={ink} strokeWidth={width} strokeDasharray={dash} />
    ))}
    {words.leaders.map(({ id, from, to }) => (
      <path key={id} d={`M${from.join(' ')}L${to.join(' ')}`} stroke="var(--ink3)" strokeWidth="0.8" fill="none" />
    ))}
    {words.labels.map(label => (
      <ChartText key={label.id} label={label} />
    ))}
  </Unspoken>
)
