import { onTape } from '../text/length-spans.ts'
import type { Scene } from './scene.ts'

export type CrossLineId = 'bump' | 'droop' | 'ride' | 'engagement' | 'other engagement' | 'other bump' | 'other droop'

/** A line of the plate at one wheel position. */
export interface CrossLine {
  readonly id: CrossLineId
  readonly wheel: number
  readonly y: number
  readonly width: number
  readonly ink: string
  readonly dash?: string
  /** px */
  readonly from: number
  readonly to: number
}

/** Short dashes: the other setup, and nothing else on the plate. */
export const OTHER_DASH = '4 3'
/** Drafting's chain line: ride height. */
const CHAIN = '14 3 2 3'

/** The plate's lines, lowest in rank first. */
export function crossLines({ frame, axis, travel, otherTravel, budget, view }: Scene): CrossLine[] {
  const from = frame.budget.x
  const to = frame.names.x
  const at = (id: CrossLineId, wheel: number, width: number, ink: string, dash?: string, end = to): CrossLine => ({
    id,
    wheel,
    y: axis.y(wheel),
    width,
    ink,
    dash,
    from,
    to: end,
  })
  const differs = (a: number, b: number): boolean => onTape(a, view.system) !== onTape(b, view.system)
  const barEnd = budget.barX + budget.barWidth + 6
  const lines: CrossLine[] = []
  if (otherTravel !== null) {
    if (differs(otherTravel.bump, travel.bump))
      lines.push(at('other bump', otherTravel.bump, 1.1, 'var(--ink2)', OTHER_DASH, barEnd))
    if (differs(otherTravel.droop, travel.droop))
      lines.push(at('other droop', otherTravel.droop, 1.1, 'var(--ink2)', OTHER_DASH, barEnd))
    if (otherTravel.engagement !== null && otherTravel.engagement >= otherTravel.droop)
      lines.push(at('other engagement', otherTravel.engagement, 1.1, 'var(--ink)', OTHER_DASH))
  }
  lines.push(at('bump', travel.bump, 1.5, 'var(--ink)'), at('droop', travel.droop, 1.5, 'var(--ink)'))
  lines.push(at('ride', 0, 1.1, 'var(--ink)', CHAIN))
  if (travel.engagement !== null && travel.engagement >= travel.droop)
    lines.push(at('engagement', travel.engagement, 2, 'var(--stop)'))
  return lines
}
