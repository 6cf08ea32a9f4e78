import { scaleLinear } from 'd3'
import { fromUnit, type System, toUnit } from '../../../core/units/quantity.ts'
import type { SweptPoint } from '../../state/terrain-cache.ts'
import type { SweptBy } from '../../state/terrain-sweep.ts'
import type { Label } from '../placement/label.ts'
import { Placer } from '../placement/placer.ts'
import { rulerNumber } from '../plate/budget-geometry.ts'
import type { TravelMarks } from '../plate/travel.ts'
import { lengthSpans, onTape } from '../text/length-spans.ts'
import { type MeasureText, type Span, span } from '../text/span.ts'
import { shownShare } from './shown-share.ts'
import type { Point } from './signal-path.ts'
import { presentOf, SWEPT, sweptText } from './sweep-words.ts'

/** What a sweep chart shows: share of the time on the stop, or how high the wheel comes. */
export type SweepKind = 'on the stop' | 'highest wheel'

export interface SweepView {
  readonly kind: SweepKind
  readonly by: SweptBy
  readonly present: number
  /** How far the sweep goes, SI. */
  readonly far: number
  readonly shown: readonly SweptPoint[]
  readonly other: readonly SweptPoint[] | null
  readonly travel: TravelMarks
  readonly system: System
}

interface SweepPoint extends Point {
  readonly bottoms: boolean
}

export interface SweepGeometry {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  readonly shown: readonly SweepPoint[]
  readonly other: readonly SweepPoint[]
  readonly presentX: number
  /** px of full bump and engagement; null where they do not belong on the chart. */
  readonly bump: number | null
  readonly engagement: number | null
  readonly xTicks: readonly number[]
  readonly yTicks: readonly number[]
  readonly labels: readonly Label[]
}

const AXIS = 10.5

const figureOf = (point: SweptPoint, kind: SweepKind): number =>
  kind === 'on the stop' ? point.onStop : point.wheelMax

/** Where the values of a chart lie: shares from nothing up, wheel positions from ride height to beyond full bump. */
function domainOf({ kind, shown, other, travel }: SweepView): [number, number] {
  const values = [...shown, ...(other ?? [])].map(point => figureOf(point, kind))
  if (kind === 'on the stop') return [0, Math.min(1, Math.max(0.05, ...values.map(value => value * 1.15)))]
  return [Math.min(0, ...values), Math.max(travel.bump, 0.01, ...values) * 1.06]
}

export function sweepGeometry(view: SweepView, width: number, height: number, measure: MeasureText): SweepGeometry {
  const { kind, by, present, far, shown, other, travel, system } = view
  const quantity = SWEPT[by]
  const left = Math.min(34, width * 0.2)
  const right = Math.max(left + 1, width - 10)
  const top = Math.min(16, height * 0.2)
  const bottom = Math.max(top + 1, height - 18)
  const reach = Math.max(far, present, 1e-6)
  const across = scaleLinear([0, toUnit(reach, quantity, system)], [left, right])
  const x = (value: number): number => across(toUnit(value, quantity, system))
  const domain = domainOf(view)
  const wheelTicks = (value: number): number => toUnit(value, 'length', system)
  const up =
    kind === 'on the stop'
      ? scaleLinear(domain, [bottom, top])
      : scaleLinear([wheelTicks(domain[0]), wheelTicks(domain[1])], [bottom, top])
  const y = (value: number): number => up(kind === 'on the stop' ? value : wheelTicks(value))
  const points = (list: readonly SweptPoint[]): SweepPoint[] =>
    list.map(point => ({ x: x(point.value), y: y(figureOf(point, kind)), bottoms: point.bottoms > 0 }))

  const placer = new Placer({ x: 0, y: 0, width, height }, measure)
  const quiet = { size: AXIS, ink: 'ink2' } as const
  const xTicks = across.ticks(Math.max(2, Math.floor((right - left) / 52)))
  // Wheel positions are numbered as on the ruler: whole inches or millimetres.
  const yTicks = up
    .ticks(Math.max(2, Math.floor((bottom - top) / 34)))
    .filter(tick => kind === 'on the stop' || Number.isInteger(tick))
  for (const tick of xTicks)
    placer.at(
      `x-${tick}`,
      placer.block([span(String(tick), quiet)]),
      [{ x: across(tick), y: height - 5, anchor: 'middle' }],
      { x: 0, y: 0, width, height },
    )
  for (const tick of yTicks) {
    const text =
      kind === 'on the stop' ? `${Math.round(tick * 100)} %` : rulerNumber(fromUnit(tick, 'length', system), system)
    placer.at(`y-${tick}`, placer.block([span(text, quiet)]), [{ x: left - 4, y: up(tick) + 3.8, anchor: 'end' }])
  }
  const bump = kind === 'highest wheel' ? y(travel.bump) : null
  const engagement =
    kind === 'highest wheel' && travel.engagement !== null && travel.engagement > domain[0]
      ? y(travel.engagement)
      : null
  for (const line of [bump, engagement])
    if (line !== null) placer.room.takeExactly({ x: left, y: line - 2, width: right - left, height: 4 })

  const presentX = x(Math.min(present, reach))
  const style = { size: 11, weight: 600 } as const
  const say = (point: SweptPoint, bold: boolean): Span[] => {
    const look = bold ? style : ({ size: 11, ink: 'ink2' } as const)
    return kind === 'on the stop'
      ? [span(shownShare(point.onStop), look)]
      : lengthSpans(onTape(point.wheelMax, system), system, look, { sign: true, unit: true })
  }
  const at = sweptText(present, by, system)
  placer.at(
    'present',
    placer.block([span(at, { size: AXIS, weight: 600 })]),
    [
      { x: presentX, y: top - 5, anchor: 'middle' },
      { x: presentX + 5, y: top - 5, anchor: 'start' },
      { x: presentX - 5, y: top - 5, anchor: 'end' },
    ],
    { x: left, y: 0, width: right - left + 8, height },
  )
  placer.room.takeExactly({ x: presentX - 1, y: top, width: 2, height: bottom - top })
  const here = presentOf(shown, present)
  const there = presentOf(other, present)
  const beside = (id: string, point: SweptPoint | null, bold: boolean, side: 1 | -1): void => {
    // At full bump the line says it.
    if (point === null || (kind === 'highest wheel' && point.bottoms > 0)) return
    const py = y(figureOf(point, kind))
    placer.at(
      id,
      placer.block(say(point, bold)),
      [py + 13, py - 6, py + 26, py - 19].flatMap(baseline =>
        [side, -side].map(way => ({
          x: presentX + way * 7,
          y: baseline,
          anchor: way > 0 ? ('start' as const) : ('end' as const),
        })),
      ),
      { x: left + 1, y: top, width: right - left, height: bottom - top },
    )
  }
  beside('shown', here, true, 1)
  beside('other', there, false, -1)
  const name = (id: string, text: string, line: number | null, ink: 'ink' | 'stop', side: 'start' | 'end'): void => {
    if (line === null) return
    const spots = (at: 'start' | 'end') =>
      [line + 12, line - 5].map(baseline => ({ x: at === 'end' ? right : left + 4, y: baseline, anchor: at }))
    const words = placer.block([span(text, { size: AXIS, weight: 600, ink })])
    placer.at(id, words, [...spots(side), ...spots(side === 'end' ? 'start' : 'end')], {
      x: left,
      y: 0,
      width: right - left + 2,
      height: bottom,
    })
  }
  // Curves rise to the right: full bump is named where they are still low, engagement where they have passed it.
  name('bump', 'full bump', bump, 'ink', 'start')
  name('engagement', 'engagement', engagement, 'stop', 'end')
  return {
    left,
    right,
    top,
    bottom,
    shown: points(shown),
    other: points(other ?? []),
    presentX,
    bump,
    engagement,
    xTicks: xTicks.map(across),
    yTicks: yTicks.map(up),
    labels: placer.labels,
  }
}
