import type { Figure, Station } from './figure.ts'
import { type Flat, minus, size } from './flat.ts'
import { type Shape, shape } from './look.ts'
import { nearestMember } from './members.ts'
import { circlePath, closedPath, linkPath, openPath } from './pen.ts'
import type { Place } from './place.ts'

/** Pivots drawn as one joint when they lie closer than this many radii. */
const ONE_JOINT = 1.6

/** The tab that carries the lower eye when it stands off the arm or axle. */
function tab(place: Place, { coilover, thickness }: Figure, { pose }: Station): string {
  const root = nearestMember(pose.members, pose.lower).point
  const off = size(minus(root, pose.lower))
  return off > 0.4 * thickness.chassis
    ? linkPath(place, root, Math.max(thickness.chassis, 1.1 * coilover.eye), pose.lower, 1.25 * coilover.eye)
    : circlePath(place, pose.lower, 1.25 * coilover.eye)
}

/** One body of several outlines: all their edges first, their faces over them. */
const union = (outlines: readonly string[]): Shape[] => [
  shape('armEdge', outlines.join('')),
  ...outlines.map(outline => shape('arm', outline)),
]

function swingingArm(place: Place, figure: Figure, station: Station, eye: boolean): Shape[] {
  const { chassis, hub } = figure.thickness
  const joints = chassisJoints(figure)
  const links = joints.map(joint => linkPath(place, joint, chassis, station.pose.hub, hub))
  return [
    ...union(eye ? [...links, tab(place, figure, station)] : links),
    shape('joint', joints.map(joint => circlePath(place, joint, chassis, 2.4)).join('')),
    shape('jointCentre', joints.map(joint => circlePath(place, joint, 0.36 * chassis, 1)).join('')),
  ]
}

/** The tube of a solid axle: cut at the left, a flange at the wheel. */
function axleTube(place: Place, figure: Figure, station: Station, eye: boolean): Shape[] {
  const half = figure.thickness.chassis
  const [cut, hub] = [station.pose.members[0]![0]!, station.pose.hub]
  const v = hub[1]
  const edge: Flat[] = [
    [cut[0], v + half],
    [cut[0] + 0.4 * half, v + half / 2],
    [cut[0], v],
    [cut[0] - 0.4 * half, v - half / 2],
    [cut[0], v - half],
  ]
  const tube = closedPath(place, [...edge, [hub[0], v - half], [hub[0], v + half]])
  const flange = closedPath(place, [
    [hub[0] - 2.6 * half, v - 1.7 * half],
    [hub[0] - 1.9 * half, v - 1.7 * half],
    [hub[0] - 1.9 * half, v + 1.7 * half],
    [hub[0] - 2.6 * half, v + 1.7 * half],
  ])
  return union(eye ? [tube, flange, tab(place, figure, station)] : [tube, flange])
}

/** The link of a corner without points: a line through fixed end, pad, eye and hub. */
function schematicLink(place: Place, figure: Figure, station: Station, eye: boolean): Shape[] {
  const { members, lower } = station.pose
  return [
    shape('link', members.map(joints => openPath(place, joints)).join('')),
    shape('joint', circlePath(place, members[0]![0]!, 0.6 * figure.coilover.eye, 2.4)),
    ...(eye ? [shape('jointCentre', circlePath(place, lower, 0.3 * figure.coilover.eye, 1))] : []),
  ]
}

/** @param eye whether the tab of the shock's lower eye is drawn with it */
export function armShapes(place: Place, figure: Figure, station: Station, eye = true): Shape[] {
  switch (figure.skeleton.kind) {
    case 'arm':
      return swingingArm(place, figure, station, eye)
    case 'axle':
      return axleTube(place, figure, station, eye)
    case 'schematic':
      return schematicLink(place, figure, station, eye)
  }
}

/** Pivots as drawn: one where they lie one behind the other. */
export function chassisJoints({ skeleton: { pivots }, thickness }: Figure): Flat[] {
  const [a, b] = pivots
  if (a === undefined) return []
  if (b === undefined) return [a]
  if (size(minus(a, b)) > ONE_JOINT * thickness.chassis) return [a, b]
  return [[(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]]
}

/** The hub, over everything. */
export const hubShapes = (place: Place, figure: Figure, { pose: { hub } }: Station): Shape[] => {
  const radius = 0.13 * figure.axle.corner.tire.radius
  return [
    shape('hub', circlePath(place, hub, radius, 5)),
    shape('jointCentre', circlePath(place, hub, 0.22 * radius, 3)),
  ]
}
