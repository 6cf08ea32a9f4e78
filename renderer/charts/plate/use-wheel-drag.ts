import { type PointerEvent, useRef } from 'react'
import type { System } from '../../../core/units/quantity.ts'
import { snapWheel } from './handle.ts'
import { largerDrawn, pointerIn } from './pointer-in.ts'
import type { WheelAxis } from './wheel-axis.ts'

interface Drag {
  readonly pointer: number
  readonly startY: number
  readonly startWheel: number
  readonly pixelsPerMetre: number
}

interface WheelDragOptions {
  readonly axis: WheelAxis
  readonly wheel: number
  readonly droop: number
  readonly bump: number
  readonly system: System
  readonly onWheel: (wheel: number) => void
}

/**
 * Dragging the wheel: by the tag or anywhere on the axis (`data-wheel-handle`), at the axis' scale, or by the hub (`data-wheel-hub`, which
 * gives its own px per metre), so that what is held stays under the pointer. Handlers for the whole plate.
 */
export function useWheelDrag({ axis, wheel, droop, bump, system, onWheel }: WheelDragOptions) {
  const drag = useRef<Drag | null>(null)
  const begin = (event: PointerEvent<SVGSVGElement>): void => {
    if (event.button !== 0 || !event.isPrimary || !(event.target instanceof Element)) return
    const held = event.target.closest('[data-wheel-handle],[data-wheel-hub]')
    if (held === null) return
    const svg = event.currentTarget
    const hub = Number(held.getAttribute('data-wheel-hub'))
    let startWheel = wheel
    if (held.getAttribute('data-wheel-handle') === 'track') {
      startWheel = snapWheel(axis.wheelAt(pointerIn(svg, event).y), droop, bump, system)
      if (startWheel !== wheel) onWheel(startWheel)
    }
    event.preventDefault()
    svg.setPointerCapture(event.pointerId)
    svg.querySelector<SVGGElement>('.wheel-handle')?.focus({ preventScroll: true })
    drag.current = {
      pointer: event.pointerId,
      startY: event.clientY,
      startWheel,
      pixelsPerMetre: (hub > 0 ? hub : axis.pixelsPerMetre) * largerDrawn(svg),
    }
  }
  const move = (event: PointerEvent<SVGSVGElement>): void => {
    const held = drag.current
    if (held === null || event.pointerId !== held.pointer) return
    const next = snapWheel(held.startWheel - (event.clientY - held.startY) / held.pixelsPerMetre, droop, bump, system)
    if (next !== wheel) onWheel(next)
  }
  const end = (event: PointerEvent<SVGSVGElement>): void => {
    if (drag.current?.pointer === event.pointerId) drag.current = null
  }
  return { onPointerDown: begin, onPointerMove: move, onPointerUp: end, onPointerCancel: end }
}
