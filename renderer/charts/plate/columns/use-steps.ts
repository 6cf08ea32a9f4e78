import { type KeyboardEvent, type PointerEvent, useRef } from 'react'
import { largerDrawn } from '../pointer-in.ts'

/** What can be stepped and dragged up and down. */
export interface Steps {
  readonly onStep?: (direction: 1 | -1, big: boolean, gesture: string) => void
  readonly onStepped?: () => void
}

/** Keys that make a load larger or smaller where its bar has the focus. */
export const STEPPING: Readonly<Record<string, { readonly direction: 1 | -1; readonly big: boolean }>> = {
  ArrowUp: { direction: 1, big: false },
  ArrowDown: { direction: -1, big: false },
  PageUp: { direction: 1, big: true },
  PageDown: { direction: -1, big: true },
}

/** Dragged by so many px, a load takes one step. */
const PIXELS_A_STEP = 4

let gestures = 0

/** Steps by key and by drag; each stay of the focus and each drag is one gesture. */
export function useSteps({ onStep, onStepped }: Steps) {
  const gesture = useRef('')
  const drag = useRef<{ readonly pointer: number; at: number; moved: boolean } | null>(null)
  const begin = (): void => {
    onStepped?.()
    gestures += 1
    gesture.current = `load#${gestures}`
  }
  return {
    /** Whether a drag has just ended: the click that follows is its end, not a press. */
    dragged: (): boolean => drag.current?.moved ?? false,
    key: (event: KeyboardEvent): boolean => {
      const step = STEPPING[event.key]
      if (step === undefined || onStep === undefined || event.altKey || event.ctrlKey || event.metaKey) return false
      event.preventDefault()
      onStep(step.direction, step.big, gesture.current)
      return true
    },
    handlers:
      onStep === undefined
        ? {}
        : {
            onFocus: begin,
            onBlur: onStepped,
            onPointerDown: (event: PointerEvent<SVGGElement>) => {
              drag.current = null
              if (event.button !== 0 || !event.isPrimary) return
              event.currentTarget.setPointerCapture(event.pointerId)
              drag.current = { pointer: event.pointerId, at: event.clientY, moved: false }
              begin()
            },
            onPointerMove: (event: PointerEvent<SVGGElement>) => {
              const held = drag.current
              if (held === null || held.pointer !== event.pointerId || event.buttons === 0) return
              const steps = Math.trunc((held.at - event.clientY) / (PIXELS_A_STEP * largerDrawn(event.currentTarget)))
              for (let i = 0; i < Math.abs(steps); i += 1) onStep(steps > 0 ? 1 : -1, false, gesture.current)
              if (steps === 0) return
              held.at -= steps * PIXELS_A_STEP * largerDrawn(event.currentTarget)
              held.moved = true
            },
            onPointerUp: () => onStepped?.(),
          },
  }
}
