import { cornerModel } from '../../../core/corner/corner.ts'
import type { CornerModel } from '../../../core/corner/corner-model.ts'
import type { Axle } from '../../../core/plan/schema.ts'
import { extentOf } from '../../../renderer/charts/drawing/extent.ts'
import { type Figure, figureOf } from '../../../renderer/charts/drawing/figure.ts'
import { type Column, type Layout, layoutOf } from '../../../renderer/charts/drawing/layout.ts'

/** A column as the plate has it: full bump and droop a little inside its ends. */
export function columnFor(model: CornerModel, small = false): Column {
  const [width, head, height] = small ? [228, 38, 513] : [380, 44, 703]
  const [top, bottom] = [head + 4, height - 26]
  const [above, below] = [0.046, 0.02]
  const perMetre = (bottom - top) / (model.bump + above - model.droop + below)
  return { x: 0, width, head, height, zero: top + (model.bump + above) * perMetre, perMetre, small }
}

/** A corner laid out in its column. */
export function laidOut(axle: Axle, small = false): { model: CornerModel; figure: Figure; layout: Layout } {
  const model = cornerModel(axle.corner)
  const figure = figureOf(axle, model)
  return { model, figure, layout: layoutOf(columnFor(model, small), extentOf(figure)) }
}

/** Wheel positions from full droop to full bump, engagement among them when it is met. */
export function positions({ droop, bump, engagement }: CornerModel): number[] {
  const spread = Array.from({ length: 7 }, (_, i) => droop + ((bump - droop) * i) / 6)
  return engagement !== null && engagement >= droop ? [...spread, engagement] : spread
}
