import { type PointerEvent, useRef } from 'react'
import { pointerIn } from '../plate/pointer-in.ts'
import type { TravelScene } from './travel-scene.ts'

/**
 * Pressing and dragging in the trace goes to the moment under the pointer; in the overview, through the whole of the time.
 * @param start of the time shown, s; @param onTime takes a moment, s
 */
export function useScrub({ time, duration }: TravelScene, start: number, onTime: (time: number) => void) {
  const held = useRef<'trace' | 'overview' | null>(null)
  const go = (event: PointerEvent<SVGSVGElement>): void => {
    const { x } = pointerIn(event.currentTarget, event)
    if (held.current === 'trace') onTime(time.timeAt(x))
    else onTime(start + Math.min(1, Math.max(0, (x - time.left) / (time.right - time.left))) * duration)
  }
  const end = (): void => {
    held.current = null
  }
  return {
    onPointerDown: (event: PointerEvent<SVGSVGElement>): void => {
      if (event.button !== 0 || !event.isPrimary || !(duration > 0) || !(event.target instanceof Element)) return
      const area = event.target.closest('[data-scrub]')?.getAttribute('data-scrub')
      if (area !== 'trace' && area !== 'overview') return
      event.preventDefault()
      held.current = area
      event.currentTarget.setPointerCapture(event.pointerId)
      event.currentTarget.querySelector<SVGGElement>('.time-cursor')?.focus({ preventScroll: true })
      go(event)
    },
    onPointerMove: (event: PointerEvent<SVGSVGElement>): void => {
      if (held.current !== null) go(event)
    },
    onPointerUp: end,
    onPointerCancel: end,
  }
}
