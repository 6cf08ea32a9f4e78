import type { Box } from '../placement/box.ts'
import { Placer } from '../placement/placer.ts'
import { lengthSpans, onTape } from '../text/length-spans.ts'
import { type Ink, type Span, shortened, span } from '../text/span.ts'
import type { TerrainLabels } from './labels.ts'
import { travelLines } from './travel-lines.ts'
import type { TravelScene } from './travel-scene.ts'

/** Names of the lines across, at the right edge. */
export function lineNames(scene: TravelScene): TerrainLabels {
  const { frame, axis, travel, otherTravel, view, measure } = scene
  const { names, type, small } = frame
  const x = names.x + (small ? 6 : 9)
  const within: Box = {
    x,
    y: axis.top + 2,
    width: Math.max(1, names.right - x - 1),
    height: axis.bottom - axis.top - 4,
  }
  const placer = new Placer(within, measure, undefined, { x: 0, y: 2 })
  const size = small ? type.axis : type.label
  const bold = (text: string, ink: Ink = 'ink'): Span[] => [span(text, { size, weight: 600, ink })]
  const quiet = (text: string): Span[] => [
    span(shortened(text, { size, ink: 'ink2' }, within.width, measure) ?? '', { size, ink: 'ink2' }),
  ]
  const position = (wheel: number): Span[] =>
    lengthSpans(onTape(wheel, view.system), view.system, { size, ink: 'ink2' }, { sign: true, unit: true })
  const name = (
    id: string,
    wheel: number,
    wordings: readonly (readonly Span[])[][],
    lift: number,
    room = within,
  ): void => {
    const y = axis.y(wheel)
    placer.first(wordings, lines => {
      const text = placer.block(...lines)
      if (text.width > within.width) return null
      const box = placer.near(id, text, x, y + lift * text.height, 'start', room)
      if (box !== null && Math.abs(box.y + box.height / 2 - y - lift * text.height) > 8)
        placer.leaders.push({ id, from: [names.x, y], to: [x - 2, box.y + size / 2] })
      return box
    })
  }
  const shown = new Set(travelLines(scene).map(({ id }) => id))
  if (travel.engagement !== null && shown.has('engagement'))
    name(
      'name-engagement',
      travel.engagement,
      [
        [bold('Engagement', 'stop'), position(travel.engagement)],
        [bold('Engages', 'stop'), position(travel.engagement)],
        [position(travel.engagement)],
      ],
      0,
    )
  name('name-bump', travel.bump, [[bold('Full bump'), position(travel.bump)], [bold('Full bump')], [bold('Bump')]], 0)
  name(
    'name-droop',
    travel.droop,
    [[bold('Full droop'), position(travel.droop)], [bold('Full droop')], [bold('Droop')]],
    -0.25,
  )
  name('name-ride', 0, [[bold('Ride height')], [bold('Ride')]], 0)
  if (otherTravel?.engagement != null && view.other !== null && shown.has('other engagement')) {
    // On its own side of ride height: names in another order than their lines tell something else.
    const ride = Math.min(Math.max(axis.y(0), within.y), within.y + within.height)
    const above = otherTravel.engagement >= 0
    const side = above
      ? { ...within, height: ride - within.y }
      : { ...within, y: ride, height: within.y + within.height - ride }
    name(
      'name-other',
      otherTravel.engagement,
      [[quiet(view.other.name), position(otherTravel.engagement)], [position(otherTravel.engagement)]],
      0,
      side,
    )
  }
  return { labels: placer.labels, leaders: placer.leaders }
}
