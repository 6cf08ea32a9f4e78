import { beamOf } from './beam-shapes.ts'
import type { Figure, Station } from './figure.ts'
import { between, type Flat, minus, size } from './flat.ts'
import { type Shape, shape } from './look.ts'
import { nearestMember } from './members.ts'
import { openPath } from './pen.ts'
import type { Place } from './place.ts'
import type { Pose } from './skeleton.ts'
import { towerOf } from './tower-shapes.ts'

/** A limit strap from chassis to arm or axle: where it hangs, and its length, m. Where it is fastened is the drawing's own choice. */
export interface Strap {
  readonly top: Flat
  readonly length: number
}

/** Where a strap holds the arm or axle: between the shock's eye and the hub. */
const heldAt = (pose: Pose): Flat => between(nearestMember(pose.members, pose.lower).point, pose.hub, 0.42)

/** The strap that is taut at the plan's droop clearance; null where the plan has none or something else stops the wheel long before. */
export function strapOf(figure: Figure): Strap | null {
  const { model, skeleton, axle } = figure
  const taut = axle.corner.clearance.droop
  if (taut === null || skeleton.kind === 'schematic') return null
  if (-taut < model.droop - 0.15 * axle.corner.tire.radius) return null
  const beam = skeleton.kind === 'axle' ? beamOf(figure) : null
  const top: Flat = beam === null ? towerOf(figure).outer : [beam.right - beam.half, beam.height - beam.half]
  const length = size(minus(heldAt(skeleton.at(-taut)), top))
  return length > 0 ? { top, length } : null
}

/** How far a slack strap bows sideways: a shallow arc of its length over the distance between its ends (s ≈ d + 8h²/3d). */
export function strapLine({ top, length }: Strap, pose: Pose): Flat[] {
  const end = heldAt(pose)
  const distance = size(minus(end, top))
  const bow = distance < length ? Math.min(0.35 * length, Math.sqrt((3 / 8) * distance * (length - distance))) : 0
  return Array.from({ length: 13 }, (_, i) => {
    const share = i / 12
    const [u, v] = between(top, end, share)
    return [u + 4 * bow * share * (1 - share), v]
  })
}

/** Slack, as part of the strap's length, below which it is as good as taut, and above which it hangs out of the way, undrawn. */
const SLACK = { taut: 0.01, seen: 0.12 }

/** Faint as it comes tight, in ink when it holds. */
export function strapShapes(place: Place, strap: Strap | null, { pose }: Station): Shape[] {
  if (strap === null) return []
  const slack = 1 - size(minus(heldAt(pose), strap.top)) / strap.length
  if (slack > SLACK.seen) return []
  return [shape(slack < SLACK.taut ? 'strap' : 'strapSlack', openPath(place, strapLine(strap, pose)))]
}
