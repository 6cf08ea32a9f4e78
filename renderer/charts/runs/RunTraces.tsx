import { memo } from 'react'
import { Picture, Unspoken } from '../marks/Group.tsx'
import { OTHER_DASH } from '../plate/cross-lines.ts'
import { stepsPath } from '../terrain/histogram-geometry.ts'
import { linePath } from '../terrain/signal-path.ts'
import type { RunScene } from './run-scene.ts'
import { runTraceSentence, speedSentence } from './run-sentences.ts'

const joined = (pieces: RunDrawingPieces): string => pieces.map(linePath).join('')
type RunDrawingPieces = NonNullable<RunScene['shown']>['wheel']

/** What was recorded of the wheel over time, the shaft's speed under it, and how often each speed came. */
export const RunTraces = memo(function RunTraces({ scene }: { readonly scene: RunScene }) {
  const { shown, other, frame, axis, travel, time, speeds, speedShares } = scene
  const strip = frame.forces
  return (
    <>
      <Unspoken>
        {shown?.gaps.map(({ from, to }) => (
          <g key={from}>
            <rect
              x={from}
              y={frame.head}
              width={Math.max(1, to - from)}
              height={strip.bottom - frame.head}
              fill="var(--ground)"
            />
            {to - from > 30 ? (
              <text
                x={(from + to) / 2}
                y={strip.bottom - 5}
                textAnchor="middle"
                fontSize={frame.type.axis}
                fill="var(--ink2)"
              >
                gap
              </text>
            ) : null}
          </g>
        ))}
      </Unspoken>
      <Picture label={runTraceSentence(scene)}>
        {other === null ? null : (
          <path
            d={joined(other.wheel)}
            stroke="var(--ink2)"
            strokeWidth="1.1"
            strokeDasharray={OTHER_DASH}
            fill="none"
          />
        )}
        {shown === null ? null : (
          <>
            <path d={joined(shown.wheel)} stroke="var(--ink)" strokeWidth="1.5" fill="none" strokeLinejoin="round" />
            {travel.engagement === null
              ? null
              : shown.hits.map(at => (
                  <path
                    key={at}
                    d={`M${time.x(at)} ${axis.y(travel.engagement!) - 5}v10`}
                    stroke="var(--stop)"
                    strokeWidth="1.5"
                  />
                ))}
            {shown.bottoms.map(at => (
              <path key={at} d={`M${time.x(at) - 4} ${axis.y(travel.bump) - 2.5}h8l-4 -7z`} fill="var(--alarm)" />
            ))}
          </>
        )}
      </Picture>
      <Picture label={speedSentence(scene)}>
        {other === null ? null : (
          <>
            <path
              d={joined(other.speed)}
              stroke="var(--ink2)"
              strokeWidth="1.1"
              strokeDasharray={OTHER_DASH}
              fill="none"
            />
            <path
              d={stepsPath(other.speedBars, speeds, speedShares)}
              stroke="var(--ink2)"
              strokeWidth="1.1"
              strokeDasharray={OTHER_DASH}
              fill="none"
            />
          </>
        )}
        {shown === null ? null : (
          <>
            <path d={joined(shown.speed)} stroke="var(--ink)" strokeWidth="1.1" fill="none" strokeLinejoin="round" />
            <path
              d={`${stepsPath(shown.speedBars, speeds, speedShares)}z`}
              fill="var(--metal)"
              stroke="var(--ink)"
              strokeWidth="1.1"
            />
          </>
        )}
      </Picture>
    </>
  )
})
