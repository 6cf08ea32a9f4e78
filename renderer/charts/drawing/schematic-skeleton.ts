import type { CornerModel } from '../../../core/corner/corner-model.ts'
import type { Corner } from '../../../core/plan/schema.ts'
import { coiloverBuild } from './coilover.ts'
import { clamp, type Flat } from './flat.ts'
import type { Skeleton } from './skeleton.ts'
import { stopBuild } from './stop-stack.ts'

/** Shock and stop as parts of the lever's reach from its fixed end, the smaller motion ratio first, at least `room` apart. */
function keptApart(shockRatio: number, stopRatio: number, room: number): readonly [number, number] {
  const far = clamp(Math.max(shockRatio, stopRatio), 0.4, 0.74)
  const near = Math.min(clamp(Math.min(shockRatio, stopRatio), 0.2, 0.74), far - room)
  return near >= 0.16 ? [near, far] : [0.16, 0.16 + Math.max(room, far - 0.16)]
}

/**
 * A corner the plan holds no points of: shock and stop upright beside the wheel, each moving by its own travel. The link is drawn as a
 * lever with shock and stop where their motion ratios would put them, kept apart; a fixed ratio makes it a straight line.
 */
export function schematicSkeleton(corner: Corner, { linkage }: CornerModel): Skeleton {
  const { tire, shock, stop } = corner
  const coilover = coiloverBuild(corner)
  const half = stop === null ? 0 : stopBuild(stop).half
  const room = stop === null ? 0 : coilover.seat + 1.6 * half
  const reach = Math.max(2 * tire.radius, 3.4 * room)
  const { shockRatio, stopRatio } = linkage.at(0)
  const [near, far] = keptApart(shockRatio, stopRatio, room / reach)
  const stopIsFar = stopRatio > shockRatio
  const atShock = ((stop === null || !stopIsFar ? far : near) - 1) * reach
  const atPad = ((stopIsFar ? far : near) - 1) * reach
  const fixed: Flat = [-reach, 0]
  const length = coilover.freeLength - (shock.stroke - shock.showing)
  return {
    kind: 'schematic',
    view: 'schematic',
    hand: 'left',
    pivots: [fixed],
    upper: [atShock, length],
    shockLength: length,
    pad: [atPad, half],
    stopAxis: [0, 1],
    at: wheel => {
      const moved = linkage.at(wheel)
      const hub: Flat = [0, wheel]
      const eye: Flat = [atShock, moved.shock]
      const pad: Flat = [atPad, moved.stop]
      const joints = stop === null ? [eye] : eye[0] < pad[0] ? [eye, pad] : [pad, eye]
      return { hub, lower: eye, drift: 0, turned: 0, members: [[fixed, ...joints, hub]] }
    },
  }
}
