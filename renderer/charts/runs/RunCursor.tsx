import type { KeyboardEvent } from 'react'
import { wheelAt } from '../../../core/runs/outline.ts'
import { timeAfterKey } from '../terrain/TimeCursor.tsx'
import { heldY } from '../terrain/terrain-scene.ts'
import { shownTime } from '../terrain/time-axis.ts'
import { spokenReading, wheelIn } from './run-reading.ts'
import type { RunScene } from './run-scene.ts'

interface RunCursorProps {
  readonly scene: RunScene
  /** The moment shown, s of the run's own time. */
  readonly time: number
  readonly onTime: (time: number) => void
  readonly onPlay: () => void
}

/** The moment shown: a line through the traces with its time on the axis; drag it, or step it with the keys. */
export function RunCursor({ scene, time, onTime, onPlay }: RunCursorProps) {
  const { frame, axis, view, start, duration, time: across, measure } = scene
  const { type } = frame
  const x = across.x(Math.min(across.window.to, Math.max(across.window.from, time)))
  const text = `${shownTime(time)} s`
  const width = measure(text, type.axis, 600) + 12
  const tag = { top: frame.forces.bottom + 2, height: frame.small ? 15 : 17 }
  const middle = Math.min(Math.max(x, frame.trace.x + width / 2 + 2), frame.trace.right - width / 2)
  const here = wheelIn(view, time)
  const other = view.other
  const there = other === null || other.run === null ? null : wheelAt(other.run, time)
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
      aria-valuemin={Math.round(start * 100) / 100}
      aria-valuemax={Math.round((start + duration) * 100) / 100}
      aria-valuenow={Math.round(time * 100) / 100}
      aria-valuetext={spokenReading(view, time)}
      onKeyDown={keys}
    >
      <path d={`M${x} ${frame.head}V${tag.top}`} stroke="var(--ink)" strokeWidth="1.25" />
      {there === null ? null : (
        <circle
          cx={x}
          cy={heldY(axis, other!.model, there)}
          r="3"
          fill="var(--sheet)"
          stroke="var(--ink)"
          strokeWidth="1.25"
        />
      )}
      {here === null ? null : <circle cx={x} cy={heldY(axis, view.shown.model, here)} r="3.6" fill="var(--ink)" />}
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
