import type { Figure } from './figure.ts'
import { hatchedLine } from './hatched-line.ts'
import { type Shape, shape } from './look.ts'
import { closedPath } from './pen.ts'
import type { Place } from './place.ts'
import { stopMount, stopPost } from './stop-mount.ts'

/** The frame member that shock and stop hang from: its ends, centre height and half thickness, m. */
export function beamOf(figure: Figure) {
  const { skeleton, thickness, coilover } = figure
  const { upper } = skeleton
  const mount = stopMount(figure)
  const half = Math.max(0.55 * coilover.eye, 0.5 * thickness.chassis)
  const spread = 1.3 * coilover.seat
  return {
    left: Math.min(upper[0], mount?.at[0] ?? upper[0]) - 1.4 * spread,
    right: Math.max(upper[0], mount?.at[0] ?? upper[0]) + spread,
    height: Math.max(upper[1] + 1.6 * coilover.eye, (mount?.at[1] ?? -Infinity) + half),
    half,
  }
}

/** Shock and stop on posts under the member; the schematic's is a hatched line, as a fixed place is. */
export function beamShapes(place: Place, figure: Figure): Shape[] {
  const { skeleton, coilover } = figure
  const { upper } = skeleton
  const mount = stopMount(figure)
  const { left, right, height, half } = beamOf(figure)
  const post = closedPath(place, [
    [upper[0] - 0.7 * coilover.eye, upper[1]],
    [upper[0] + 0.7 * coilover.eye, upper[1]],
    [upper[0] + 1.1 * coilover.eye, height],
    [upper[0] - 1.1 * coilover.eye, height],
  ])
  const posts = [
    ...(mount === null ? [] : stopPost(place, figure, mount.along, mount.along + Math.max(0, height - mount.at[1]))),
    shape('chassisMount', post),
  ]
  if (skeleton.kind === 'schematic') return [...posts, ...hatchedLine(place, left, right, height, true)]
  const member = closedPath(place, [
    [left, height + half],
    [right, height + half],
    [right, height - half],
    [left, height - half],
    [left - 0.4 * half, height - half / 2],
    [left, height],
    [left + 0.4 * half, height + half / 2],
  ])
  return [...posts, shape('chassis', member)]
}
