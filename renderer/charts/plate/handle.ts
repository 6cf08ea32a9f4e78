import type { System } from '../../../core/units/quantity.ts'
import type { Box } from '../placement/box.ts'
import { lengthSpans, onTape, tapeMark } from '../text/length-spans.ts'
import { lineWidth, type Span } from '../text/span.ts'
import type { Scene } from './scene.ts'

/** The pointer tag at the wheel position. */
export interface HandleGeometry {
  readonly y: number
  readonly width: number
  readonly height: number
  readonly spans: readonly Span[]
  readonly textX: number
  readonly box: Box
}

const POINT = 11
const GRIP = 16
const HEIGHT = 24

export function handleGeometry({ frame, axis, view, measure }: Scene, wheel: number): HandleGeometry {
  const mark = onTape(wheel, view.system)
  const spans = lengthSpans(mark, view.system, { size: 13, weight: 600, ink: 'sheet' }, { sign: true, unit: true })
  // As wide for every position, so that it does not twitch; where there is little room it lets the hub be seen at ride height.
  const usual = frame.small ? (mark === 0 ? 0 : 80) : 94
  const width = Math.max(usual, GRIP + lineWidth(spans, measure) + POINT + 3)
  const y = axis.y(wheel)
  const x = frame.budget.x - width
  return { y, width, height: HEIGHT, spans, textX: -width + GRIP, box: { x, y: y - HEIGHT / 2, width, height: HEIGHT } }
}

/** The nearest mark of the tape within the travel; the ends of the travel count as marks. */
export function snapWheel(wheel: number, droop: number, bump: number, system: System): number {
  const mark = onTape(wheel, system)
  const distance = Math.abs(wheel - mark)
  if (mark >= bump || Math.abs(wheel - bump) < distance) return bump
  if (mark <= droop || Math.abs(wheel - droop) < distance) return droop
  return mark
}

/** Where a key moves the wheel to; null for a key that does not. Page keys move 1 in or 25 mm. */
export function wheelAfterKey(key: string, wheel: number, droop: number, bump: number, system: System): number | null {
  const mark = tapeMark(system)
  const page = system === 'inch' ? 16 * mark : 25 * mark
  const steps: Readonly<Record<string, number>> = {
    ArrowUp: mark,
    ArrowRight: mark,
    ArrowDown: -mark,
    ArrowLeft: -mark,
    PageUp: page,
    PageDown: -page,
  }
  if (key === 'Home') return droop
  if (key === 'End') return bump
  const step = steps[key]
  return step === undefined ? null : snapWheel(wheel + step, droop, bump, system)
}
