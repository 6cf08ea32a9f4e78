import { chassisJoints } from './arm-shapes.ts'
import type { Figure } from './figure.ts'
import { between, type Flat, plus, times } from './flat.ts'
import { type Shape, shape } from './look.ts'
import { closedPath, openPath } from './pen.ts'
import type { Place } from './place.ts'
import { stopMount, stopPost } from './stop-mount.ts'

/** The tubes over an arm: from the pivot's block to the shock's mount, with a crossbar at the stop's height where there is room for one. */
export interface Tower {
  readonly lines: readonly (readonly Flat[])[]
  /** Where the stop's post ends; the shock's mount without a stop. */
  readonly top: Flat
  /** The corner over the wheel's side of the arm. */
  readonly outer: Flat
}

export function towerOf(figure: Figure): Tower {
  const { skeleton, thickness, coilover } = figure
  const unit = thickness.chassis
  const root = chassisJoints(figure).reduce((leftmost, joint) => (joint[0] < leftmost[0] ? joint : leftmost))
  const foot = plus(root, [-0.7 * unit, 1.7 * unit])
  const peak = plus(skeleton.upper, [0, 1.5 * coilover.eye])
  const mount = stopMount(figure)
  const rise = peak[1] - foot[1]
  const height = mount === null ? foot[1] + 0.5 * rise : mount.at[1] + 0.9 * unit
  const crossed = rise > 0 && height > foot[1] + 0.15 * rise && height < peak[1] - 0.12 * rise
  if (!crossed) {
    const lines =
      mount === null
        ? [[foot, peak]]
        : [
            [foot, peak],
            [mount.at, peak],
          ]
    return { lines, top: mount?.at ?? peak, outer: peak }
  }
  const inner = between(foot, peak, (height - foot[1]) / rise)
  const outer: Flat = [Math.max(peak[0] + 0.3 * (peak[1] - height), (mount?.at[0] ?? peak[0]) + 2 * unit), height]
  return {
    lines: [
      [foot, peak],
      [inner, outer],
      [outer, peak],
    ],
    top: [mount?.at[0] ?? peak[0], height],
    outer,
  }
}

/** Tubes as drawn in the trade: edges under, faces over, round ends. */
function tubes(place: Place, lines: Tower['lines'], thickness: number): Shape[] {
  const d = lines.map(line => openPath(place, line)).join('')
  const width = Math.max(2.5, thickness * place.scale)
  return [shape('tubeEdge', d, width + 2), shape('tube', d, width - 0.2)]
}

/** The outline of a pivot's block, in radii of the pivot. */
const BLOCK: readonly Flat[] = [
  [-1.76, -1],
  [-1.88, 2.18],
  [0.47, 2.53],
  [1.18, -0.88],
]

export function towerShapes(place: Place, figure: Figure): Shape[] {
  const unit = figure.thickness.chassis
  const { lines, top } = towerOf(figure)
  const mount = stopMount(figure)
  const blocks = chassisJoints(figure).map(joint =>
    closedPath(
      place,
      BLOCK.map(corner => plus(joint, times(corner, unit))),
    ),
  )
  return [
    ...tubes(place, lines, 0.95 * unit),
    shape('chassis', blocks.join('')),
    ...(mount === null ? [] : stopPost(place, figure, mount.along, mount.along + Math.max(0, top[1] - mount.at[1]))),
  ]
}
