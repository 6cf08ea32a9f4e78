import { useMemo } from 'react'
import type { Axle } from '../../../core/plan/schema.ts'
import { CornerDrawing } from '../drawing/CornerDrawing.tsx'
import { ChartPatterns } from '../patterns/ChartPatterns.tsx'
import { type Room, useRoom } from '../plate/use-room.ts'
import { ScrubAreas } from '../terrain/ScrubAreas.tsx'
import { TerrainHistogram } from '../terrain/TerrainHistogram.tsx'
import { TerrainTints } from '../terrain/TerrainLayers.tsx'
import { WheelTag } from '../terrain/TimeCursor.tsx'
import { useScrub } from '../terrain/use-scrub.ts'
import { useTimeWindow } from '../terrain/use-time-window.ts'
import { canvasMeasure } from '../text/measure-text.ts'
import { RunCursor } from './RunCursor.tsx'
import { RunOverview, RunRules, RunWords } from './RunLayers.tsx'
import { RunTraces } from './RunTraces.tsx'
import { wheelIn } from './run-reading.ts'
import { type RunView, runScene, timesOf } from './run-scene.ts'

export interface RunPlateProps {
  readonly axle: Axle
  readonly view: RunView
  /** What the run is called. */
  readonly subject: string
  /** The moment shown, s of the run's own time. */
  readonly time: number
  readonly onTime: (time: number) => void
  readonly onPlay: () => void
}

/** Drawing, trace, shaft speed and histograms of a recorded run on the wheel travel axis, as large as its parent. */
export function RunPlate(props: RunPlateProps) {
  const { host, room } = useRoom()
  return (
    <div className="terrain-plate" ref={host}>
      {room === null ? null : <RunDrawing {...props} {...room} />}
    </div>
  )
}

const PATTERNS = 'run'

function RunDrawing({ axle, view, subject, time, onTime, onPlay, size, family }: RunPlateProps & Room) {
  const measure = useMemo(() => canvasMeasure(family), [family])
  const { laid, model, budget } = view.shown
  const { start, end } = laid === null ? { start: 0, end: 0 } : timesOf(laid.run)
  const part = useTimeWindow(end - start, time - start)
  const [from, to] = [part.from + start, part.to + start]
  const scene = useMemo(
    () => runScene(view, { from, to }, size.width, size.height, measure),
    [view, from, to, size, measure],
  )
  const { frame, axis, duration } = scene
  const wheel = Math.min(model.bump, Math.max(model.droop, wheelIn(view, time) ?? 0))
  const scrub = useScrub(scene, start, onTime)
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be drawn in
    <svg
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="group"
      aria-label={`${subject} over ${axle.id}: drawing, wheel position and shaft speed over time, time spent at each height`}
      {...scrub}
    >
      <ChartPatterns prefix={PATTERNS} />
      <TerrainTints scene={scene} />
      <CornerDrawing
        axle={axle}
        model={model}
        budget={budget}
        other={null}
        wheel={wheel}
        system={view.system}
        x={frame.corner.x}
        width={frame.corner.width}
        head={frame.head}
        height={frame.height}
        axisY={axis.y}
        small={frame.small}
      />
      <RunRules scene={scene} />
      <TerrainHistogram scene={scene} patterns={PATTERNS} />
      <RunTraces scene={scene} />
      <RunWords scene={scene} subject={subject} />
      <RunOverview scene={scene} />
      {duration > 0 ? (
        <>
          <ScrubAreas scene={scene} />
          <g data-scrub="trace">
            <RunCursor scene={scene} time={time} onTime={onTime} onPlay={onPlay} />
          </g>
          <WheelTag scene={scene} wheel={wheel} />
        </>
      ) : null}
    </svg>
  )
}
