import type { CornerModel } from '../../../core/corner/corner-model.ts'
import type { Axle } from '../../../core/plan/schema.ts'
import { armSkeleton } from './arm-skeleton.ts'
import { axleSkeleton } from './axle-skeleton.ts'
import type { Flat } from './flat.ts'
import { schematicSkeleton } from './schematic-skeleton.ts'

/** Where the joints of a corner stand at one wheel position, in the drawing plane. */
export interface Pose {
  readonly hub: Flat
  /** Lower eye of the shock. */
  readonly lower: Flat
  /** Pad off the stop's axis, m, positive to the right looking along the axis. */
  readonly drift: number
  /** How far the arm has turned since ride height, rad, counterclockwise. */
  readonly turned: number
  /** What carries lower eye, pad and hub, as lines between joints; the last point of each is the hub. */
  readonly members: readonly (readonly Flat[])[]
}

/** The joints of a corner in the drawing plane: the wheel to the right, up is up. */
export interface Skeleton {
  readonly kind: 'arm' | 'axle' | 'schematic'
  readonly view: 'side' | 'front' | 'schematic'
  /** Which side of the car a side view shows. */
  readonly hand: 'left' | 'right'
  /** Chassis joints of the arm, or the fixed end of the schematic's link; empty for a solid axle. */
  readonly pivots: readonly Flat[]
  readonly upper: Flat
  /** Eye to eye at ride height, true length, m. */
  readonly shockLength: number
  /** The pad at ride height, and the direction from it to the stop. */
  readonly pad: Flat
  readonly stopAxis: Flat
  at(wheel: number): Pose
}

/** The joints of an axle's corner, from its points where the plan holds them. */
export function skeletonOf(axle: Axle, model: CornerModel): Skeleton {
  const { linkage } = axle.corner
  switch (linkage.kind) {
    case 'arm':
      return armSkeleton(linkage, model)
    case 'axle':
      return axleSkeleton(linkage, axle, model)
    default:
      return schematicSkeleton(axle.corner, model)
  }
}
