import type { Box } from '../../placement/box.ts'
import type { Placer, Spot } from '../../placement/placer.ts'
import { lengthSpans, onTape } from '../../text/length-spans.ts'
import { type Span, shortened, span } from '../../text/span.ts'
import type { DemandBar } from '../demands-geometry.ts'
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

/** What each load takes, at the end of its bar. */
export function demandValues(scene: Scene, placer: Placer): void {
  const { demands, view, frame } = scene
  const within = area(scene)
  if (demands === null || within === null) return
  const { system } = view
  const place = (bar: DemandBar): void => {
    const { from, to } = bar.span
    const size = frame.type.label
    if (to === null) {
      const text = placer.block([span('rolls', { size, weight: 600 })])
      placer.near(`demand-${bar.span.id}`, text, bar.centre, bar.top - 12, 'middle', within)
      return
    }
    const value = onTape(to - from, system)
    const up = to >= from
    const top: Spot = { x: bar.centre, y: bar.top - 5, anchor: 'middle' }
    const bottom: Spot = { x: bar.centre, y: bar.bottom + size + 3, anchor: 'middle' }
    const spots = up !== bar.together ? [top, bottom] : [bottom, top]
    const wordings = [
      { size, sign: !frame.small },
      { size, sign: value < 0 },
      { size: 10.5, sign: value < 0 },
    ]
    placer.first(wordings, ({ size: small, sign }) =>
      placer.at(
        `demand-${bar.span.id}`,
        placer.block(
          lengthSpans(value, system, { size: small, weight: bar.together ? 600 : 400 }, { sign: sign || value < 0 }),
        ),
        spots,
        within,
      ),
    )
  }
  for (const bar of [...demands.bars].reverse()) place(bar)
  const style = { size: frame.type.axis, ink: 'ink2' } as const
  for (const bar of demands.bars) {
    if (!bar.span.assumed) continue
    const spots = [bar.bottom + 28, bar.bottom + 15, bar.top - 18].map(y => ({
      x: bar.centre,
      y,
      anchor: 'middle' as const,
    }))
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
  const kind = balance.beforeStop === null ? ['Left before bump', 'Left'] : ['Balance', 'Left']
  const value = (size: number) => lengthSpans(left, system, { size, weight: size < 15 ? 600 : 400 }, { unit: true })
  const wordings = [type.number, type.second, type.body].flatMap(size => kind.map(text => ({ size, text })))
  const placed = placer.first(wordings, ({ size, text }) => {
    const number = placer.block(value(size))
    const name = placer.block(word(text))
    const gap = room.width - number.width - name.width
    if (gap < 8) return null
    const spread = placer.block([...word(text), ...value(size).map((s, i) => (i === 0 ? { ...s, space: gap } : s))])
    return placer.at('balance', spread, aroundLine(y, size, room.x, balance.beforeStop === null), room)
  })
  if (placed === null)
    placer.first([type.second, type.body, type.axis], size => {
      const text = placer.block(value(size), word('Left'))
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

/** Above a line, else below it; the other way round when asked. */
function aroundLine(y: number, size: number, x: number, belowFirst = false): Spot[] {
  const above: Spot = { x, y: y - Math.max(6, size * 0.4), anchor: 'start' }
  const below: Spot = { x, y: y + size + 3, anchor: 'start' }
  return belowFirst ? [below, above] : [above, below]
}
