import type { AxleBudget } from '../../../core/budget/results.ts'
import type { CornerModel } from '../../../core/corner/corner-model.ts'
import type { System } from '../../../core/units/quantity.ts'
import type { Rode } from '../../workers/messages.ts'
import type { WheelAxis } from '../plate/wheel-axis.ts'
import { onTape } from '../text/length-spans.ts'
import type { MeasureText } from '../text/span.ts'
import { clippedTimes, type ForceScale, forceScale } from './force-scale.ts'
import { type HistogramBar, histogramBars, histogramScale } from './histogram-geometry.ts'
import { bottomTimes } from './moment.ts'
import { type Point, signalPoints } from './signal-path.ts'
import { type TerrainFrame, terrainFrame } from './terrain-frame.ts'
import { isWindowed, type TimeAxis, type TimeWindow } from './time-axis.ts'
import { type TravelScene, travelAndTime } from './travel-scene.ts'

/** One setup's axle and what it did on the terrain; `ride` is null where there is nothing to draw of it. */
export interface RiddenSetup {
  readonly name: string
  readonly budget: AxleBudget
  readonly model: CornerModel
  readonly ride: Rode | null
}

export interface TerrainView {
  readonly shown: RiddenSetup
  readonly other: RiddenSetup | null
  readonly system: System
}

/** What is drawn of one setup. */
export interface RideDrawing {
  readonly bars: readonly HistogramBar[]
  readonly wheel: readonly Point[]
  readonly suspension: readonly Point[]
  readonly stop: readonly Point[]
  /** Times at which it bottoms, and at which its force leaves the scale; in the window. */
  readonly bottoms: readonly number[]
  readonly clipped: readonly number[]
}

/** Everything on the terrain plate that stands still while time passes. */
export interface TerrainScene extends TravelScene {
  readonly view: TerrainView
  readonly forces: ForceScale
  readonly shown: RideDrawing | null
  readonly other: RideDrawing | null
  /** Height of the road under the wheel. */
  readonly road: readonly Point[]
}

/** Whether any setup drawn has a stop to be on. */
export const hasStop = ({ shown, other }: Pick<TerrainView, 'shown' | 'other'>): boolean =>
  [shown, other].some(setup => setup !== null && setup.model.corner.stop !== null)

const traceOf = (setup: RiddenSetup | null) => setup?.ride?.trace ?? null

export const durationOf = ({ shown, other }: TerrainView): number =>
  Math.max(shown.ride?.duration ?? 0, other?.ride?.duration ?? 0)

const within =
  ({ from, to }: TimeWindow) =>
  (time: number): boolean =>
    time >= from && time <= to

/** The road in its strip: its own scale, its lowest place at the foot. */
function roadPoints({ shown, other }: TerrainView, { road }: TerrainFrame, time: TimeAxis): Point[] {
  const trace = traceOf(shown) ?? traceOf(other)
  if (trace === null) return []
  let [low, high] = [0, 0]
  for (const height of trace.road) {
    low = Math.min(low, height)
    high = Math.max(high, height)
  }
  const room = Math.max(1, road.bottom - road.top - 4)
  const scale = high > low ? room / (high - low) : 0
  const y = (height: number): number => road.bottom - (height - low) * scale
  return signalPoints(trace.time, trace.road, time.window.from, time.window.to, time.x, y)
}

/** Past full bump and full droop the wheel presses into steel: how far is drawn as no more than this, px. */
const INTO_STEEL = 5

/** Where a wheel stands on the axis, its ends included. */
export const heldY = (axis: WheelAxis, { bump, droop }: CornerModel, wheel: number): number =>
  Math.min(axis.y(droop) + INTO_STEEL, Math.max(axis.y(bump) - INTO_STEEL, axis.y(wheel)))

function rideDrawing(
  setup: RiddenSetup | null,
  time: TimeAxis,
  axis: WheelAxis,
  forces: ForceScale,
): RideDrawing | null {
  const trace = traceOf(setup)
  if (setup === null || setup.ride === null || trace === null) return null
  const { from, to } = time.window
  const points = (values: ArrayLike<number>, y: (value: number) => number): Point[] =>
    signalPoints(trace.time, values, from, to, time.x, y)
  const inside = within(time.window)
  return {
    bars: histogramBars(setup.ride.histogram, setup.model.droop, setup.model.bump),
    wheel: points(trace.wheel, wheel => heldY(axis, setup.model, wheel)),
    suspension: points(trace.suspensionForce, forces.y),
    stop: points(trace.stopForce, forces.y),
    bottoms: setup.ride.bottoms > 0 ? bottomTimes(trace, setup.model.bump).filter(inside) : [],
    clipped: clippedTimes(trace, forces).filter(inside),
  }
}

/**
 * Lays out the terrain plate.
 * @param width, height px, above 0
 */
export function terrainScene(
  view: TerrainView,
  window: TimeWindow,
  width: number,
  height: number,
  measure: MeasureText,
): TerrainScene {
  const { shown, other, system } = view
  const duration = durationOf(view)
  const windowed = duration > 0 && isWindowed(window, duration)
  const frame = terrainFrame(width, height, windowed)
  const axes = travelAndTime(shown.budget, other?.budget ?? null, frame, window, system, measure)
  const { axis, time } = axes
  const travelled = [shown, other].flatMap(setup => {
    const moments = traceOf(setup)
    return setup === null || moments === null
      ? []
      : [{ trace: moments, bump: setup.model.bump, droop: setup.model.droop }]
  })
  const forces = forceScale(travelled, { ...frame.forces, bottom: frame.forces.bottom - 1 }, system)
  const drawings = [shown, other].map(setup => rideDrawing(setup, time, axis, forces))
  const histogram = histogramScale(
    drawings.flatMap(drawing => (drawing === null ? [] : [drawing.bars])),
    frame.histogram,
    frame.small ? 10 : 16,
  )
  return {
    ...axes,
    view,
    frame,
    duration,
    windowed,
    forces,
    histogram,
    shown: drawings[0] ?? null,
    other: drawings[1] ?? null,
    road: roadPoints(view, frame, time),
    measure,
  }
}

/** Whether two positions are the same on a tape. */
export const sameOnTape = (a: number, b: number, system: System): boolean => onTape(a, system) === onTape(b, system)
