import type { ContactFigure } from '../../../core/ride/results.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import { fromUnit, type System } from '../../../core/units/quantity.ts'
import { shownShare } from '../../charts/terrain/shown-share.ts'
import { onTape } from '../../charts/text/length-spans.ts'
import type { LandingLimit } from '../../state/landing-limit.ts'
import type { Rode } from '../../workers/messages.ts'

/** One figure of one setup, as the table says it. */
export interface FigureCell {
  readonly text: string
  /** It hangs on how stiff steel is where it meets steel. */
  readonly about: boolean
}

export interface FigureRow {
  readonly name: string
  readonly cells: readonly (FigureCell | null)[]
}

export interface FiguredRide {
  /** Whether the setup has a stop. */
  readonly stop: boolean
  readonly ride: Rode | null
  /** Where the terrain is a landing. */
  readonly limit: LandingLimit | null
}

const exactly = (text: string): FigureCell => ({ text, about: false })

/** A count for the run, and a minute where it goes on long enough for that to mean something. */
function hits({ hits: count, duration }: Rode): string {
  if (count === 0) return 'none'
  const rate = Math.round((60 * count) / duration)
  return duration < 5 ? `${count}` : `${count}, ${rate}/min`
}

const times = (count: number): string => (count === 0 ? 'never' : count === 1 ? 'once' : `${count} times`)

function landing({ takes, fails }: LandingLimit, system: System): string {
  const mark = fromUnit(system === 'inch' ? 1 : 10, 'length', system)
  const say = (drop: number): string =>
    formatMeasure(Math.floor(drop / mark) * mark, 'length', system, { unit: true, digits: 0, decimal: true })
  if (fails === null) return takes === null ? '' : `more than ${say(takes)}`
  return takes === null ? `less than ${say(fails)}` : say(takes)
}

/** What matters of a ride, in plain words, a column for each setup. */
export function figureRows(rides: readonly FiguredRide[], system: System): FigureRow[] {
  const row = (name: string, say: (ride: Rode) => string, hangs?: ContactFigure): FigureRow => ({
    name,
    cells: rides.map(({ ride }) =>
      ride === null ? null : { text: say(ride), about: hangs !== undefined && ride.contactDependent.includes(hangs) },
    ),
  })
  const g = (acceleration: number): string =>
    formatMeasure(acceleration, 'acceleration', system, { unit: true, digits: acceleration >= 98 ? 0 : 1 })
  const angle = (value: number): string => `${formatMeasure(value, 'angle', system)}°`
  const length = (value: number): string =>
    formatMeasure(onTape(value, system), 'length', system, {
      sign: true,
      unit: true,
      digits: system === 'metric' ? 0 : undefined,
    })
  const limits = rides.some(({ limit }) => limit !== null)
    ? [
        {
          name: 'Highest drop it takes',
          cells: rides.map(({ limit }) => (limit === null ? null : exactly(landing(limit, system)))),
        },
      ]
    : []
  const stop = rides.some(({ stop: has }) => has)
    ? [
        row('Time on the stop', ride => shownShare(ride.share.onStop)),
        row('Hits on the stop', hits),
        row('Fastest hit on the stop', ride =>
          ride.hits === 0 ? 'none' : formatMeasure(ride.stopSpeedMax, 'shaftSpeed', system, { unit: true, digits: 0 }),
        ),
      ]
    : []
  return [
    ...limits,
    ...stop,
    row('Bottoms', ride => times(ride.bottoms)),
    row('Wheel comes up to', ride => (ride.bottoms > 0 ? 'full bump' : length(ride.wheelMax))),
    row('Hardest chassis jolt', ride => g(ride.chassisAccelMax), 'chassisAccelMax'),
    row('Chassis shaking, rms', ride => g(ride.chassisAccelRms), 'chassisAccelRms'),
    ...(rides.some(({ ride }) => ride !== null && ride.pitch !== null)
      ? [
          row('Nose down, and up', ({ pitch }) =>
            pitch === null ? '' : `${angle(pitch.most)}, ${angle(-pitch.least)}`,
          ),
        ]
      : []),
    row('Time off the ground', ride => shownShare(ride.share.air)),
  ]
}

/** The figures in one breath, for someone who hears the page: each setup's first three. */
export function spokenFigures(terrain: string, names: readonly string[], rows: readonly FigureRow[]): string {
  const setups = names.map((name, i) => {
    const said = rows.slice(0, 3).map(row => `${row.name.toLowerCase()} ${row.cells[i]?.text ?? 'not known'}`)
    return `${name}: ${said.join(', ')}.`
  })
  return [`${terrain}.`, ...setups].join(' ')
}
