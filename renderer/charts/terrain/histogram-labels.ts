import type { Box } from '../placement/box.ts'
import type { Placer } from '../placement/placer.ts'
import { span } from '../text/span.ts'
import { cutBars, type HistogramZone } from './histogram-geometry.ts'
import { shownShare } from './shown-share.ts'
import type { TravelScene } from './travel-scene.ts'

/** How much of the time was spent in each zone, beside its bars. */
export function zoneShares({ frame, axis, travel, view, shown }: TravelScene, placer: Placer): void {
  const { ride } = view.shown
  if (ride === null || shown === null) return
  const { histogram, type, inset } = frame
  const bands: [HistogramZone, string, number, number, number][] = [
    ['engagement', 'above engagement', ride.share.engagement, travel.bump, travel.coiloverEnd],
    ['coilover', 'on the coilover', ride.share.coilover, travel.coiloverEnd, 0],
    ['droop', 'in droop', ride.share.droop, 0, travel.droop],
  ]
  for (const [zone, words, share, top, bottom] of bands) {
    if (zone === 'engagement' && travel.engagement === null) continue
    const value = span(shownShare(share), { size: type.heading, weight: 600 })
    const within: Box = {
      x: histogram.x + 4,
      y: axis.y(top) + 3,
      width: histogram.width - 4 - inset / 2,
      height: axis.y(bottom) - axis.y(top) - 6,
    }
    const right = histogram.right - inset / 2
    const name = span(words, { size: type.label, ink: 'ink2' })
    const middle = (axis.y(top) + axis.y(bottom)) / 2
    placer.first([[[value], [name]], [[value]]], lines => {
      const text = placer.block(...lines)
      return text.width > within.width ? null : placer.near(`share-${zone}`, text, right, middle, 'end', within, 1)
    })
  }
}

/** What a bar that is cut would reach. */
export function cutShares({ shown, histogram, axis, frame }: TravelScene, placer: Placer): void {
  for (const { from, to, share } of cutBars(shown?.bars ?? [], histogram)) {
    const y = (axis.y(from) + axis.y(to)) / 2
    const text = placer.block([span(shownShare(share), { size: frame.type.axis, weight: 600 })])
    placer.at(
      `cut-${from}`,
      text,
      [-7, 14].map(by => ({ x: frame.histogram.right - 6, y: y + by, anchor: 'end' as const })),
    )
  }
}
