import type { Box } from '../../placement/box.ts'
import type { Placer, Spot } from '../../placement/placer.ts'
import { lengthSpans, onTape } from '../../text/length-spans.ts'
import { type Span, shortened, span } from '../../text/span.ts'
import type { DemandSpan } from '../demands.ts'
import { balancedOn, type DemandBar } from '../demands-geometry.ts'
import type { Scene } from '../scene.ts'

const area = ({ demands, axis }: Scene): Box | null =>
  demands === null
    ? null
    : {
        x: demands.column.x + 1,
        y: axis.top,
        width: demands.column.width - 2,
        height: axis.bottom - axis.top,
      }

/** Why a load has no place, from the full words to the shortest. */
const noPlace = (outcome: DemandSpan['outcome']): readonly (readonly string[])[] =>
  outcome === 'needs two axles' ? [['needs two', 'axles'], ['2 axles']] : [['rolls over'], ['rolls', 'over'], ['rolls']]

/** What each load takes, at the end of its bar. */
export function demandValues(scene: Scene, placer: Placer): void {
  const { demands, view, frame } = scene
  const within = area(scene)
  if (demands === null || within === null) return
  const { system } = view
  const size = frame.type.label
  const number = ({ span: { counted }, together }: DemandBar, value: number, small: number, signed: boolean): Span[] =>
    lengthSpans(
      onTape(value, system),
      system,
      { size: small, weight: together ? 600 : 400, ink: counted ? 'ink' : 'ink3' },
      { sign: signed },
    )
  // All numbers have their sign, or where that is too wide for their bars only those below nothing.
  const plus =
    !frame.small &&
    demands.bars.every(bar => {
      const { from, to } = bar.span
      return to === null || placer.block(number(bar, to - from, size, true)).width <= bar.barReach.width
    })
  const place = (bar: DemandBar): void => {
    const { from, to } = bar.span
    const ink = bar.span.counted ? 'ink' : 'ink3'
    if (to === null) {
      placer.first(noPlace(bar.span.outcome), lines => {
        const text = placer.block(...lines.map(line => [span(line, { size: 10.5, weight: 600, ink })]))
        return placer.near(`demand-${bar.span.id}`, text, bar.centre, bar.top - text.height, 'middle', within)
      })
      return
    }
    const up = to >= from
    const spot = (y: number): Spot => ({ x: bar.centre, y, anchor: 'middle' })
    const [top, bottom] = [spot(bar.top - 5), spot(bar.bottom + size + 3)]
    // Where a neighbour's number is in the way, it stands a line further off.
    const spots = [
      ...(up !== bar.together ? [top, bottom] : [bottom, top]),
      spot(top.y - size - 2),
      spot(bottom.y + size + 2),
      // Below a line that is in the way of that.
      spot(bottom.y + 2 * (size + 2)),
    ]
    placer.first([size, 10.5], small =>
      placer.at(`demand-${bar.span.id}`, placer.block(number(bar, to - from, small, plus)), spots, within),
    )
  }
  for (const bar of [...demands.bars].reverse()) place(bar)
  const style = { size: frame.type.axis, ink: 'ink2' } as const
  for (const bar of demands.bars) {
    if (!bar.span.assumed || !bar.span.counted) continue
    const below = [bar.bottom + 28, bar.bottom + 15]
    const spots: Spot[] = [
      ...below.map(y => ({ x: bar.centre, y, anchor: 'middle' as const })),
      // Beside a neighbour's bar it begins under its own.
      ...below.map(y => ({ x: bar.x, y, anchor: 'start' as const })),
      // Above it, clear of what stands right of the bar.
      { x: bar.x + bar.width, y: bar.top - 18, anchor: 'end' },
      { x: bar.centre - 5, y: bar.top - 18, anchor: 'end' },
      { x: bar.centre, y: bar.top - 18, anchor: 'middle' },
    ]
    placer.at(`demand-assumed-${bar.span.id}`, placer.block([span('assumed', style)]), spots, within)
  }
  if (demands.hidden === 0) return
  placer.at(
    'demand-hidden',
    placer.block([span(`and ${demands.hidden} smaller`, style)]),
    [{ x: demands.column.x + frame.inset, y: scene.foot + 17, anchor: 'start' }],
    within,
  )
}

/** A column without loads offers some: the words, and where each line of them to be pressed stands; none where there is nothing to offer. */
export function offerLabels(scene: Scene, placer: Placer): readonly Box[] {
  const { demands, view, frame, axis } = scene
  const within = area(scene)
  if (demands === null || within === null || view.demands === null || view.demands.spans.length > 0) return []
  const { type, inset } = frame
  const room = { ...within, x: within.x + inset - 1, width: within.width - 2 * inset }
  const say = (line: string): Span[] => [span(line, { size: type.body })]
  const quiet = [span('No loads yet.', { size: type.body, ink: 'ink2' })]
  placer.first([['Begin with usual loads'], ['Begin with', 'usual loads']], lines => {
    const text = placer.block(...lines.map(say))
    if (text.width > room.width) return null
    const told = placer.block(quiet, ...lines.map(say))
    return placer.near('demand-offer', told, room.x, axis.y(0) - told.height, 'start', room)
  })
  return placer.labels.filter(({ id }) => id.startsWith('demand-offer-')).map(({ box }) => box)
}

/** What is left below the stop, as large as the zone lengths, and what the other setup leaves. */
export function balanceLabels(scene: Scene, placer: Placer): void {
  const { demands, view, frame, axis, travel } = scene
  const within = area(scene)
  const balance = view.demands?.balance ?? null
  if (demands === null || within === null || balance === null) return
  const { system, other } = view
  const { type, inset } = frame
  const line = balance.beforeStop === null ? travel.bump : Math.max(travel.engagement ?? travel.bump, travel.droop)
  const left = onTape(balance.beforeStop ?? balance.beforeBump, system)
  const room: Box = {
    x: within.x + inset - 1,
    y: within.y + 2,
    width: demands.column.width - inset - (frame.small ? 8 : 12),
    height: within.height - 4,
  }
  // Bars and their room are kept clear as long as that is possible.
  const y = axis.y(line)
  const word = (text: string): Span[] => [span(text, { size: type.body, weight: 600 })]
  const kind =
    balance.beforeStop === null
      ? ['Left before bump', 'Left']
      : balance.beforeStop < 0
        ? ['Balance']
        : ['Balance', 'Left']
  const value = (size: number) => lengthSpans(left, system, { size, weight: size < 15 ? 600 : 400 }, { unit: true })
  const wordings = [type.number, type.second, type.body].flatMap(size => kind.map(text => ({ size, text })))
  const placed = placer.first(wordings, ({ size, text }) => {
    const number = placer.block(value(size))
    const name = placer.block(word(text))
    return placer.first(aroundLine(y, size, room.x, balance.beforeStop === null), spot => {
      const free = besideBalanced(scene, room, spot.y - size, spot.y)
      const gap = free.width - number.width - name.width
      if (gap < 8) return null
      const spread = [...word(text), ...value(size).map((s, i) => (i === 0 ? { ...s, space: gap } : s))]
      return placer.at('balance', placer.block(spread), [spot], free)
    })
  })
  if (placed === null)
    placer.first([type.second, type.body, type.axis], size => {
      const text = placer.block(value(size), word(kind.at(-1)!))
      return text.width > room.width ? null : placer.near('balance', text, room.x, y - 14, 'start', room)
    })

  const otherLeft = view.demands?.otherBalance?.beforeStop ?? null
  if (other === null || otherLeft === null || scene.otherTravel?.engagement == null) return
  const style = { size: type.label, ink: 'ink2' } as const
  const amount = lengthSpans(onTape(otherLeft, system), system, style, { unit: true })
  const width = amount.reduce((sum, s) => sum + s.space + scene.measure(s.text, s.size, s.weight), 0)
  const name = shortened(other.name, style, room.width - width - 6, scene.measure)
  const at = axis.y(Math.max(scene.otherTravel.engagement, scene.otherTravel.droop))
  const text = name === null ? amount : [span(name, style), ...amount.map((s, i) => (i === 0 ? { ...s, space: 5 } : s))]
  placer.at('other-balance', placer.block(text), aroundLine(at, type.label, room.x), room)
}

/** The part of the room left of the bar the balance is counted from, where that or its upright stands in a band. */
function besideBalanced({ demands, view, axis, travel }: Scene, room: Box, top: number, bottom: number): Box {
  const balanced = demands === null ? null : balancedOn(demands, view.demands?.balance ?? null, axis, travel)
  if (balanced === null) return room
  const { bar, end, line } = balanced
  const stands = Math.min(bar.top, line, end) < bottom && Math.max(bar.bottom, line, end) > top
  return stands ? { ...room, width: Math.max(0, bar.x - 6 - room.x) } : room
}

/** Above a line, else below it; the other way round when asked. */
function aroundLine(y: number, size: number, x: number, belowFirst = false): Spot[] {
  const above: Spot = { x, y: y - Math.max(6, size * 0.4), anchor: 'start' }
  const below: Spot = { x, y: y + size + 3, anchor: 'start' }
  return belowFirst ? [below, above] : [above, below]
}
