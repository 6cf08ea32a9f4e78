import { type CrossLine, OTHER_DASH } from '../plate/cross-lines.ts'
import { sameOnTape } from './terrain-scene.ts'
import type { TravelScene } from './travel-scene.ts'

/** Drafting's chain line: ride height. */
const CHAIN = '14 3 2 3'

/** The lines of the travel page that cross the trace and the histogram, lowest in rank first. */
export function travelLines({ frame, axis, travel, otherTravel, view }: TravelScene): CrossLine[] {
  const from = frame.trace.x
  const to = frame.names.x
  const line = (id: CrossLine['id'], wheel: number, width: number, ink: string, dash?: string): CrossLine => ({
    id,
    wheel,
    y: axis.y(wheel),
    width,
    ink,
    dash,
    from,
    to,
  })
  const lines: CrossLine[] = []
  if (otherTravel !== null) {
    if (!sameOnTape(otherTravel.bump, travel.bump, view.system))
      lines.push(line('other bump', otherTravel.bump, 1.1, 'var(--ink2)', OTHER_DASH))
    if (!sameOnTape(otherTravel.droop, travel.droop, view.system))
      lines.push(line('other droop', otherTravel.droop, 1.1, 'var(--ink2)', OTHER_DASH))
    const { engagement } = otherTravel
    if (
      engagement !== null &&
      engagement >= otherTravel.droop &&
      (travel.engagement === null || !sameOnTape(engagement, travel.engagement, view.system))
    )
      lines.push(line('other engagement', engagement, 1.1, 'var(--ink)', OTHER_DASH))
  }
  lines.push(line('bump', travel.bump, 1.5, 'var(--ink)'), line('droop', travel.droop, 1.5, 'var(--ink)'))
  lines.push(line('ride', 0, 1.1, 'var(--ink)', CHAIN))
  if (travel.engagement !== null && travel.engagement >= travel.droop)
    lines.push(line('engagement', travel.engagement, 2, 'var(--stop)'))
  return lines
}
