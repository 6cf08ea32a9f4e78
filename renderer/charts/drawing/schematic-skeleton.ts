import type { CornerModel } from '../../../core/corner/corner-model.ts'
import type { Corner } from '../../../core/plan/schema.ts'
import { coiloverBuild } from './coilover.ts'
import { clamp, type Flat } from './flat.ts'
import type { Skeleton } from './skeleton.ts'
import { stopBuild } from './stop-stack.ts'

/**
 * A corner the plan holds no points of: shock and stop upright beside the wheel, each moving by its own travel. The link is drawn as a
 * lever with shock and stop where their motion ratios would put them, kept apart; a fixed ratio makes it a straight line.
 */
export function schematicSkeleton(corner: Corner, { linkage }: CornerModel): Skeleton {
  const { tire, shock, stop } = corner
  const coilover = coiloverBuild(corner)
  const room = coilover.seat + (stop === null ? 0 : 1.6 * stopBuild(stop).half)
  const reach = Math.max(2.3 * tire.radius, 3.2 * room)
  const ratios = linkage.at(0)
  const lower = clamp(ratios.shockRatio, 0.34, 0.7) * reach
  const wanted = clamp(ratios.stopRatio, 0.16, 0.74) * reach
  const apart = wanted > lower ? Math.max(wanted, lower + room) : Math.min(wanted, lower - room)
  const atShock: Flat = [lower - reach, 0]
  const atPad: Flat = [(apart < 0.1 * reach || apart > 0.8 * reach ? 2 * lower - apart : apart) - reach, 0]
  const fixed: Flat = [-reach, 0]
  const lift = stop === null ? 0 : 0.7 * stopBuild(stop).half
  const length = coilover.freeLength - (shock.stroke - shock.showing)
  return {
    kind: 'schematic',
    view: 'schematic',
    hand: 'left',
    pivots: [fixed],
    upper: [atShock[0], length],
    shockLength: length,
    pad: [atPad[0], lift],
    stopAxis: [0, 1],
    at: wheel => {
      const moved = linkage.at(wheel)
      const hub: Flat = [0, wheel]
      const eye: Flat = [atShock[0], moved.shock]
      const pad: Flat = [atPad[0], moved.stop]
      const joints = stop === null ? [eye] : eye[0] < pad[0] ? [eye, pad] : [pad, eye]
      return { hub, lower: eye, drift: 0, turned: 0, members: [[fixed, ...joints, hub]] }
    },
  }
}
