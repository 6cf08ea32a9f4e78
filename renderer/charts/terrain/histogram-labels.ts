import type { Box } from '../placement/box.ts'
import type { Placer } from '../placement/placer.ts'
import { type Span, span } from '../text/span.ts'
import { cutBars, type HistogramZone } from './histogram-geometry.ts'
import { shownShare } from './shown-share.ts'
import type { TravelScene } from './travel-scene.ts'

/** Keeps words off the bars. */
function bars({ shown, histogram, axis, frame }: TravelScene, placer: Placer): void {
  for (const { from, to, share } of shown?.bars ?? []) {
    if (share <= 0) continue
    const [left, top] = [frame.histogram.x, axis.y(to)]
    placer.room.takeExactly({ x: left, y: top, width: histogram.x(share) + 3 - left, height: axis.y(from) - top })
  }
}

/** How much of the time was spent in each zone, beside its bars; where a bar is cut, what it would reach. */
export function histogramWords(scene: TravelScene, placer: Placer): void {
  bars(scene, placer)
  zoneShares(scene, placer)
  cutShares(scene, placer)
}

function zoneShares({ frame, axis, travel, view, shown }: TravelScene, placer: Placer): void {
  const { ride } = view.shown
  if (ride === null || shown === null) return
  const { histogram, type, inset } = frame
  const bands: [HistogramZone, readonly [string, string], number, number, number][] = [
    ['engagement', ['above', 'engagement'], ride.share.engagement, travel.bump, travel.coiloverEnd],
    ['coilover', ['on the', 'coilover'], ride.share.coilover, travel.coiloverEnd, 0],
    ['droop', ['in', 'droop'], ride.share.droop, 0, travel.droop],
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
    const name = (text: string): Span[] => [span(text, { size: type.label, ink: 'ink2' })]
    const middle = (axis.y(top) + axis.y(bottom)) / 2
    placer.first([[[value], name(words.join(' '))], [[value], ...words.map(name)], [[value]]], lines => {
      const text = placer.block(...lines)
      return text.width > within.width ? null : placer.near(`share-${zone}`, text, right, middle, 'end', within, 1)
    })
  }
}

function cutShares({ shown, histogram, axis, frame }: TravelScene, placer: Placer): void {
  for (const { from, to, share } of cutBars(shown?.bars ?? [], histogram)) {
    const y = (axis.y(from) + axis.y(to)) / 2
    const { type } = frame
    placer.first([`${shownShare(share)} at one height`, `${shownShare(share)} here`], words =>
      placer.at(
        `cut-${from}`,
        placer.block([span(words, { size: type.axis, ink: 'ink2' })]),
        [-7, 14].map(by => ({ x: frame.histogram.right - 6, y: y + by, anchor: 'end' as const })),
      ),
    )
  }
}
