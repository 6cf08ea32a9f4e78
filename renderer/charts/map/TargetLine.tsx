import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import { pointerIn } from '../plate/pointer-in.ts'

interface Props {
  readonly label: string
  readonly text: string
  readonly value: number
  readonly most: number
  readonly step: number
  readonly line: { readonly x1: number; readonly y1: number; readonly x2: number; readonly y2: number }
  /** Value where the pointer is, from px within the chart. */
  readonly valueAt: (x: number, y: number) => number
  readonly onChange: (value: number, dragging: boolean) => void
  readonly onEnd: () => void
}

const KEYS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: 8,
  PageDown: -8,
}

/** A target as a line on the map: dragged, or moved by the keys. */
export function TargetLine({ label, text, value, most, step, line, valueAt, onChange, onEnd }: Props) {
  const drags = useRef(false)
  const place = (event: PointerEvent<SVGGElement>): number => {
    const { x, y } = pointerIn(event.currentTarget.ownerSVGElement!, event)
    const to = valueAt(x, y)
    return Math.round(to / step) * step
  }
  const onKeyDown = (event: KeyboardEvent): void => {
    const by = KEYS[event.key]
    const to =
      event.key === 'Home'
        ? 0
        : event.key === 'End'
          ? most
          : by === undefined
            ? null
            : Math.round(value / step + by) * step
    if (to === null) return
    event.preventDefault()
    onChange(Math.min(most, Math.max(0, to)), false)
  }
  return (
    <g
      className="target-line"
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuemin={0}
      aria-valuemax={most}
      aria-valuenow={value}
      aria-valuetext={text}
      onKeyDown={onKeyDown}
      onPointerDown={event => {
        event.currentTarget.setPointerCapture(event.pointerId)
        drags.current = true
      }}
      onPointerMove={event => drags.current && onChange(Math.min(most, Math.max(0, place(event))), true)}
      onPointerUp={() => {
        drags.current = false
        onEnd()
      }}
    >
      <line {...line} className="grip" />
      <line {...line} className="drawn" />
    </g>
  )
}
