import { chassisJoints } from './arm-shapes.ts'
import { bar } from './coilover-shapes.ts'
import type { Figure } from './figure.ts'
import { between, type Flat, plus, times } from './flat.ts'
import { type Shape, shape } from './look.ts'
import { closedPath, openPath } from './pen.ts'
import type { Place } from './place.ts'
import { stopStations } from './stop-stack.ts'

/** Where the chassis holds the stop: the far end of its body. */
function stopMount({ stop, model }: Figure): { readonly at: Flat; readonly along: number } | null {
  if (stop === null) return null
  const stations = stopStations(stop.build, model, 0)
  return stations === null ? null : { at: stop.frame(0, stations.top), along: stations.top }
}

/** Tubes as drawn in the trade: edges under, faces over, round ends. */
function tubes(place: Place, lines: readonly (readonly Flat[])[], thickness: number): Shape[] {
  const d = lines.map(line => openPath(place, line)).join('')
  const width = Math.max(2.5, thickness * place.scale)
  return [shape('tubeEdge', d, width + 2), shape('tube', d, width - 0.2)]
}

const stub = (place: Place, { stop }: Figure, from: number, to: number): Shape[] =>
  stop === null || to <= from
    ? []
    : [shape('chassisMount', bar(place, stop.frame, 0.62 * stop.build.half, { from, to }))]

/** Tower over an arm: from the pivot's block up to the shock's mount, with a crossbar at the stop's height. */
function tower(place: Place, figure: Figure): Shape[] {
  const { skeleton, thickness, coilover } = figure
  const joints = chassisJoints(figure)
  const unit = thickness.chassis
  const root = joints.reduce((lowest, joint) => (joint[0] < lowest[0] ? joint : lowest))
  const foot = plus(root, [-0.7 * unit, 1.7 * unit])
  const peak = plus(skeleton.upper, [0, 1.5 * coilover.eye])
  const mount = stopMount(figure)
  const rise = peak[1] - foot[1]
  const wanted = mount === null ? foot[1] + 0.5 * rise : mount.at[1] + 0.9 * unit
  const high = rise > 0 && wanted > foot[1] + 0.15 * rise && wanted < peak[1] - 0.12 * rise
  const lines: Flat[][] = [[foot, peak]]
  let top = mount?.at ?? peak
  if (high) {
    const left = between(foot, peak, (wanted - foot[1]) / rise)
    const reach = Math.max(peak[0] + 0.3 * (peak[1] - wanted), (mount?.at[0] ?? peak[0]) + 2 * unit)
    lines.push([left, [reach, wanted]], [[reach, wanted], peak])
    top = [mount?.at[0] ?? peak[0], wanted]
  } else if (mount !== null) lines.push([mount.at, peak])
  const blocks = joints.map(joint =>
    closedPath(
      place,
      (
        [
          [-1.76, -1],
          [-1.88, 2.18],
          [0.47, 2.53],
          [1.18, -0.88],
        ] as const
      ).map(corner => plus(joint, times(corner, unit))),
    ),
  )
  const along = mount === null ? 0 : mount.along + Math.max(0, top[1] - mount.at[1])
  return [
    ...tubes(place, lines, 0.95 * unit),
    shape('chassis', blocks.join('')),
    ...(mount === null ? [] : stub(place, figure, mount.along, along)),
  ]
}

/** A frame member across the top: shock and stop hang from it. The schematic's is hatched, as a fixed place is. */
function beam(place: Place, figure: Figure): Shape[] {
  const { skeleton, thickness, coilover } = figure
  const { upper } = skeleton
  const mount = stopMount(figure)
  const half = Math.max(0.55 * coilover.eye, 0.5 * thickness.chassis)
  const high = Math.max(upper[1] + 1.6 * coilover.eye, (mount?.at[1] ?? -Infinity) + half)
  const spread = 1.3 * coilover.seat
  const left = Math.min(upper[0], mount?.at[0] ?? upper[0]) - 1.4 * spread
  const right = Math.max(upper[0], mount?.at[0] ?? upper[0]) + spread
  const post = closedPath(place, [
    [upper[0] - 0.7 * coilover.eye, upper[1]],
    [upper[0] + 0.7 * coilover.eye, upper[1]],
    [upper[0] + 1.1 * coilover.eye, high],
    [upper[0] - 1.1 * coilover.eye, high],
  ])
  const hang = mount === null ? [] : stub(place, figure, mount.along, mount.along + Math.max(0, high - mount.at[1]))
  if (skeleton.kind === 'schematic') {
    const hatch: string[] = []
    for (let u = left; u < right; u += (right - left) / 18)
      hatch.push(
        openPath(place, [
          [u, high],
          [u + 0.9 * half, high + 1.3 * half],
        ]),
      )
    return [
      ...hang,
      shape('chassisMount', post),
      shape(
        'bumpLine',
        openPath(place, [
          [left, high],
          [right, high],
        ]),
      ),
      shape('chassisHatch', hatch.join('')),
    ]
  }
  return [
    ...hang,
    shape('chassisMount', post),
    shape(
      'chassis',
      closedPath(place, [
        [left, high + half],
        [right, high + half],
        [right, high - half],
        [left, high - half],
        [left - 0.4 * half, high - half / 2],
        [left, high],
        [left + 0.4 * half, high + half / 2],
      ]),
    ),
  ]
}

/** Where the tire, or a solid axle's tube, meets the chassis: a ruled line with the solid side hatched. */
function bumpLine(place: Place, figure: Figure): Shape[] {
  const { skeleton, axle, model, thickness } = figure
  const contact = axle.corner.clearance.bump
  const { radius } = axle.corner.tire
  if (contact === null || contact > model.bump + 0.15 * radius) return []
  const [u, v] = skeleton.at(contact).hub
  const [from, to, high] =
    skeleton.kind === 'axle'
      ? ([u - 0.85 * radius, u - 0.4 * radius, v + thickness.chassis] as const)
      : ([u - 0.3 * radius, u + 0.3 * radius, v + radius] as const)
  const step = (to - from) / 10
  const hatch = Array.from({ length: 10 }, (_, i) =>
    openPath(place, [
      [from + i * step, high],
      [from + (i + 0.8) * step, high + 0.9 * step],
    ]),
  )
  return [
    shape('chassisHatch', hatch.join('')),
    shape(
      'bumpLine',
      openPath(place, [
        [from, high],
        [to, high],
      ]),
    ),
  ]
}

/** What stands still: mounts, tower or frame member, the line the wheel may not pass. */
export function chassisShapes(place: Place, figure: Figure): Shape[] {
  const body = figure.skeleton.kind === 'arm' ? tower(place, figure) : beam(place, figure)
  return [...bumpLine(place, figure), ...body, ...fixedEnd(place, figure)]
}

/** The fixed end of the schematic's link. */
function fixedEnd(place: Place, { skeleton, coilover }: Figure): Shape[] {
  const [end] = skeleton.pivots
  if (skeleton.kind !== 'schematic' || end === undefined) return []
  const half = 1.1 * coilover.eye
  const low = end[1] - 1.9 * half
  const hatch = [-1, -0.5, 0, 0.5, 1].map(share =>
    openPath(place, [
      [end[0] + share * half, low],
      [end[0] + share * half - 0.5 * half, low - 0.6 * half],
    ]),
  )
  return [
    shape('chassis', closedPath(place, [end, [end[0] + half, low], [end[0] - half, low]])),
    shape(
      'bumpLine',
      openPath(place, [
        [end[0] - 1.5 * half, low],
        [end[0] + 1.5 * half, low],
      ]),
    ),
    shape('chassisHatch', hatch.join('')),
  ]
}
