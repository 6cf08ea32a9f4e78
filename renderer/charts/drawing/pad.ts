import type { Flat } from './flat.ts'
import { directionOf, minus, plus, size, times } from './flat.ts'
import { type Shape, shape } from './look.ts'
import { nearestMember } from './members.ts'
import { closedPath } from './pen.ts'
import type { AxisFrame, Place } from './place.ts'
import type { StopBuild } from './stop-stack.ts'

/** The pad's face along a stop's axis: a straight plate, tilted as the arm has turned since the touch. */
export interface PadStation {
  /** Where its face crosses the axis, m along it. */
  readonly at: number
  /** Its middle, m to the right of the axis. */
  readonly drift: number
  /** Counterclockwise from square to the axis, rad. */
  readonly tilt: number
  /** Plate to the left and right of its middle, m. */
  readonly left: number
  readonly right: number
}

/** A plate never leans further than this in the drawing, rad. */
export const MOST_TILT = 0.5

/**
 * The pad's face such that its distance to the rounded foot, measured square to the face, is the gap times cos tilt: they are tangent
 * exactly when the model's gap is 0. Derived: a face through the axis at t lies (c − t)·cos tilt from the dome's centre c.
 * @param pad m along the axis, from the model
 */
export const padFace = (pad: number, tilt: number, dome: number): number => pad + dome - dome / Math.cos(tilt)

/** Height of the face over a place beside the axis, m along it. */
export const padLine = ({ at, tilt }: PadStation, across: number): number => at + across * Math.tan(tilt)

/**
 * Pad plate and the gusset that carries it, welded to the face of the nearest member of the arm or axle.
 * @param depth half the member's thickness, m
 */
export function padShapes(
  place: Place,
  frame: AxisFrame,
  pad: PadStation,
  build: StopBuild,
  members: readonly (readonly Flat[])[],
  depth: number,
): Shape[] {
  const { drift, tilt, left, right } = pad
  const [cosine, sine] = [Math.cos(tilt), Math.sin(tilt)]
  const middle = padLine(pad, drift)
  const thickness = 0.32 * build.foot
  const on = (along: number, depth: number): Flat =>
    frame(drift + along * cosine + depth * sine, middle + along * sine - depth * cosine)
  const plate = closedPath(place, [on(-left, 0), on(right, 0), on(right, thickness), on(-left, thickness)])
  const under = on((right - left) / 2, thickness)
  const foot = nearestMember(members, under)
  const down = minus(foot.point, under)
  const base = plus(foot.point, times(directionOf(down), -Math.min(0.35 * depth, size(down))))
  const half = 0.62 * build.foot
  const spread = times(foot.direction, 1.15 * build.foot)
  const bracket = closedPath(place, [
    on((right - left) / 2 - half, thickness),
    on((right - left) / 2 + half, thickness),
    ...facing(plus(base, spread), minus(base, spread), minus(on(half, thickness), on(-half, thickness))),
  ])
  return [shape('bracket', bracket), shape('pad', plate)]
}

/** Two points in the order that keeps a quadrilateral from crossing itself: the one further along `direction` first. */
const facing = (a: Flat, b: Flat, direction: Flat): readonly [Flat, Flat] =>
  (a[0] - b[0]) * direction[0] + (a[1] - b[1]) * direction[1] >= 0 ? [a, b] : [b, a]
