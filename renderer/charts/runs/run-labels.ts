import { formatMeasure } from '../../../core/units/format.ts'
import { unitOf } from '../../../core/units/quantity.ts'
import { Placer } from '../placement/placer.ts'
import { besideAxis } from '../terrain/beside-axis.ts'
import { heads } from '../terrain/head-labels.ts'
import { histogramWords } from '../terrain/histogram-labels.ts'
import type { TerrainLabels } from '../terrain/labels.ts'
import { bottomNotes, rulers, timeWords } from '../terrain/trace-labels.ts'
import { travelLines } from '../terrain/travel-lines.ts'
import { lineNames } from '../terrain/travel-names.ts'
import { span } from '../text/span.ts'
import type { RunScene } from './run-scene.ts'

/** Half the height a line keeps clear of words, px. */
const CLEAR = 2.5

/** Numbers of the speed axis, and what it is. */
function speedWords(scene: RunScene, placer: Placer): void {
  const { frame, speeds, time, view, rulerRight } = scene
  const { type, histogram, inset } = frame
  const strip = frame.forces
  const unit = unitOf('shaftSpeed', view.system).label
  const within = { x: frame.trace.x, y: strip.top - 4, width: frame.trace.width, height: strip.bottom - strip.top + 8 }
  for (const tick of speeds.ticks) {
    const y = speeds.y(tick)
    if (y < strip.top + 3 || y > strip.bottom - 3) continue
    const number = formatMeasure(tick, 'shaftSpeed', view.system, { sign: true, digits: 0 })
    placer.near(
      `speed-${tick}`,
      placer.block([span(number, { size: type.axis, ink: 'ink2' })]),
      rulerRight,
      y,
      'end',
      within,
    )
  }
  const style = { size: type.label, weight: 600 } as const
  besideAxis(
    {
      id: 'name-speed',
      wordings: [`shaft speed, ${unit}: closing is up`, `shaft speed, ${unit}`, unit].map(text => span(text, style)),
      baseline: strip.top + type.label,
      within,
      spots: [
        { x: time.left + 4, anchor: 'start' },
        { x: time.right - 2, anchor: 'end' },
      ],
    },
    frame,
    placer,
  )
  const bars = { ...histogram, width: histogram.width - inset / 2, y: strip.top, height: strip.bottom - strip.top }
  const right = histogram.right - inset / 2
  const heights = [strip.top + type.label, strip.bottom - 4]
  const wordings = ['time at each shaft speed', 'at each speed'].map(text =>
    placer.block([span(text, { size: type.label, ink: 'ink2' })]),
  )
  const beside = wordings.map(text => ({
    text,
    at: heights.filter(y => barsReach(scene, y - text.height, y) < right - text.width),
  }))
  // Over the bars, where there is no room beside them.
  placer.first([...beside, ...wordings.map(text => ({ text, at: heights }))], ({ text, at }) =>
    placer.at(
      'name-speeds',
      text,
      at.map(y => ({ x: right, y, anchor: 'end' as const })),
      bars,
    ),
  )
}

/** How far to the right bars of shaft speeds come between two heights, px. */
function barsReach({ speeds, speedShares, shown, other }: RunScene, top: number, bottom: number): number {
  const there = [...(shown?.speedBars ?? []), ...(other?.speedBars ?? [])].filter(
    ({ from, to, share }) => share > 0 && speeds.y(from) > top && speeds.y(to) < bottom,
  )
  return Math.max(Number.NEGATIVE_INFINITY, ...there.map(({ share }) => speedShares.x(share)))
}

/** Names of the moments picked, at the head of their lines. */
function momentWords({ frame, time, view: { picked } }: RunScene, placer: Placer): void {
  const { from, to } = time.window
  const name = (id: string, words: readonly string[], at: number | null): void => {
    if (at === null || at < from || at > to) return
    const y = frame.travel.top + frame.type.label + 2
    const style = { size: frame.type.label, ink: 'ink' } as const
    placer.first(words, text =>
      placer.at(
        id,
        placer.block([span(text, style)]),
        [0, frame.type.label + 4].flatMap(by => [
          { x: time.x(at) + 4, y: y + by, anchor: 'start' as const },
          { x: time.x(at) - 4, y: y + by, anchor: 'end' as const },
        ]),
        { ...frame.trace, y: 0, height: frame.height },
      ),
    )
  }
  name('picked-ride', ['stands at ride height', 'ride height'], picked.rideHeightAt)
  name('picked-droop', ['hangs at full droop', 'full droop'], picked.fullDroopAt)
}

/** Every word of the plate that stands still. @param subject the run's name */
export function runLabels(scene: RunScene, subject: string): TerrainLabels {
  const { frame, measure, groundAt } = scene
  const placer = new Placer({ x: 0, y: 0, width: frame.width, height: frame.height }, measure, groundAt)
  heads(scene, placer, subject)
  rulers(scene, placer)
  for (const { y, from, to } of travelLines(scene))
    placer.room.takeExactly({ x: from + 30, y: y - CLEAR, width: Math.max(0, to - from - 30), height: 2 * CLEAR })
  momentWords(scene, placer)
  histogramWords(scene, placer)
  bottomNotes(scene, placer)
  if (scene.duration > 0) {
    speedWords(scene, placer)
    timeWords(scene, placer)
  }
  const names = lineNames(scene)
  return { labels: [...placer.labels, ...names.labels], leaders: [...placer.leaders, ...names.leaders] }
}
