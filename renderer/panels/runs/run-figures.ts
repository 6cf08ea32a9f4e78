import type { RunFigures } from '../../../core/runs/figures.ts'
import { STROKE_SHARES } from '../../../core/runs/strokes.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import type { System } from '../../../core/units/quantity.ts'
import { shownShare } from '../../charts/terrain/shown-share.ts'
import { onTape } from '../../charts/text/length-spans.ts'
import type { FigureRow } from '../terrain/figures.ts'

/** What a run came to, or a ride that was worked out, which has no rest of its own to tell. */
export interface FiguredRun {
  /** Whether the setup it is laid over has a stop. */
  readonly stop: boolean
  /** null until it is worked out. */
  readonly figures: Omit<RunFigures, 'beyond' | 'histogram' | 'shaftSpeeds'> | null
  /** Strokes a minute over each of STROKE_SHARES; null where they are not counted. */
  readonly strokes: readonly number[] | null
  /** It was recorded, and not worked out. */
  readonly recorded: boolean
}

/** Place of half the travel in STROKE_SHARES. */
const HALF = STROKE_SHARES.indexOf(0.5)

const times = (count: number): string => (count === 0 ? 'never' : count === 1 ? 'once' : `${count} times`)

/** What matters of recorded runs in plain words, a column for each. */
export function runRows(runs: readonly FiguredRun[], system: System): FigureRow[] {
  const length = (value: number): string =>
    formatMeasure(onTape(value, system), 'length', system, {
      sign: true,
      unit: true,
      digits: system === 'metric' ? 0 : undefined,
    })
  const row = (
    name: string,
    say: (figures: NonNullable<FiguredRun['figures']>, run: FiguredRun) => string,
  ): FigureRow => ({
    name,
    cells: runs.map(run => (run.figures === null ? null : { text: say(run.figures, run), about: false })),
  })
  const hits = ({ hits: count, duration }: NonNullable<FiguredRun['figures']>): string =>
    count === 0 ? 'none' : duration < 5 ? `${count}` : `${count}, ${Math.round((60 * count) / duration)}/min`
  return [
    ...(runs.some(({ stop }) => stop)
      ? [
          row('Time on the stop', ({ share }) => shownShare(share.onStop)),
          row('Hits on the stop', hits),
          row('Fastest into the stop', figures =>
            figures.hits === 0
              ? 'none'
              : formatMeasure(figures.stopSpeedMax, 'shaftSpeed', system, { unit: true, digits: 0 }),
          ),
        ]
      : []),
    row('Bottoms', ({ bottoms }) => times(bottoms)),
    row('Wheel comes up to', ({ wheelMax }) => length(wheelMax)),
    row('Wheel goes down to', ({ wheelMin }) => length(wheelMin)),
    row('Wheel is on average at', ({ wheelMean }) => length(wheelMean)),
    row('Stands still at', ({ still }, { recorded }) =>
      !recorded ? '' : still === null ? 'never still' : length(still),
    ),
    row('Strokes over half the travel', (_, { strokes }) =>
      strokes === null ? '' : `${strokes[HALF]!.toFixed(1)}/min`,
    ),
    row('Lasts', ({ duration }) => `${duration.toFixed(duration < 100 ? 1 : 0)} s`),
  ]
}

/** The figures in one breath, for someone who hears the page. */
export const spokenRun = (name: string, rows: readonly FigureRow[]): string =>
  `${name}: ${rows
    .slice(0, 4)
    .map(row => `${row.name.toLowerCase()} ${row.cells[0]?.text ?? 'not known'}`)
    .join(', ')}.`
