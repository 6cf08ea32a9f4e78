import type { KeyboardEvent } from 'react'
import { shownTime } from './time-axis.ts'
import type { TravelScene } from './travel-scene.ts'

interface TimeSliderProps {
  readonly scene: TravelScene
  /** When it begins, s: the times here are from there on. */
  readonly start: number
  readonly time: number
  /** What is there at that time, for someone who hears the page. */
  readonly spoken: string
  /** Page y of the wheel shown and of the other one, at that time; null where there is none. */
  readonly here: number | null
  readonly there: number | null
  readonly onTime: (time: number) => void
  readonly onPlay: () => void
}

/** Steps of the keys, s. */
const STEP = 0.02
const PAGE = 0.5

/** Where a key takes the time to, from the beginning on; null for a key that does not move it. */
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

const hundredths = (time: number): number => Math.round(time * 100) / 100

/** A line through the traces with its time on the axis; stepped with the keys. */
export function TimeSlider({ scene, start, time, spoken, here, there, onTime, onPlay }: TimeSliderProps) {
  const { frame, duration, time: across, measure } = scene
  const { type } = frame
  const x = across.x(Math.min(across.window.to, Math.max(across.window.from, time)))
  const text = `${shownTime(time)} s`
  const width = measure(text, type.axis, 600) + 12
  const tag = { top: frame.forces.bottom + 2, height: frame.small ? 15 : 17 }
  const middle = Math.min(Math.max(x, frame.trace.x + width / 2 + 2), frame.trace.right - width / 2)
  const keys = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return
    const after = event.key === ' ' ? time - start : timeAfterKey(event.key, time - start, duration)
    if (after === null) return
    event.preventDefault()
    event.stopPropagation()
    if (event.key === ' ') onPlay()
    else if (after !== time - start) onTime(start + after)
  }
  return (
    <g
      className="time-cursor"
      role="slider"
      tabIndex={0}
      aria-label="Time"
      aria-orientation="horizontal"
      aria-valuemin={hundredths(start)}
      aria-valuemax={hundredths(start + duration)}
      aria-valuenow={hundredths(time)}
      aria-valuetext={spoken}
      onKeyDown={keys}
    >
      <path d={`M${x} ${frame.head}V${tag.top}`} stroke="var(--ink)" strokeWidth="1.25" />
      {there === null ? null : (
        <circle cx={x} cy={there} r="3" fill="var(--sheet)" stroke="var(--ink)" strokeWidth="1.25" />
      )}
      {here === null ? null : <circle cx={x} cy={here} r="3.6" fill="var(--ink)" />}
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
