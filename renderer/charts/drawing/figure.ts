import type { CornerModel } from '../../../core/corner/corner-model.ts'
import type { Axle } from '../../../core/plan/schema.ts'
import { type CoiloverBuild, type CoiloverStations, coiloverBuild, coiloverStations } from './coilover.ts'
import { clamp, directionOf, type Flat, minus, size } from './flat.ts'
import { MOST_TILT, type PadStation, padFace } from './pad.ts'
import { type AxisFrame, axisFrame } from './place.ts'
import { type Pose, type Skeleton, skeletonOf } from './skeleton.ts'
import { type StopBuild, type StopStations, stopBuild, stopStations } from './stop-stack.ts'

/** A stop and its pad, m. */
export interface StopFigure {
  readonly build: StopBuild
  /** Along the stop's axis from the pad at ride height. */
  readonly frame: AxisFrame
  /** Plate to the left and right of its middle. */
  readonly left: number
  readonly right: number
}

/** A corner ready to be drawn at any wheel position; m. */
export interface Figure {
  readonly axle: Axle
  readonly model: CornerModel
  readonly skeleton: Skeleton
  readonly coilover: CoiloverBuild
  readonly stop: StopFigure | null
  /** Radii of arm, tube or link at the chassis and at the hub. */
  readonly thickness: { readonly chassis: number; readonly hub: number }
  /** Wheel position at which the pad lies square to the stop. */
  readonly square: number
}

/** Where everything stands at one wheel position. */
export interface Station {
  readonly wheel: number
  readonly pose: Pose
  readonly coilover: CoiloverStations
  /** Along the shock from its lower eye, as drawn. */
  readonly shockFrame: AxisFrame
  /** Drawn length over true length along the shock: below 1 where it leans out of the view. */
  readonly shrink: number
  readonly stop: { readonly stations: StopStations; readonly pad: PadStation } | null
}

/** The plate is this much wider than the foot on both sides of where it is met, in halves of the foot. */
const PLATE = 1.45

function stopFigure(model: CornerModel, skeleton: Skeleton, square: number): StopFigure | null {
  const { stop } = model.corner
  if (stop === null) return null
  const build = stopBuild(stop)
  const met = [0, 0.5, 1].map(share => -skeleton.at(square + share * (model.bump - square)).drift)
  const half = PLATE * build.foot
  return {
    build,
    frame: axisFrame(skeleton.pad, skeleton.stopAxis),
    left: half - Math.min(0, ...met),
    right: half + Math.max(0, ...met),
  }
}

export function figureOf(axle: Axle, model: CornerModel): Figure {
  const skeleton = skeletonOf(axle, model)
  const coilover = coiloverBuild(axle.corner)
  const reach = Math.max(0, ...skeleton.pivots.map(size))
  const { radius } = axle.corner.tire
  const arm = (share: number): number => clamp(share * reach, 0.7 * coilover.eye, 1.7 * coilover.eye)
  const square = Math.max(model.droop, model.engagement ?? 0)
  return {
    axle,
    model,
    skeleton,
    coilover,
    stop: stopFigure(model, skeleton, square),
    thickness: {
      arm: { chassis: arm(0.05), hub: arm(0.06) },
      axle: { chassis: 0.1 * radius, hub: 0.1 * radius },
      schematic: { chassis: 0, hub: 0 },
    }[skeleton.kind],
    square,
  }
}

export function stationAt(figure: Figure, wheel: number): Station {
  const { model, skeleton, stop, square } = figure
  const pose = skeleton.at(wheel)
  const coilover = coiloverStations(figure.coilover, model, skeleton.shockLength, wheel)
  const shock = minus(skeleton.upper, pose.lower)
  const shrink = coilover.length > 1e-9 ? Math.min(1, size(shock) / coilover.length) : 1
  const stations = stop === null ? null : stopStations(stop.build, model, wheel)
  return {
    wheel,
    pose,
    coilover,
    shrink,
    shockFrame: axisFrame(pose.lower, directionOf(shock), shrink),
    stop:
      stop === null || stations === null
        ? null
        : { stations, pad: padStation(stop, stations, pose, skeleton.at(square).turned) },
  }
}

function padStation(
  { build, left, right }: StopFigure,
  stations: StopStations,
  pose: Pose,
  square: number,
): PadStation {
  const tilt = clamp(pose.turned - square, -MOST_TILT, MOST_TILT)
  return { at: padFace(stations.pad, tilt, build.dome), drift: pose.drift, tilt, left, right }
}

/** The hub's way from full droop to full bump, or between any two wheel positions. */
export function wheelPath({ skeleton }: Figure, from: number, to: number): Flat[] {
  const points: Flat[] = []
  for (let i = 0; i <= 12; i += 1) points.push(skeleton.at(from + ((to - from) * i) / 12).hub)
  return points
}
