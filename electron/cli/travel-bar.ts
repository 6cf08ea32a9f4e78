import type { AxleBudget, ZoneId } from '../../core/budget/results.ts'
import type { System } from '../../core/units/quantity.ts'
import { paragraph } from './paragraph.ts'
import { length, onTape } from './tape.ts'

/** Rows of the bar between its ends. */
const ROWS = 14
const FILL: Readonly<Record<ZoneId, string>> = { droop: '│', coilover: '░', engagement: '▓' }

interface Mark {
  readonly at: number
  readonly words: string
}

/** Wheel positions worth naming, as they are shown, highest first; those on one mark share a line. */
function marks(axle: AxleBudget, system: System): readonly Mark[] {
  const { travel, engagement, crossover, static: rest } = axle
  const all: Mark[] = [
    { at: travel.bump, words: `full bump: ${travel.bumpLimitedBy}` },
    ...(engagement === null ? [] : [{ at: Math.max(-travel.droop, engagement.wheel), words: 'engagement' }]),
    ...(crossover === null ? [] : [{ at: crossover, words: 'crossover' }]),
    { at: 0, words: 'ride height' },
    { at: rest.position, words: 'rests here' },
    { at: -travel.droop, words: `full droop: ${travel.droopLimitedBy}` },
  ]
  const rounded = all.map(({ at, words }) => ({ at: onTape(at, system), words }))
  const places = [...new Set(rounded.map(({ at }) => at))].sort((a, b) => b - a)
  return places.map(at => ({
    at,
    words: rounded
      .filter(each => each.at === at)
      .map(({ words }) => words)
      .join(', '),
  }))
}

/** Shares of bump travel in whole percent, adding up to 100. */
function shares(axle: AxleBudget): Readonly<Record<ZoneId, string>> {
  const coilover = Math.round(100 * (axle.zones.find(zone => zone.id === 'coilover')?.share ?? 0))
  return { droop: '', coilover: `  ${coilover} %`, engagement: `  ${100 - coilover} %` }
}

const NAMES: Readonly<Record<ZoneId, string>> = {
  droop: 'droop',
  coilover: 'coilover zone',
  engagement: 'engagement zone',
}

/** Zones as shown: ends rounded first, so that lengths add up. */
const shownZones = (axle: AxleBudget, system: System) =>
  axle.zones.map(({ id, from, to }) => ({ id, from: onTape(from, system), to: onTape(to, system) }))

/** One line of the bar: a named position, or a piece of a zone. */
interface BarLine {
  readonly at: string
  readonly bar: string
  readonly zone: ZoneId | null
  readonly words: string
}

/** From full bump down to full droop, pieces of zones in proportion to their length. */
function barLines(axle: AxleBudget, zones: ReturnType<typeof shownZones>, system: System): BarLine[] {
  const places = marks(axle, system)
  const total = places[0]!.at - places.at(-1)!.at
  return places.flatMap(({ at, words }, i): BarLine[] => {
    const end = i === 0 ? '┬' : i === places.length - 1 ? '┴' : '┼'
    const mark = { at: length(at, system), bar: end, zone: null, words }
    const next = places[i + 1]
    if (next === undefined) return [mark]
    const middle = (at + next.at) / 2
    const zone = zones.find(({ from, to }) => from < middle && middle < to)!.id
    const count = Math.max(1, Math.round((ROWS * (at - next.at)) / total))
    return [mark, ...Array<BarLine>(count).fill({ at: '', bar: FILL[zone], zone, words: '' })]
  })
}

/** The wheel's travel as an upright bar, full bump at the top, in proportion, with what each part of it is spent on. */
export function travelBar(axle: AxleBudget, system: System): string {
  const zones = shownZones(axle, system)
  const share = shares(axle)
  const lines = barLines(axle, zones, system)
  const labels = new Map<number, string>()
  for (const { id, from, to } of zones) {
    const own = lines.flatMap(({ zone }, i) => (zone === id ? [i] : []))
    const centre = own[Math.floor((own.length - 1) / 2)]
    if (centre !== undefined) labels.set(centre, `${NAMES[id]}  ${length(to - from, system)}${share[id]}`)
  }
  const margin = Math.max(...lines.map(({ at }) => at.length))
  return lines
    .map(({ at, bar, zone, words }, i) => {
      const first = `  ${at.padStart(margin)} ${bar} `
      if (zone === null) return paragraph(words, first, ' '.repeat(first.length))
      return `${`${first}  ${labels.get(i) ?? ''}`.trimEnd()}\n`
    })
    .join('')
}
