import { memo } from 'react'
import { Picture, Unspoken } from '../marks/Group.tsx'
import { patternFill } from '../patterns/ChartPatterns.tsx'
import { OTHER_DASH } from '../plate/cross-lines.ts'
import { forcesSentence, traceSentence } from './sentences.ts'
import { areaPath, linePath } from './signal-path.ts'
import type { TerrainScene } from './terrain-scene.ts'

interface TracesProps {
  readonly scene: TerrainScene
  readonly patterns: string
  /** The terrain's name. */
  readonly subject: string
}

/** Road, wheel position and forces over time. */
export const TerrainTraces = memo(function TerrainTraces({ scene, patterns, subject }: TracesProps) {
  const { shown, other, road, frame, forces, axis, travel, time } = scene
  const zero = forces.y(0)
  const stops = {
    shown: scene.view.shown.model.corner.stop !== null,
    other: scene.view.other?.model.corner.stop != null,
  }
  return (
    <>
      <Unspoken>
        <path d={areaPath(road, frame.road.bottom + 2)} fill="var(--metal)" />
        <path d={linePath(road)} stroke="var(--ink3)" fill="none" strokeLinejoin="round" />
      </Unspoken>
      <Picture label={traceSentence(scene, subject)}>
        {other === null ? null : (
          <path
            d={linePath(other.wheel)}
            stroke="var(--ink2)"
            strokeWidth="1.1"
            strokeDasharray={OTHER_DASH}
            fill="none"
          />
        )}
        {shown === null ? null : (
          <>
            <path d={linePath(shown.wheel)} stroke="var(--ink)" strokeWidth="1.5" fill="none" strokeLinejoin="round" />
            {shown.bottoms.map(at => (
              <path key={at} d={`M${time.x(at) - 4} ${axis.y(travel.bump) - 2.5}h8l-4 -7z`} fill="var(--alarm)" />
            ))}
          </>
        )}
      </Picture>
      <Picture label={forcesSentence(scene)}>
        {other === null ? null : (
          <>
            <path
              d={linePath(other.suspension)}
              stroke="var(--ink2)"
              strokeWidth="1.1"
              strokeDasharray={OTHER_DASH}
              fill="none"
            />
            {stops.other ? (
              <path
                d={linePath(other.stop)}
                stroke="var(--stop)"
                strokeWidth="1.1"
                strokeDasharray={OTHER_DASH}
                fill="none"
              />
            ) : null}
          </>
        )}
        {shown === null ? null : (
          <>
            {stops.shown ? (
              <path
                d={areaPath(shown.stop, zero)}
                fill={patternFill(patterns, 'stop')}
                stroke="var(--stop)"
                strokeLinejoin="round"
              />
            ) : null}
            <path
              d={linePath(shown.suspension)}
              stroke="var(--ink)"
              strokeWidth="1.5"
              fill="none"
              strokeLinejoin="round"
            />
            {shown.clipped.map(at => (
              <path
                key={at}
                d={`M${time.x(at) - 4} ${frame.forces.top + 5}l4 -6l4 6`}
                stroke="var(--alarm)"
                strokeWidth="1.5"
                fill="none"
              />
            ))}
          </>
        )}
      </Picture>
    </>
  )
})
