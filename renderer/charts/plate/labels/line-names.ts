import type { Box } from '../../placement/box.ts'
import type { Block, Label } from '../../placement/label.ts'
import { type Leader, Placer } from '../../placement/placer.ts'
import { lengthSpans, onTape } from '../../text/length-spans.ts'
import { type Ink, type Span, shortened, span } from '../../text/span.ts'
import type { Scene } from '../scene.ts'

export interface LineNames {
  readonly labels: readonly Label[]
  readonly leaders: readonly Leader[]
}

interface Tag {
  readonly id: string
  readonly y: number
  /** Where the block stands against its line: hanging below it, its first line on it, or standing above it. */
  readonly stand: 'below' | 'on' | 'above'
  /** From the full wording to the shortest. */
  readonly wordings: readonly (readonly (readonly Span[])[])[]
}

/** Beyond this a name has left its line and gets a leader, px. */
const ASTRAY = 7

/** Names of the lines at the right edge: what ends the travel, engagement, ride height, the other setup, limits in reserve. */
export function lineNames(scene: Scene): LineNames {
  const { frame, axis, travel, otherTravel, view, measure } = scene
  const { names, type, small } = frame
  const x = names.x + (small ? 6 : 9)
  const within: Box = { x, y: frame.head + 2, width: names.right - x - 1, height: frame.height - frame.head - 4 }
  const placer = new Placer(within, measure, undefined, { x: 0, y: 3 })
  const size = small ? type.axis : type.label
  const bold = (text: string, ink: Ink = 'ink') => [span(text, { size, weight: 600, ink })]
  const quiet = (text: string) => [
    span(shortened(text, { size, ink: 'ink2' }, within.width, measure) ?? '', { size, ink: 'ink2' }),
  ]
  const position = (wheel: number) =>
    lengthSpans(onTape(wheel, view.system), view.system, { size, ink: 'ink2' }, { sign: true, unit: true })

  const tags: Tag[] = []
  const limit = (id: string, name: string, wheel: number, by: string, stand: Tag['stand']): void => {
    const value = position(wheel)
    const words = by.split(' ')
    const fits = measure(by, size, 400) <= within.width
    const reason = fits ? [[quiet(by)]] : [words.map(quiet), [quiet(by)]]
    tags.push({
      id,
      y: axis.y(wheel),
      stand,
      wordings: [...reason.map(lines => [bold(name), value, ...lines]), [bold(name), value], [bold(name)], [value]],
    })
  }
  const { engagement } = travel
  const alike =
    engagement !== null &&
    otherTravel?.engagement != null &&
    onTape(engagement, view.system) === onTape(otherTravel.engagement, view.system)
  if (engagement !== null) {
    const under = engagement < travel.droop
    const value = position(engagement)
    const both = measure('in both setups', size, 400) <= within.width ? 'in both setups' : 'in both'
    tags.push({
      id: 'name-engagement',
      y: axis.y(Math.max(engagement, travel.droop)),
      stand: under ? 'above' : 'on',
      wordings: [
        ...(under ? [[bold('Engagement', 'stop'), value, quiet('below full droop')]] : []),
        ...(alike && view.other !== null ? [[bold('Engagement', 'stop'), value, quiet(both)]] : []),
        [bold('Engagement', 'stop'), value],
        [bold('Engages', 'stop'), value],
        [bold('Engagement', 'stop')],
        [value],
      ],
    })
  }
  const others = [0, ...(engagement === null ? [] : [Math.max(engagement, travel.droop)])].map(axis.y)
  const crowds = (y: number, side: 1 | -1): boolean =>
    others.some(line => side * (line - y) < 50 && side * (line - y) >= 0)
  const { bumpLimitedBy, droopLimitedBy } = view.budget.travel
  limit('name-bump', 'Full bump', travel.bump, bumpLimitedBy, crowds(axis.y(travel.bump), 1) ? 'above' : 'below')
  limit('name-droop', 'Full droop', travel.droop, droopLimitedBy, crowds(axis.y(travel.droop), -1) ? 'below' : 'above')
  tags.push({ id: 'name-ride', y: axis.y(0), stand: 'on', wordings: [[bold('Ride height')], [bold('Ride')]] })
  if (view.other !== null && otherTravel?.engagement != null && !alike) {
    const name = quiet(view.other.name)
    const value = position(otherTravel.engagement)
    tags.push({
      id: 'name-other',
      y: axis.y(Math.max(otherTravel.engagement, otherTravel.droop)),
      stand: 'on',
      wordings: [[name, value], [name], [value]],
    })
  }
  const limits = Object.entries(view.budget.limits).filter(([, wheel]) => wheel > travel.bump + 1e-6)
  for (const [name, wheel] of limits.sort(([, a], [, b]) => a - b)) {
    const y = axis.y(wheel)
    if (y < axis.top + 4) continue
    tags.push({
      id: `name-limit-${name.replace(' ', '-')}`,
      y,
      stand: 'on',
      wordings: [name, name.split(' ')[0] ?? name].map(words => [[span(words, { size: type.axis, ink: 'ink2' })]]),
    })
  }

  const top = (text: Block, tag: Tag): number => {
    if (tag.stand === 'below') return tag.y + 4
    if (tag.stand === 'above') return tag.y - text.height - 3
    const first = text.lines[0]
    return first === undefined ? tag.y : tag.y - (first.top + first.bottom) / 2 - 0.5
  }
  const strays = new Set(['name-limit-shock-closed', 'name-limit-coil-bind'])
  for (const tag of tags) {
    const placed = (limitAstray: number) =>
      placer.first(tag.wordings, lines => {
        const text = placer.block(...lines)
        const wanted = top(text, tag)
        const reach = { ...within, y: Math.max(within.y, wanted - limitAstray) }
        const bottom = Math.min(within.y + within.height, wanted + limitAstray + text.height)
        const box = placer.near(tag.id, text, x, wanted + text.height / 2, 'start', {
          ...reach,
          height: bottom - reach.y,
        })
        if (box === null) return null
        if (Math.abs(box.y - wanted) > ASTRAY) {
          const line = text.lines[0]
          placer.leaders.push({
            id: tag.id,
            from: [names.x, tag.y],
            to: [x - 2, box.y + (line === undefined ? 0 : (line.top + line.bottom) / 2)],
          })
        }
        return box
      })
    placed(strays.has(tag.id) ? 12 : 30) ?? (tag.id.startsWith('name-limit') ? null : placed(frame.height))
  }
  return { labels: placer.labels, leaders: placer.leaders }
}
