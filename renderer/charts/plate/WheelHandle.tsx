import type { KeyboardEvent } from 'react'
import type { System } from '../../../core/units/quantity.ts'
import { toUnit } from '../../../core/units/quantity.ts'
import { Spans } from '../text/ChartText.tsx'
import { spokenPosition } from '../text/length-spans.ts'
import { type HandleGeometry, wheelAfterKey } from './handle.ts'

interface WheelHandleProps {
  readonly handle: HandleGeometry
  readonly x: number
  readonly wheel: number
  readonly droop: number
  readonly bump: number
  readonly system: System
  readonly onWheel: (wheel: number) => void
}

/** The pointer tag at the axis: drag it, or step it with the keys. */
export function WheelHandle({ handle, x, wheel, droop, bump, system, onWheel }: WheelHandleProps) {
  const { y, width, height, spans, textX } = handle
  const half = height / 2
  const shown = (value: number): number => Math.round(toUnit(value, 'length', system) * 1000) / 1000
  const step = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return
    const next = wheelAfterKey(event.key, wheel, droop, bump, system)
    if (next === null) return
    event.preventDefault()
    event.stopPropagation()
    if (next !== wheel) onWheel(next)
  }
  return (
    <g
      className="wheel-handle"
      data-wheel-handle="axis"
      role="slider"
      tabIndex={0}
      aria-label="Wheel position"
      aria-orientation="vertical"
      aria-valuemin={shown(droop)}
      aria-valuemax={shown(bump)}
      aria-valuenow={shown(wheel)}
      aria-valuetext={spokenPosition(wheel, system)}
      transform={`translate(${x} ${y})`}
      onKeyDown={step}
    >
      <path
        className="focus-ring"
        d={`M5 0L-10 ${-half - 4}H${-width - 4}V${half + 4}H-10z`}
        fill="none"
        stroke="none"
        strokeWidth="2"
        strokeLinejoin="miter"
      />
      <path d={`M0 0L-11 ${-half}H${-width}V${half}H-11z`} fill="var(--ink)" />
      <path d={`M${-width + 6} -5v10M${-width + 9.5} -5v10`} stroke="var(--sheet)" strokeWidth="1.25" />
      <text x={textX} y="4.6" xmlSpace="preserve">
        <Spans spans={spans} />
      </text>
    </g>
  )
}
