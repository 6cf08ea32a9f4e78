import { beamShapes } from './beam-shapes.ts'
import type { Figure } from './figure.ts'
import { hatchedLine } from './hatched-line.ts'
import { type Shape, shape } from './look.ts'
import { closedPath } from './pen.ts'
import type { Place } from './place.ts'
import { towerShapes } from './tower-shapes.ts'

/** The line that the tire, or a solid axle's tube, meets at the chassis, m. */
export interface BumpLine {
  readonly from: number
  readonly to: number
  readonly height: number
}

/** Null where the plan has no clearance, or one so large that the wheel never comes near. */
export function bumpLineOf({ skeleton, axle, model, thickness }: Figure): BumpLine | null {
  const contact = axle.corner.clearance.bump
  const { radius } = axle.corner.tire
  if (contact === null || contact > model.bump + 0.15 * radius) return null
  const [u, v] = skeleton.at(contact).hub
  return skeleton.kind === 'axle'
    ? { from: u - 0.9 * radius, to: u - 0.4 * radius, height: v + thickness.chassis }
    : { from: u - 0.3 * radius, to: u + 0.3 * radius, height: v + radius }
}

/** The fixed end of the schematic's link. */
function fixedEnd(place: Place, { skeleton, coilover }: Figure): Shape[] {
  const [end] = skeleton.pivots
  if (skeleton.kind !== 'schematic' || end === undefined) return []
  const half = 1.1 * coilover.eye
  const low = end[1] - 1.9 * half
  return [
    shape('chassis', closedPath(place, [end, [end[0] + half, low], [end[0] - half, low]])),
    ...hatchedLine(place, end[0] - 1.5 * half, end[0] + 1.5 * half, low, false),
  ]
}

/** What stands still: mounts, tower or frame member, the line the wheel may not pass. */
export function chassisShapes(place: Place, figure: Figure): Shape[] {
  const line = bumpLineOf(figure)
  return [
    ...(line === null ? [] : hatchedLine(place, line.from, line.to, line.height, true)),
    ...(figure.skeleton.kind === 'arm' ? towerShapes(place, figure) : beamShapes(place, figure)),
    ...fixedEnd(place, figure),
  ]
}
