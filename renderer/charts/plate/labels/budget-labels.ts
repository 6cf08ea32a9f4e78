import type { Box } from '../../placement/box.ts'
import type { Placer } from '../../placement/placer.ts'
import { lengthSpans, onTape } from '../../text/length-spans.ts'
import { type Ink, type Span, shortened, span } from '../../text/span.ts'
import { rulerNumber } from '../budget-geometry.ts'
import type { Scene } from '../scene.ts'

interface ZoneBlock {
  readonly id: string
  /** px, top above bottom. */
  readonly top: number
  readonly bottom: number
  readonly value: number
  readonly size: number
  readonly name: string
  readonly short: string
  /** From the full wording to the shortest; none for droop. */
  readonly notes: readonly (readonly Span[])[]
}

/** Numbers along the ruler; they stand on the lines. */
export function rulerLabels({ ruler, budget, view, frame }: Scene, placer: Placer): void {
  for (const { wheel, y, long } of ruler) {
    if (!long) continue
    const text = placer.block([span(rulerNumber(wheel, view.system), { size: frame.type.axis, ink: 'ink2' })])
    placer.near(`ruler-${rulerNumber(wheel, view.system)}`, text, budget.rulerRight, y, 'end', {
      x: frame.budget.x,
      y: y - text.height / 2 - 0.1,
      width: frame.budget.width,
      height: text.height + 0.2,
    })
  }
}

const spaced = ([first, ...rest]: readonly Span[], space: number): Span[] =>
  first === undefined ? [] : [{ ...first, space }, ...rest]

const one = (text: string, size: number, ink: Ink = 'ink'): Span[] => [span(text, { size, ink })]

/** Length, name and share of each zone beside the bar. */
export function zoneLabels(scene: Scene, placer: Placer): void {
  const { frame, axis, travel, zones, view } = scene
  const { type, small } = frame
  const share = (percent: number | null): Span[][] =>
    percent === null ? [] : [one(`${percent} %${small ? '' : ' of bump'}`, type.label, 'ink2')]
  const quiet = { size: type.label, ink: 'ink2' } as const
  const touches = (words: string): Span[] => [
    ...one(words, type.label, 'ink2'),
    ...spaced(lengthSpans(onTape(travel.engagement ?? 0, view.system), view.system, quiet, { unit: true }), 4),
  ]
  const touching = travel.engagement !== null && onTape(travel.engagement, view.system) < 0
  const [top, middle, ride, bottom] = [travel.bump, travel.coiloverEnd, 0, travel.droop].map(axis.y) as [
    number,
    number,
    number,
    number,
  ]
  const blocks: ZoneBlock[] = [
    {
      id: 'zone-coilover',
      top: middle,
      bottom: ride,
      value: zones.coilover,
      size: type.number,
      name: 'Coilover zone',
      short: 'Coilover',
      notes: touching ? [touches('touches at'), touches('at')] : share(zones.coiloverPercent),
    },
    ...(travel.engagement === null
      ? []
      : [
          {
            id: 'zone-engagement',
            top,
            bottom: middle,
            value: zones.engagement,
            size: type.number,
            name: 'Engagement zone',
            short: 'Engagement',
            notes: share(zones.engagementPercent),
          },
        ]),
    {
      id: 'zone-droop',
      top: ride,
      bottom,
      value: zones.droop,
      size: type.second,
      name: 'Droop',
      short: 'Droop',
      notes: [],
    },
  ]
  for (const zone of blocks) placeZone(scene, placer, zone)
}

/** Kept free above and below a zone's words where there is room, px. */
const AIR = 7

function placeZone({ frame, view, budget, axis }: Scene, placer: Placer, zone: ZoneBlock): void {
  const { type } = frame
  const room: Box = {
    x: budget.textX,
    y: axis.top + 2,
    width: budget.textRight - budget.textX,
    height: axis.bottom - axis.top - 4,
  }
  const value = (size: number, unit = true) => lengthSpans(zone.value, view.system, { size }, { unit })
  const name = one(zone.name, type.body)
  const short = one(zone.short, type.body)
  const inline = (size: number) => [...value(size), span(zone.short, { size: type.label, ink: 'ink2' }, 4)]
  const wordings: (readonly Span[])[][] = [zone.size, type.second].flatMap(size =>
    [true, false].flatMap(unit => [
      ...zone.notes.flatMap(note => [
        [value(size, unit), name, note],
        [value(size, unit), short, note],
      ]),
      [value(size, unit), name],
      [value(size, unit), short],
    ]),
  )
  wordings.push([inline(type.second)], [inline(type.body)], [value(type.body)], [value(type.body, false)])
  const middle = (zone.top + zone.bottom) / 2
  const inside = { ...room, y: Math.max(room.y, zone.top + 2), height: zone.bottom - zone.top - 4 }
  const within = placer.first(wordings, lines => {
    const text = placer.block(...lines)
    if (text.width > room.width) return null
    const near = (margin: number) => placer.near(zone.id, text, room.x, middle, 'start', inside, margin)
    return near(AIR) ?? near(0)
  })
  if (within !== null) return
  // Too short a zone for its own words: they stand beside it, with a leader.
  const empty = zone.bottom - zone.top < 1
  const beside: (readonly Span[])[][] = [
    ...(empty ? zone.notes.map(note => [value(type.second), short, note]) : []),
    [value(type.second), short],
    [inline(type.body)],
    [value(type.body)],
    [value(type.axis)],
  ]
  // An empty zone stays out of its neighbour above, so that its nought is not read as that one's.
  const below = { ...room, y: zone.bottom, height: Math.max(0, room.y + room.height - zone.bottom) }
  for (const where of empty && zone.id === 'zone-coilover' ? [below, room] : [room]) {
    const placed = placer.first(beside, lines => {
      const text = placer.block(...lines)
      return text.width > room.width ? null : placer.near(zone.id, text, room.x, middle, 'start', where)
    })
    if (placed === null) continue
    placer.leaders.push({
      id: zone.id,
      from: [budget.barX + budget.barWidth, middle],
      to: [room.x - 4, placed.y + Math.min(placed.height, type.second) / 2],
    })
    return
  }
}

/** A cut name needs this many letters to tell anything. */
const TELLING = 6

/** The share the other setup reaches, at its line. */
export function otherShareLabel(scene: Scene, placer: Placer): void {
  const { view, otherTravel, otherZones, axis, budget, frame, measure } = scene
  if (view.other === null || otherTravel?.engagement == null || otherZones?.coiloverPercent == null) return
  const y = axis.y(otherTravel.engagement)
  const style = { size: frame.type.label, ink: 'ink2' } as const
  const share = ` ${otherZones.coiloverPercent} %`
  const width = budget.textRight - budget.textX
  const name = shortened(view.other.name, style, width - measure(share, style.size, 400), measure)
  const telling = name !== null && (name === view.other.name || name.length >= TELLING)
  for (const words of telling ? [`${name}${share}`, share.trim()] : [share.trim()]) {
    const spots = [y + style.size + 4, y - 6].map(at => ({ x: budget.textX, y: at, anchor: 'start' as const }))
    const within = { x: budget.textX, y: axis.top, width, height: axis.bottom - axis.top }
    if (placer.at('other-share', placer.block([span(words, style)]), spots, within) !== null) return
  }
}
