import type { Placer } from '../placement/placer.ts'
import { rulerNumber } from '../plate/budget-geometry.ts'
import { span } from '../text/span.ts'
import type { TerrainScene } from './terrain-scene.ts'
import type { TravelScene } from './travel-scene.ts'

/** Numbers along the ruler; they stand on the lines. */
export function rulers({ ruler, rulerRight, view, frame, axis }: TravelScene, placer: Placer): void {
  for (const { wheel, y, long } of ruler) {
    if (!long) continue
    const number = rulerNumber(wheel, view.system)
    const text = placer.block([span(number, { size: frame.type.axis, ink: 'ink2' })])
    placer.near(`ruler-${number}`, text, rulerRight, y, 'end', {
      x: frame.trace.x,
      y: Math.max(axis.top, y - text.height / 2 - 0.1),
      width: frame.trace.width,
      height: text.height + 0.2,
    })
  }
}

/** How often it bottoms, beside the first time in sight. */
export function bottomNotes({ shown, view, axis, travel, time, frame }: TravelScene, placer: Placer): void {
  const times = view.shown.ride?.bottoms ?? 0
  const first = shown?.bottoms[0]
  if (times === 0 || first === undefined) return
  const y = axis.y(travel.bump) - 7
  const style = { size: frame.type.label, weight: 600, ink: 'alarm' } as const
  const words = times === 1 ? ['bottoms once', 'bottoms'] : [`bottoms ${times} times`, `bottoms ${times} ×`]
  placer.first(words, text =>
    placer.at(
      'bottoms',
      placer.block([span(text, style)]),
      [
        { x: time.x(first) + 9, y, anchor: 'start' },
        { x: time.x(first) - 9, y, anchor: 'end' },
      ],
      { ...frame.trace, y: 0, height: frame.height },
    ),
  )
}

/** Numbers of the time axis. */
export function timeWords({ frame, time }: TravelScene, placer: Placer): void {
  const style = { size: frame.type.axis, ink: 'ink2' } as const
  time.ticks.forEach((tick, i) => {
    const text = i === time.ticks.length - 1 ? `${tick} s` : String(tick)
    placer.at(
      `time-${tick}`,
      placer.block([span(text, style)]),
      [{ x: time.x(tick), y: frame.timeBaseline, anchor: 'middle' }],
      { x: frame.trace.x, y: 0, width: frame.trace.width, height: frame.height },
    )
  })
}

export function roadWords({ frame, time, road }: TerrainScene, placer: Placer): void {
  if (road.length === 0) return
  const strip = frame.road
  const text = placer.block([span('road', { size: frame.type.axis, ink: 'ink2' })])
  placer.at('name-road', text, [{ x: time.left + 4, y: strip.top + frame.type.axis, anchor: 'start' }])
}
