import { Unspoken } from '../marks/Group.tsx'
import { Spans } from '../text/ChartText.tsx'
import { lengthSpans, onTape } from '../text/length-spans.ts'
import { lineWidth } from '../text/span.ts'
import { momentOf, momentWords, readingRows, spokenMoment } from './reading.ts'
import { TimeSlider } from './TimeSlider.tsx'
import { heldY, type TerrainScene } from './terrain-scene.ts'
import { shownTime } from './time-axis.ts'
import type { TravelScene } from './travel-scene.ts'

interface TimeCursorProps {
  readonly scene: TerrainScene
  readonly time: number
  readonly onTime: (time: number) => void
  readonly onPlay: () => void
}

/** The moment shown: drag it, or step it with the keys. */
export function TimeCursor({ scene, time, onTime, onPlay }: TimeCursorProps) {
  const { axis, view } = scene
  const here = momentOf(view.shown, time)
  const there = momentOf(view.other, time)
  return (
    <TimeSlider
      scene={scene}
      start={0}
      time={time}
      spoken={spokenMoment(view, time)}
      here={here === null ? null : heldY(axis, view.shown.model, here.wheel)}
      there={there === null ? null : heldY(axis, view.other!.model, there.wheel)}
      onTime={onTime}
      onPlay={onPlay}
    />
  )
}

/** The wheel's tag on the axis, as the travel page has it. */
export function WheelTag({ scene, wheel }: { readonly scene: TravelScene; readonly wheel: number }) {
  const { frame, axis, view, measure } = scene
  const style = { size: 13, weight: 600, ink: 'sheet' } as const
  const spans = lengthSpans(onTape(wheel, view.system), view.system, style, { sign: true, unit: true })
  const width = lineWidth(spans, measure) + 20
  return (
    <Unspoken>
      <g transform={`translate(${frame.trace.x} ${axis.y(wheel)})`}>
        <path d={`M0 0L-9 -11H${-width}V11H-9z`} fill="var(--ink)" />
        <text x={-width + 7} y="4.6" xmlSpace="preserve">
          <Spans spans={spans} />
        </text>
      </g>
    </Unspoken>
  )
}

/** What the trace reads at the moment shown, under the histogram, where nothing else ever stands. */
export function TimeReading({ scene, time }: { readonly scene: TerrainScene; readonly time: number }) {
  const { frame, view, measure } = scene
  const { type, small } = frame
  const rows = readingRows(view, time)
  const moment = momentOf(view.shown, time)
  if (moment === null) return null
  const x = frame.histogram.x + frame.inset
  const nameWidth = Math.max(...rows.map(({ name }) => measure(name, type.label, 400)))
  const shownRight =
    x + nameWidth + 8 + Math.max(...rows.map(row => measure(row.shown, type.label, 600)), small ? 50 : 62)
  const otherRight =
    shownRight + 10 + Math.max(...rows.map(row => measure(row.other ?? '', type.label, 400)), small ? 46 : 58)
  const room = frame.height - frame.road.top
  const lead = Math.min(small ? 15.5 : 18, (room - 8) / 5)
  const top = frame.road.top + lead
  return (
    <Unspoken>
      <text x={x} y={top} fontSize={type.heading} fontWeight="600" fill="var(--ink)">
        At {shownTime(time)} s
      </text>
      <text x={x} y={top + lead} fontSize={type.label} fill="var(--ink2)">
        {momentWords(moment, view.shown)}
      </text>
      {rows.map(({ name, shown, other }, i) => {
        const y = top + lead * (i + 2) + (small ? 1 : 3)
        return (
          <g key={name} fontSize={type.label}>
            <text x={x} y={y} fill="var(--ink2)">
              {name}
            </text>
            <text x={shownRight} y={y} textAnchor="end" fontWeight="600" fill="var(--ink)">
              {shown}
            </text>
            {other === null || otherRight > frame.width - 3 ? null : (
              <text x={otherRight} y={y} textAnchor="end" fill="var(--ink2)">
                {other}
              </text>
            )}
          </g>
        )
      })}
    </Unspoken>
  )
}
