import type { CornerModel } from '../../../core/corner/corner-model.ts'
import type { EvenRun } from '../../../core/runs/evenly.ts'
import { type Point, signalPoints } from '../terrain/signal-path.ts'
import type { TimeAxis, TimeWindow } from '../terrain/time-axis.ts'

/** Values at their times, s, without a gap. */
export interface Piece {
  readonly time: Float64Array
  readonly values: Float64Array
}

/** What a run holds within a window, in the pieces its gaps leave, with one value more at either side where there is one. */
export function piecesOf({ step, stretches }: EvenRun, { from, to }: TimeWindow): Piece[] {
  return stretches.flatMap(({ start, values }) => {
    const first = Math.max(0, Math.floor((from - start) / step))
    const end = Math.min(values.length, Math.ceil((to - start) / step) + 1)
    if (end - first < 2) return []
    const part = values.subarray(first, end)
    return [{ time: Float64Array.from(part, (_, i) => start + (first + i) * step), values: part }]
  })
}

/** Pieces as the points a screen can show of them. */
export const pointsOf = (pieces: readonly Piece[], { window, x }: TimeAxis, y: (value: number) => number): Point[][] =>
  pieces.map(({ time, values }) => signalPoints(time, values, window.from, window.to, x, y))

/** Places of the travel the motion ratio is known at: between them it is taken as straight. */
const PLACES = 256

/** Motion ratio of the shock by wheel position, in shaft over wheel; kept at its last value past the ends. */
export function shockRatio({ droop, bump, linkage }: CornerModel): (wheel: number) => number {
  const span = Math.max(bump - droop, 1e-6)
  const ratios = Float64Array.from({ length: PLACES + 1 }, (_, i) => linkage.at(droop + (span * i) / PLACES).shockRatio)
  return wheel => {
    const at = Math.min(PLACES, Math.max(0, ((wheel - droop) / span) * PLACES))
    const low = Math.min(PLACES - 1, Math.floor(at))
    return ratios[low]! + (at - low) * (ratios[low + 1]! - ratios[low]!)
  }
}

/** Speed of the shock's shaft between the values of each piece, m/s, closing positive. */
export const shaftSpeeds = (pieces: readonly Piece[], ratio: (wheel: number) => number): Piece[] =>
  pieces.map(({ time, values }) => {
    const count = values.length - 1
    const speeds = { time: new Float64Array(count), values: new Float64Array(count) }
    for (let i = 0; i < count; i += 1) {
      const [a, b] = [values[i]!, values[i + 1]!]
      speeds.time[i] = (time[i]! + time[i + 1]!) / 2
      speeds.values[i] = ((b - a) / (time[i + 1]! - time[i]!)) * ratio((a + b) / 2)
    }
    return speeds
  })

/** Gaps within a window, s: nothing is said about what happened in them. */
export const gapsOf = ({ step, stretches }: EvenRun, { from, to }: TimeWindow): { from: number; to: number }[] =>
  stretches.slice(1).flatMap(({ start }, i) => {
    const before = stretches[i]!
    const end = before.start + (before.values.length - 1) * step
    return start > from && end < to ? [{ from: Math.max(from, end), to: Math.min(to, start) }] : []
  })
