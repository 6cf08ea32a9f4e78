import { memo } from 'react'
import { Picture } from '../marks/Group.tsx'
import { patternFill } from '../patterns/ChartPatterns.tsx'
import { OTHER_DASH } from '../plate/cross-lines.ts'
import { HALO } from '../text/ChartText.tsx'
import { cutBars, stepsPath, zonePath } from './histogram-geometry.ts'
import { histogramSentence } from './sentences.ts'
import type { TravelScene } from './travel-scene.ts'

interface HistogramProps {
  readonly scene: TravelScene
  readonly patterns: string
}

/** Time spent at each height, on the same axis as the trace. */
export const TerrainHistogram = memo(function TerrainHistogram({ scene, patterns }: HistogramProps) {
  const { shown, other, axis, histogram, travel, frame } = scene
  const zone = (name: 'droop' | 'coilover' | 'engagement'): string =>
    shown === null ? '' : zonePath(shown.bars, name, travel.engagement, axis, histogram)
  const end = histogram.x(histogram.cap)
  return (
    <Picture label={histogramSentence(scene)}>
      {shown === null ? null : (
        <>
          <path d={zone('droop')} fill="var(--metal)" />
          <path d={zone('coilover')} fill={patternFill(patterns, 'springs')} />
          <path d={zone('engagement')} fill={patternFill(patterns, 'stop')} />
          <path d={stepsPath(shown.bars, axis, histogram)} stroke="var(--ink)" strokeWidth="1.1" fill="none" />
          {cutBars(shown.bars, histogram).map(({ from, to }) => (
            <path
              key={from}
              d={`M${end - 7} ${axis.y(from) + 2}l4 ${axis.y(to) - axis.y(from) - 4}M${end - 3} ${axis.y(from) + 2}l4 ${axis.y(to) - axis.y(from) - 4}`}
              stroke={HALO.sheet}
              strokeWidth="1.5"
            />
          ))}
        </>
      )}
      {other === null ? null : (
        <path
          d={stepsPath(other.bars, axis, histogram)}
          stroke="var(--ink2)"
          strokeWidth="1.1"
          strokeDasharray={OTHER_DASH}
          fill="none"
        />
      )}
      <path d={`M${frame.histogram.x} ${axis.y(travel.bump)}V${axis.y(travel.droop)}`} stroke="var(--rule)" />
    </Picture>
  )
})
