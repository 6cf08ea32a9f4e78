import type { AxleBudget } from '../../../core/budget/results.ts'
import type { CornerModel } from '../../../core/corner/corner-model.ts'
import type { EvenRun } from '../../../core/runs/evenly.ts'
import type { LaidRun } from '../../../core/runs/lay.ts'
import type { System } from '../../../core/units/quantity.ts'
import { type HistogramBar, type HistogramScale, histogramBars, histogramScale } from '../terrain/histogram-geometry.ts'
import type { Point } from '../terrain/signal-path.ts'
import { heldY } from '../terrain/terrain-scene.ts'
import { isWindowed, type TimeWindow } from '../terrain/time-axis.ts'
import { type TravelScene, travelAndTime } from '../terrain/travel-scene.ts'
import type { MeasureText } from '../text/span.ts'
import { runFrame } from './run-frame.ts'
import { gapsOf, type Piece, piecesOf, pointsOf, shaftSpeeds, shockRatio } from './run-signal.ts'
import { type SpeedScale, speedBars, speedScale } from './speed-scale.ts'

type Share = LaidRun['figures']['share']

/** One recorded wheel on its axle's travel; `ride` is what its time came to, null until that is worked out. */
export interface RecordedWheel {
  readonly name: string
  readonly budget: AxleBudget
  readonly model: CornerModel
  readonly ride: { readonly share: Share; readonly bottoms: number } | null
  readonly laid: Pick<LaidRun, 'figures' | 'run'> | null
}

/** What a recorded wheel is compared with: the other wheel, another run, or a ride that was worked out. */
export interface ComparedWheel {
  readonly name: string
  /** The travel it had; null where that is the same. */
  readonly budget: AxleBudget | null
  readonly model: CornerModel
  readonly ride: { readonly share: Share; readonly bottoms: number } | null
  readonly histogram: readonly number[]
  readonly shaftSpeeds: readonly number[] | null
  /** Where it was at the same times; null where its time is another. */
  readonly run: EvenRun | null
}

/** Moments picked on the trace, s; null where not picked. */
export interface PickedMoments {
  readonly rideHeightAt: number | null
  readonly fullDroopAt: number | null
}

export interface RunView {
  readonly shown: RecordedWheel
  readonly other: ComparedWheel | null
  readonly picked: PickedMoments
  readonly system: System
}

/** What is drawn of one run. */
export interface RunDrawing {
  readonly bars: readonly HistogramBar[]
  readonly speedBars: readonly HistogramBar[]
  /** In the pieces its gaps leave. */
  readonly wheel: readonly (readonly Point[])[]
  readonly speed: readonly (readonly Point[])[]
  /** Times in the window at which it comes to full bump, and meets the stop. */
  readonly bottoms: readonly number[]
  readonly hits: readonly number[]
  /** Gaps in the window, px. */
  readonly gaps: readonly { readonly from: number; readonly to: number }[]
}

/** Everything on the plate of a recorded run that stands still while time passes. */
export interface RunScene extends TravelScene {
  readonly view: RunView
  readonly shown: RunDrawing | null
  readonly other: RunDrawing | null
  readonly start: number
  readonly speeds: SpeedScale
  readonly speedShares: HistogramScale
}

/** When a run begins and ends, s of its own time. */
export function timesOf({ step, stretches }: EvenRun): { readonly start: number; readonly end: number } {
  const last = stretches.at(-1)
  return last === undefined
    ? { start: 0, end: 0 }
    : { start: stretches[0]!.start, end: last.start + (last.values.length - 1) * step }
}

/** When the wheel stands highest: where a look at a run begins, s. */
export function highestIn({ step, stretches }: EvenRun): number {
  let [best, at] = [-Infinity, 0]
  for (const { start, values } of stretches)
    for (let i = 0; i < values.length; i += 1)
      if (values[i]! > best) {
        best = values[i]!
        at = start + i * step
      }
  return at
}

/** A wheel this close to full bump is at it, m. */
const AT_BUMP = 1.5e-3

/** A place is left when the wheel is this far below it, m: less is the sensor's noise. */
const LEFT = 1e-3

/** Times at which a wheel comes up to a place. */
function arrivals(pieces: readonly Piece[], place: number): number[] {
  const times: number[] = []
  for (const { time, values } of pieces) {
    let above = values[0]! >= place
    for (let i = 1; i < values.length; i += 1)
      if (!above && values[i]! >= place) {
        above = true
        times.push(time[i]!)
      } else if (values[i]! < place - LEFT) above = false
  }
  return times
}

/**
 * Lays out the plate of a recorded run.
 * @param window the part of its time that is drawn; @param width, height px, above 0
 */
export function runScene(
  view: RunView,
  window: TimeWindow,
  width: number,
  height: number,
  measure: MeasureText,
): RunScene {
  const { shown, other, system } = view
  const laid = shown.laid
  const { start, end } = laid === null ? { start: 0, end: 0 } : timesOf(laid.run)
  const duration = end - start
  const windowed = duration > 0 && isWindowed({ from: window.from - start, to: window.to - start }, duration)
  const frame = runFrame(width, height, windowed)
  const axes = travelAndTime(shown.budget, other?.budget ?? null, frame, window, system, measure)
  const { axis, time } = axes
  const speedsOf = (shares: readonly number[] | null | undefined): readonly HistogramBar[] =>
    shares == null ? [] : speedBars(shares)
  const allSpeeds = [speedsOf(laid?.figures.shaftSpeeds), speedsOf(other?.shaftSpeeds)]
  const speeds = speedScale(allSpeeds, frame.forces, system)
  const draw = (
    run: EvenRun | null,
    model: CornerModel,
    histogram: readonly number[],
    speedShares: readonly HistogramBar[],
  ): RunDrawing => {
    const pieces = run === null ? [] : piecesOf(run, window)
    return {
      bars: histogramBars(histogram, model.droop, model.bump),
      speedBars: speedShares,
      wheel: pointsOf(pieces, time, wheel => heldY(axis, model, wheel)),
      speed: pointsOf(shaftSpeeds(pieces, shockRatio(model)), time, speeds.y),
      bottoms: arrivals(pieces, model.bump - AT_BUMP),
      hits: model.engagement === null ? [] : arrivals(pieces, model.engagement),
      gaps: run === null ? [] : gapsOf(run, window).map(({ from, to }) => ({ from: time.x(from), to: time.x(to) })),
    }
  }
  const drawings = {
    shown: laid === null ? null : draw(laid.run, shown.model, laid.figures.histogram, allSpeeds[0]!),
    other: other === null ? null : draw(other.run, other.model, other.histogram, allSpeeds[1]!),
  }
  const inset = frame.small ? 10 : 16
  const both = [drawings.shown, drawings.other].filter(drawing => drawing !== null)
  const histogram = histogramScale(
    both.map(({ bars }) => bars),
    frame.histogram,
    inset,
  )
  const speedShares = histogramScale(
    both.map(({ speedBars: bars }) => bars),
    frame.histogram,
    inset,
  )
  return {
    ...axes,
    view,
    frame,
    start,
    duration,
    windowed,
    speeds,
    histogram,
    speedShares,
    ...drawings,
    measure,
  }
}
