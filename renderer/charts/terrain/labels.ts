import type { Box } from '../placement/box.ts'
import type { Label } from '../placement/label.ts'
import { type Leader, Placer } from '../placement/placer.ts'
import { rulerNumber } from '../plate/budget-geometry.ts'
import { forceUnit, shortForce } from '../plate/force-text.ts'
import { lengthSpans, onTape } from '../text/length-spans.ts'
import { type Ink, type Span, shortened, span } from '../text/span.ts'
import { cutBars, type HistogramZone } from './histogram-geometry.ts'
import { hasStop, type TerrainScene } from './terrain-scene.ts'
import { travelLines } from './travel-lines.ts'

/** Every word of the terrain plate that stands still. */
export interface TerrainLabels {
  readonly labels: readonly Label[]
  readonly leaders: readonly Leader[]
}

/** A share as the page says it. */
export const shownShare = (share: number): string => {
  const whole = 100 * share
  return whole > 0 && whole < 0.5 ? 'under 1 %' : `${Math.round(whole)} %`
}

function heads(scene: TerrainScene, placer: Placer, subject: string): void {
  const { frame, duration, view } = scene
  const { type, inset } = frame
  const quiet = { size: type.label, ink: 'ink2' } as const
  const unit = view.system === 'inch' ? 'in' : 'mm'
  const line = (id: string, wordings: readonly string[], x: number, y: number, right: number, bold: boolean): void => {
    const style = bold ? ({ size: type.heading, weight: 600 } as const) : quiet
    placer.first(wordings, text =>
      placer.at(id, placer.block([span(text, style)]), [{ x, y, anchor: 'start' }], {
        x: 0,
        y: 0,
        width: right - 3,
        height: frame.head,
      }),
    )
  }
  const { titleBaseline: title, subtitleBaseline: sub, corner, trace, histogram, names } = frame
  line('title-corner', ['Corner'], corner.x + (frame.small ? 12 : 16), title, corner.right, true)
  const x = trace.x + inset
  line('title-trace', ['Wheel position over time', 'Wheel over time', 'Trace'], x, title, trace.right, true)
  if (duration > 0) {
    const lasts = `${duration.toFixed(duration < 100 ? 1 : 0)} s`
    line('subtitle-trace', [`${unit}, ${lasts} of ${subject}`, `${unit}, ${lasts}`, unit], x, sub, trace.right, false)
  }
  const h = histogram.x + inset
  line('title-histogram', ['Time spent there', 'Time spent', 'Time'], h, title, names.right, true)
  line(
    'subtitle-histogram',
    ['share of the run at each height', 'share of the run', 'share'],
    h,
    sub,
    names.right,
    false,
  )
}

function rulers({ ruler, rulerRight, view, frame, axis }: TerrainScene, placer: Placer): void {
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

/** How much of the time was spent in each zone, beside its bars. */
function zoneShares({ frame, axis, travel, view, shown }: TerrainScene, placer: Placer): void {
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

function cutShares({ shown, histogram, axis, frame }: TerrainScene, placer: Placer): void {
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

function bottomNotes({ shown, view, axis, travel, time, frame }: TerrainScene, placer: Placer): void {
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

function forceWords({ frame, forces, time, view, rulerRight }: TerrainScene, placer: Placer): void {
  const { type } = frame
  const strip = frame.forces
  for (const tick of forces.ticks) {
    const y = forces.y(tick)
    if (y < strip.top + 4 || y > strip.bottom + 1) continue
    const text = placer.block([span(shortForce(tick, view.system), { size: type.axis, ink: 'ink2' })])
    placer.near(`force-${tick}`, text, rulerRight, Math.min(y, strip.bottom - text.height / 2), 'end', {
      x: frame.trace.x,
      y: strip.top - 4,
      width: frame.trace.width,
      height: strip.bottom - strip.top + 8,
    })
  }
  const style = { size: type.label, weight: 600 } as const
  const unit = forceUnit(view.system)
  const within: Box = { x: time.left, y: strip.top, width: time.right - time.left, height: strip.bottom - strip.top }
  const at = (id: string, words: readonly string[], ink: Ink, baseline: number): void => {
    placer.first(words, text =>
      placer.at(
        id,
        placer.block([span(text, { ...style, ink })]),
        [
          { x: time.left + 4, y: baseline, anchor: 'start' },
          { x: time.right - 2, y: baseline, anchor: 'end' },
        ],
        within,
      ),
    )
  }
  at('name-suspension', [`force at the wheel, ${unit}`, `at the wheel, ${unit}`, unit], 'ink', strip.top + type.label)
  if (hasStop(view)) at('name-stop', ['stop, along its own axis', 'stop'], 'stop', strip.top + 2 * type.label + 4)
}

function timeWords({ frame, time }: TerrainScene, placer: Placer): void {
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

function roadWords({ frame, time, road }: TerrainScene, placer: Placer): void {
  if (road.length === 0) return
  const strip = frame.road
  const text = placer.block([span('road', { size: frame.type.axis, ink: 'ink2' })])
  placer.at('name-road', text, [{ x: time.left + 4, y: strip.top + frame.type.axis, anchor: 'start' }])
}

function lineNames(scene: TerrainScene): TerrainLabels {
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
  const name = (id: string, wheel: number, wordings: readonly (readonly Span[])[][], lift: number): void => {
    const y = axis.y(wheel)
    placer.first(wordings, lines => {
      const text = placer.block(...lines)
      if (text.width > within.width) return null
      const box = placer.near(id, text, x, y + lift * text.height, 'start', within)
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
  if (otherTravel?.engagement != null && view.other !== null && shown.has('other engagement'))
    name(
      'name-other',
      otherTravel.engagement,
      [[quiet(view.other.name), position(otherTravel.engagement)], [position(otherTravel.engagement)]],
      0,
    )
  return { labels: placer.labels, leaders: placer.leaders }
}

/** Half the height a line keeps clear of words, px. */
const CLEAR = 2.5

/** @param subject the terrain's name; @param taken what words keep off */
export function terrainLabels(scene: TerrainScene, subject: string, taken: readonly Box[] = []): TerrainLabels {
  const { frame, measure, groundAt } = scene
  const placer = new Placer({ x: 0, y: 0, width: frame.width, height: frame.height }, measure, groundAt)
  heads(scene, placer, subject)
  rulers(scene, placer)
  for (const { y, from, to } of travelLines(scene))
    placer.room.takeExactly({ x: from + 30, y: y - CLEAR, width: Math.max(0, to - from - 30), height: 2 * CLEAR })
  for (const box of taken) placer.room.take(box)
  cutShares(scene, placer)
  zoneShares(scene, placer)
  bottomNotes(scene, placer)
  if (scene.duration > 0) {
    forceWords(scene, placer)
    timeWords(scene, placer)
    roadWords(scene, placer)
  }
  const names = lineNames(scene)
  return { labels: [...placer.labels, ...names.labels], leaders: [...placer.leaders, ...names.leaders] }
}
