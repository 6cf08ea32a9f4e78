import type { CornerModel } from '../../corner/corner-model.ts'
import type { Axle, Plan } from '../../plan/schema.ts'
import { type FormatOptions, formatMeasure } from '../../units/format.ts'
import type { Quantity } from '../../units/quantity.ts'
import type { AxleFigures, Finding } from '../results.ts'

/** What a rule looks at: the axle as the plan has it, its corner, its figures, and how to write a value. */
export interface Facts {
  readonly axle: Axle
  readonly model: CornerModel
  readonly figures: AxleFigures
  readonly targets: Plan['targets']
  /** A value with its unit, in the plan's own units. */
  readonly say: (value: number, quantity: Quantity, options?: FormatOptions) => string
}

/** One thing to look for: a finding, or null when there is nothing to say. */
export type Rule = (facts: Facts) => Finding | null

export const factsOf = (
  axle: Axle,
  model: CornerModel,
  figures: AxleFigures,
  plan: Pick<Plan, 'units' | 'targets'>,
): Facts => ({
  axle,
  model,
  figures,
  targets: plan.targets,
  say: (value, quantity, options) => formatMeasure(value, quantity, plan.units, { unit: true, ...options }),
})
