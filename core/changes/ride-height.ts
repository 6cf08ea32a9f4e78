import { sprungWeight } from '../budget/budget.ts'
import { cornerModel } from '../corner/corner.ts'
import type { CornerModel } from '../corner/corner-model.ts'
import { restingPosition } from '../corner/static-position.ts'
import type { LinkageModel } from '../linkage/linkage-model.ts'
import type { Corner, Linkage, Point } from '../plan/schema.ts'

/** Wheel positions nearer than this are one, m. */
const SAME = 1e-9

const lifted = ([x, y, z]: Point, by: number): Point => [x, y, z + by]

function linkageFrom(linkage: Linkage, model: LinkageModel, wheel: number): Linkage {
  switch (linkage.kind) {
    case 'ratio':
      return linkage
    case 'table': {
      const { shock, stop } = model.at(wheel)
      const moved = linkage.rows.map(row => ({
        wheel: row.wheel - wheel,
        shock: row.shock - shock,
        stop: row.stop - stop,
      }))
      const others = moved.filter(row => Math.abs(row.wheel) > SAME)
      return { ...linkage, rows: [...others, { wheel: 0, shock: 0, stop: 0 }].sort((a, b) => a.wheel - b.wheel) }
    }
    case 'arm': {
      // The arm turns to where it then is; heights are from the ground, so the chassis rises by what the wheel falls.
      const [first, second] = linkage.pivot
      const turned = (point: Point): Point => lifted(model.move!(point, wheel), -wheel)
      return {
        ...linkage,
        pivot: [lifted(first, -wheel), lifted(second, -wheel)],
        wheel: turned(linkage.wheel),
        shockLower: turned(linkage.shockLower),
        shockUpper: lifted(linkage.shockUpper, -wheel),
        stopPad: turned(linkage.stopPad),
      }
    }
    case 'axle':
      return { ...linkage, shockUpper: lifted(linkage.shockUpper, -wheel) }
  }
}

/**
 * The same corner measured from another ride height: what was wheel position `wheel` is then 0. Nothing is moved, everything is taped anew:
 * shaft showing, gap, clearances, points. Exact but for a table, whose rows are joined anew through the new zero.
 * @param wheel m from the old ride height, inside the travel
 */
export function measuredFrom(corner: Corner, model: CornerModel, wheel: number): Corner {
  if (Math.abs(wheel) < SAME) return corner
  const { shock, stop } = model.linkage.at(wheel)
  const { bump, droop } = corner.clearance
  const within = (value: number): number => Math.min(corner.shock.stroke, Math.max(0, value))
  return {
    ...corner,
    linkage: linkageFrom(corner.linkage, model.linkage, wheel),
    shock: { ...corner.shock, showing: within(corner.shock.showing - shock) },
    stop: corner.stop && { ...corner.stop, gap: corner.stop.gap - stop },
    clearance: {
      bump: bump === null ? null : Math.max(0, bump - wheel),
      droop: droop === null ? null : Math.max(0, droop + wheel),
    },
  }
}

/**
 * What the corner carries at its measured ride height, as far as its own numbers say, N: the slow force there; on the step of a stop, as much
 * of it as the weight asks for. Where they disagree with the scales that disagreement is kept, not hidden in a change.
 */
export function carried(model: CornerModel): number {
  const [below, above] = (['below', 'above'] as const).map(side => model.forces(0, 'slow', side).total)
  return Math.min(above!, Math.max(below!, sprungWeight(model)))
}

/** Where a corner comes to rest once something about it was changed: wheel position from its measured ride height, m, or an end it goes to. */
export type Rest =
  | { readonly ok: true; readonly wheel: number }
  | { readonly ok: false; readonly end: 'full bump' | 'full droop' }

/** @param weight what it carries, from `carried` of the corner before the change, N */
export function comesToRest(model: CornerModel, weight: number): Rest {
  const wheel = restingPosition(model, weight)
  if (wheel >= model.bump) return { ok: false, end: 'full bump' }
  if (wheel <= model.droop) return { ok: false, end: 'full droop' }
  return { ok: true, wheel }
}

/** A corner put together, and what it carries at its measured ride height, N. */
export const modelAndWeight = (corner: Corner): { model: CornerModel; weight: number } => {
  const model = cornerModel(corner)
  return { model, weight: carried(model) }
}
