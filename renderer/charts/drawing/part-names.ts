import type { BumpLimit } from '../../../core/corner/corner-model.ts'
import type { Box } from '../placement/box.ts'
import { Occupancy } from '../placement/occupancy.ts'
import { type MeasureText, type Span, shortened, span } from '../text/span.ts'
import { bumpLineOf } from './chassis-shapes.ts'
import type { Stretch } from './coilover.ts'
import { type Figure, type Station, stationAt } from './figure.ts'
import type { Flat } from './flat.ts'
import type { Layout } from './layout.ts'
import { strapLine, strapOf } from './strap.ts'

/** A part's name beside the drawing, with the line that leads to it; page coordinates. */
export interface PartName {
  readonly id: string
  readonly x: number
  readonly y: number
  readonly anchor: 'start' | 'end'
  readonly spans: readonly Span[]
  /** Null where the name stands on the part itself. */
  readonly leader: readonly [Flat, Flat] | null
  readonly box: Box
}

interface Named {
  readonly id: string
  readonly text: string
  readonly at: Flat
  readonly side: 1 | -1
  readonly strong: boolean
}

const SIZE = 11
const middleOf = ({ from, to }: Stretch, share = 0.5): number => from + (to - from) * share

/** What ends the travel says so in its own name. */
const ENDED: Readonly<Partial<Record<BumpLimit, string>>> = {
  'stop closed': 'closed',
  'shock closed': 'closed',
  'coil bind': 'bound',
}

/** The side of the shock the spring names stand on: the one the stop is not on. */
const springSide = ({ skeleton, stop }: Figure): 1 | -1 => {
  if (stop === null) return 1
  const top = stop.frame(0, stop.build.height)[0]
  const shock = (skeleton.upper[0] + skeleton.at(0).lower[0]) / 2
  return (top + skeleton.pad[0]) / 2 <= shock ? 1 : -1
}

function named(figure: Figure, station: Station): Named[] {
  const { model, coilover: build, stop } = figure
  const { springs, dividers, body } = station.coilover
  const side = springSide(figure)
  const ended = station.wheel >= model.bump - 1e-9 ? model.bumpLimitedBy : null
  const state = (limit: BumpLimit, is: boolean): string => (is && ended === limit ? `, ${ENDED[limit] ?? ''}` : '')
  const besideShock = (along: number, half: number): Flat => {
    // The side is the page's: along a shock that points down, right is left.
    const right = station.shockFrame(half, along)
    const left = station.shockFrame(-half, along)
    return (right[0] - left[0]) * side >= 0 ? right : left
  }
  const bound = model.parts(station.wheel).springs.map(spring => spring.left <= 1e-9)
  const names: Named[] = model.corner.springs.springs.map((spring, i) => ({
    id: `spring-${i}`,
    text: `${spring.name.trim() === '' ? `spring ${i + 1}` : spring.name.trim()}${state('coil bind', bound[i] ?? false)}`,
    at: besideShock(middleOf(springs[i]!), build.coil),
    side,
    strong: ended === 'coil bind' && (bound[i] ?? false),
  }))
  if (model.droopLimitedBy === 'limit strap' && station.wheel <= model.droop + 1e-9) {
    const strap = strapOf(figure)
    if (strap !== null)
      names.push({
        id: 'strap',
        text: 'strap, taut',
        at: strapLine(strap, station.pose)[4] ?? strap.top,
        side: 1,
        strong: true,
      })
  }
  const lowest = dividers.at(-1)
  if (lowest !== undefined)
    names.push({ id: 'divider', text: 'divider', at: besideShock(middleOf(lowest), build.seat), side, strong: false })
  if (ended === 'shock closed')
    names.push({
      id: 'shock',
      text: `shock${state('shock closed', true)}`,
      at: besideShock(middleOf(body, 0.8), build.body),
      side,
      strong: true,
    })
  if (stop !== null && station.stop !== null) {
    const { top } = station.stop.stations
    const along =
      top - (stop.build.kind === 'hydraulic' ? 0.3 * stop.build.body : 0.5 * (top - station.stop.stations.face))
    const half = stop.build.kind === 'hydraulic' ? stop.build.half / 1.24 : stop.build.foot
    const [right, left] = [stop.frame(half, along), stop.frame(-half, along)]
    names.push({
      id: 'stop',
      text: `stop${state('stop closed', true)}`,
      at: (right[0] - left[0]) * side >= 0 ? left : right,
      side: side === 1 ? -1 : 1,
      strong: ended === 'stop closed',
    })
  }
  return names
}

/** How far from the drawing names stand, px. */
const OFF = 20

/** Page x of the names on each side: the same at every wheel position, clear of all their parts. */
export function nameColumns(figure: Figure, layout: Layout): Readonly<Record<1 | -1, number>> {
  const { droop, bump } = figure.model
  const all = [droop, 0, bump].flatMap(wheel => named(figure, stationAt(figure, wheel)))
  const xs = (side: 1 | -1): number[] => all.filter(name => name.side === side).map(name => layout.place.at(name.at)[0])
  return { 1: Math.max(...xs(1), 0) + OFF, [-1]: Math.min(...xs(-1), layout.axisX) - OFF }
}

/**
 * Names placed so that they overlap neither each other nor what is in `taken`; one that finds no place is left out.
 */
export function partNames(
  figure: Figure,
  layout: Layout,
  station: Station,
  columns: Readonly<Record<1 | -1, number>>,
  taken: readonly Box[],
  measure: MeasureText,
): PartName[] {
  const { x, head, height } = layout.column
  const area: Box = { x: x + 4, y: head + 4, width: layout.axisX - x - 10, height: height - head - 8 }
  const occupancy = new Occupancy(area)
  for (const box of taken) occupancy.take(box)
  const placed = chassisName(figure, layout, station, occupancy, measure)
  for (const { box } of placed) occupancy.take(box)
  const byHeight = named(figure, station).sort((a, b) => layout.place.at(a.at)[1] - layout.place.at(b.at)[1])
  for (const name of byHeight) {
    const at = layout.place.at(name.at)
    const weight = name.strong ? 600 : 400
    const start = columns[name.side]
    const room = name.side === 1 ? area.x + area.width - start : start - area.x
    const text = shortened(name.text, { size: SIZE, weight }, Math.min(110, room), measure)
    if (text === null) continue
    const width = measure(text, SIZE, weight)
    const wanted = { x: name.side === 1 ? start : start - width, y: at[1] - 7, width, height: 13 }
    const box = occupancy.slide(wanted, { ...area, y: at[1] - 60, height: 120 })
    if (box === null) continue
    occupancy.take(box)
    const y = box.y + 10
    placed.push({
      id: name.id,
      x: start,
      y,
      anchor: name.side === 1 ? 'start' : 'end',
      spans: [span(text, { size: SIZE, weight, ink: name.strong ? 'ink' : 'ink2' })],
      leader: [at, [start - name.side * 3, y - 3.5]],
      box,
    })
  }
  return placed
}

/** Over the line the wheel may not pass, or past its end where shock and stop of a solid axle stand over it; strong when the wheel is there. */
function chassisName(
  figure: Figure,
  layout: Layout,
  { wheel }: Station,
  occupancy: Occupancy,
  measure: MeasureText,
): PartName[] {
  const line = bumpLineOf(figure)
  if (line === null) return []
  const { bump, bumpLimitedBy } = figure.model
  const strong = bumpLimitedBy === 'chassis contact' && wheel >= bump - 1e-9
  const style = { size: SIZE, weight: strong ? 600 : 400, ink: strong ? 'ink' : 'ink2' } as const
  const width = measure('chassis', SIZE, style.weight)
  const [x, y] = layout.place.at([line.from, line.height])
  const long = (line.to - line.from) * layout.place.scale
  const above = long / 10 + 5
  const over = figure.skeleton.kind !== 'axle'
  const start = over ? x : x + long + 5
  const baseline = over ? y - above : y + 4
  const box = { x: start, y: baseline - 10, width, height: 13 }
  const free = occupancy.isFree(box)
  occupancy.takeExactly({ x, y: y - above, width: long, height: above + 2 })
  if (!free) return []
  return [{ id: 'chassis', x: start, y: baseline, anchor: 'start', spans: [span('chassis', style)], leader: null, box }]
}
