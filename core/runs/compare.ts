import type { RideTrace } from '../ride/results.ts'
import type { Quantity } from '../units/quantity.ts'
import type { EvenRun } from './evenly.ts'
import type { RunFigures } from './figures.ts'

/** A ride's wheel as if it had been recorded, so that it is counted as a recorded run is. */
export function rideAsRun({ trace: { time, wheel } }: { readonly trace: RideTrace }): EvenRun {
  const step = time.length < 2 ? 0 : time[1]! - time[0]!
  // The last sample of a ride may come early, at its very end.
  const even = time.length > 2 && time.at(-1)! - time.at(-2)! < step * (1 - 1e-6) ? wheel.subarray(0, -1) : wheel
  return { step, stretches: [{ start: time[0] ?? 0, values: even }], gaps: 0, lost: 0 }
}

/** One figure of two runs side by side. */
export interface FigureDifference {
  readonly id: string
  readonly name: string
  /** What it is written in; null for a count. */
  readonly quantity: Quantity | null
  /** null where that run has none. */
  readonly before: number | null
  readonly after: number | null
  /** after − before; null where one has none. */
  readonly change: number | null
}

type Taken = readonly [id: string, name: string, quantity: Quantity | null, of: (figures: RunFigures) => number | null]

/** Runs last differently: what is counted is told for each minute. */
const aMinute = (count: number, { duration }: RunFigures): number | null =>
  duration > 0 ? (count * 60) / duration : null

const TAKEN: readonly Taken[] = [
  ['droop', 'In droop', 'share', ({ share }) => share.droop],
  ['coilover', 'In the coilover zone', 'share', ({ share }) => share.coilover],
  ['engagement', 'In the engagement zone', 'share', ({ share }) => share.engagement],
  ['on-stop', 'On the stop', 'share', ({ share }) => share.onStop],
  ['hits', 'Hits a minute', null, figures => aMinute(figures.hits, figures)],
  ['bottoms', 'Bottoms a minute', null, figures => aMinute(figures.bottoms, figures)],
  ['stop-speed', 'Fastest into the stop', 'shaftSpeed', ({ stopSpeedMax }) => stopSpeedMax],
  ['wheel-max', 'Highest wheel', 'length', ({ wheelMax }) => wheelMax],
  ['wheel-min', 'Lowest wheel', 'length', ({ wheelMin }) => wheelMin],
  ['wheel-mean', 'Mean wheel', 'length', ({ wheelMean }) => wheelMean],
  ['still', 'Standing still at', 'length', ({ still }) => still],
]

/** Two runs figure by figure, before and after the work, or a ride and what was recorded. Loads are paired by id. */
export function compareFigures(before: RunFigures, after: RunFigures): FigureDifference[] {
  const beyond = after.beyond.flatMap(({ id, label }): Taken[] =>
    before.beyond.some(each => each.id === id)
      ? [
          [
            `beyond-${id}`,
            `Beyond ${label}`,
            'share',
            ({ beyond }) => beyond.find(each => each.id === id)?.share ?? null,
          ],
        ]
      : [],
  )
  return [...TAKEN, ...beyond].map(([id, name, quantity, of]) => {
    const [a, b] = [of(before), of(after)]
    return { id, name, quantity, before: a, after: b, change: a === null || b === null ? null : b - a }
  })
}
