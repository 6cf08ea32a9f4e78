import { useMemo } from 'react'
import type { Finding } from '../../../core/budget/results.ts'
import type { Axle } from '../../../core/plan/schema.ts'
import { CornerDrawing } from '../drawing/CornerDrawing.tsx'
import { ChartPatterns } from '../patterns/ChartPatterns.tsx'
import { FindingMark } from '../plate/FindingMarks.tsx'
import { type Room, useRoom } from '../plate/use-room.ts'
import { canvasMeasure } from '../text/measure-text.ts'
import { momentOf } from './reading.ts'
import { rideMarks } from './ride-marks.ts'
import { ScrubAreas } from './ScrubAreas.tsx'
import { TerrainHistogram } from './TerrainHistogram.tsx'
import { TerrainOverview, TerrainRules, TerrainTints, TerrainWords } from './TerrainLayers.tsx'
import { TerrainTraces } from './TerrainTraces.tsx'
import { TimeCursor, TimeReading, WheelTag } from './TimeCursor.tsx'
import { durationOf, type TerrainView, terrainScene } from './terrain-scene.ts'
import { useScrub } from './use-scrub.ts'
import { useTimeWindow } from './use-time-window.ts'

export interface TerrainPlateProps {
  readonly axle: Axle
  readonly view: TerrainView
  /** The terrain's name. */
  readonly subject: string
  /** The moment shown, s. */
  readonly time: number
  readonly onTime: (time: number) => void
  readonly onPlay: () => void
  readonly findings: readonly Finding[]
  readonly focusedFinding: string | null
  readonly onFocusFinding: (id: string | null) => void
  readonly onTakeFinding: (id: string) => void
}

/** Drawing, trace, forces and histogram of a ride on the wheel travel axis, as large as its parent. */
export function TerrainPlate(props: TerrainPlateProps) {
  const { host, room } = useRoom()
  return (
    <div className="terrain-plate" ref={host}>
      {room === null ? null : <TerrainDrawing {...props} {...room} />}
    </div>
  )
}

const PATTERNS = 'terrain'

function TerrainDrawing(props: TerrainPlateProps & Room) {
  const {
    axle,
    view,
    subject,
    time,
    onTime,
    onPlay,
    findings,
    focusedFinding,
    onFocusFinding,
    onTakeFinding,
    size,
    family,
  } = props
  const measure = useMemo(() => canvasMeasure(family), [family])
  const { from, to } = useTimeWindow(durationOf(view), time)
  const scene = useMemo(
    () => terrainScene(view, { from, to }, size.width, size.height, measure),
    [view, from, to, size, measure],
  )
  const marks = useMemo(() => rideMarks(scene, findings), [scene, findings])
  const { frame, axis, duration } = scene
  const { shown, other, system } = view
  const ridden = duration > 0
  const moment = momentOf(shown, time)
  const wheel = Math.min(shown.model.bump, Math.max(shown.model.droop, moment?.wheel ?? 0))
  const scrub = useScrub(scene, 0, onTime)
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be drawn in
    <svg
      viewBox={`0 0 ${size.width} ${size.height}`}
      role="group"
      aria-label={`${subject} with ${shown.name}, ${axle.id}: drawing, wheel position and forces over time, time spent at each height`}
      {...scrub}
    >
      <ChartPatterns prefix={PATTERNS} />
      <TerrainTints scene={scene} />
      <CornerDrawing
        axle={axle}
        model={shown.model}
        budget={shown.budget}
        other={other}
        wheel={wheel}
        system={system}
        x={frame.corner.x}
        width={frame.corner.width}
        head={frame.head}
        height={frame.height}
        axisY={axis.y}
        small={frame.small}
      />
      <TerrainRules scene={scene} />
      <TerrainHistogram scene={scene} patterns={PATTERNS} />
      <TerrainTraces scene={scene} patterns={PATTERNS} subject={subject} />
      <TerrainWords scene={scene} subject={subject} marks={marks} />
      <TerrainOverview scene={scene} />
      {ridden ? (
        <>
          <ScrubAreas scene={scene} />
          <TimeReading scene={scene} time={time} />
          <g data-scrub="trace">
            <TimeCursor scene={scene} time={time} onTime={onTime} onPlay={onPlay} />
          </g>
          <WheelTag scene={scene} wheel={wheel} />
          {marks.map(place => (
            <FindingMark
              key={place.finding.id}
              place={place}
              focused={focusedFinding === place.finding.id}
              onFocusFinding={onFocusFinding}
              onTakeFinding={onTakeFinding}
            />
          ))}
        </>
      ) : null}
    </svg>
  )
}
