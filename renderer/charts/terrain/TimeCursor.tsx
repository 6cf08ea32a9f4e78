import type { KeyboardEvent } from 'react'
import { Unspoken } from '../marks/Group.tsx'
import { Spans } from '../text/ChartText.tsx'
import { lengthSpans, onTape } from '../text/length-spans.ts'
import { lineWidth } from '../text/span.ts'
import { momentOf, momentWords, readingRows, spokenMoment } from './reading.ts'
import { heldY, type TerrainScene } from './terrain-scene.ts'
import { shownTime } from './time-axis.ts'
import type { TravelScene } from './travel-scene.ts'

interface TimeCursorProps {
  readonly scene: TerrainScene
  readonly time: number
  readonly onTime: (time: number) => void
  readonly onPlay: () => void
}

/** Steps of the keys, s. */
const STEP = 0.02
const PAGE = 0.5

/** Where a key takes the time to; null for a key that does not move it. */
export function timeAfterKey(key: string, time: number, duration: number): number | null {
  const steps: Readonly<Record<string, number>> = {
    ArrowRight: STEP,
    ArrowUp: STEP,
    ArrowLeft: -STEP,
    ArrowDown: -STEP,
    PageUp: PAGE,
    PageDown: -PAGE,
  }
  if (key === 'Home') return 0
  if (key === 'End') return duration
  const step = steps[key]
  return step === undefined ? null : Math.min(duration, Math.max(0, time + step))
}

/** The moment shown: a line through trace and forces with its time on the axis; drag it, or step it with the keys. */
export function TimeCursor({ scene, time, onTime, onPlay }: TimeCursorProps) {
  const { frame, axis, view, duration, time: across, measure } = scene
  const { type } = frame
  const x = across.x(Math.min(across.window.to, Math.max(across.window.from, time)))
  const text = `${shownTime(time)} s`
  const width = measure(text, type.axis, 600) + 12
  const tag = { top: frame.forces.bottom + 2, height: frame.small ? 15 : 17 }
  const middle = Math.min(Math.max(x, frame.trace.x + width / 2 + 2), frame.trace.right - width / 2)
  const here = momentOf(view.shown, time)
  const there = momentOf(view.other, time)
  const keys = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return
    const next = event.key === ' ' ? time : timeAfterKey(event.key, time, duration)
    if (next === null) return
    event.preventDefault()
    event.stopPropagation()
    if (event.key === ' ') onPlay()
    else if (next !== time) onTime(next)
  }
  return (
    <g
      className="time-cursor"
      role="slider"
      tabIndex={0}
      aria-label="Time"
      aria-orientation="horizontal"
      aria-valuemin={0}
      aria-valuemax={Math.round(duration * 100) / 100}
      aria-valuenow={Math.round(time * 100) / 100}
      aria-valuetext={spokenMoment(view, time)}
      onKeyDown={keys}
    >
      <path d={`M${x} ${frame.head}V${tag.top}`} stroke="var(--ink)" strokeWidth="1.25" />
      {there === null ? null : (
        <circle
          cx={x}
          cy={heldY(axis, view.other!.model, there.wheel)}
          r="3"
          fill="var(--sheet)"
          stroke="var(--ink)"
          strokeWidth="1.25"
        />
      )}
      {here === null ? null : (
        <circle cx={x} cy={heldY(axis, view.shown.model, here.wheel)} r="3.6" fill="var(--ink)" />
      )}
      <rect
        className="focus-ring"
        x={middle - width / 2 - 3.5}
        y={tag.top - 3.5}
        width={width + 7}
        height={tag.height + 7}
        fill="none"
        stroke="none"
        strokeWidth="2"
      />
      <rect x={middle - width / 2} y={tag.top} width={width} height={tag.height} fill="var(--ink)" />
      <text
        x={middle}
        y={tag.top + tag.height / 2 + 3.8}
        textAnchor="middle"
        fontSize={type.axis}
        fontWeight="600"
        fill="var(--sheet)"
      >
        {text}
      </text>
    </g>
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
