import type { CornerModel } from '../../corner/corner-model.ts'
import type { Axle, Plan } from '../../plan/schema.ts'
import { INCH } from '../../units/constants.ts'
import { type Quantity, unitOf } from '../../units/quantity.ts'
import type { Say } from '../../units/saying.ts'
import type { AxleFigures, Finding } from '../results.ts'

/** Less than this is nothing on a tape, m: half a sixteenth. */
export const SMALLEST = INCH / 32

/** Writes what is more than nothing. */
export type Some = (value: number, quantity: Quantity) => string

/** For whoever counts findings and does not read them: formatting is a good part of the work. */
export const unsaid: Say = () => ''

/** What a rule looks at: the axle as the plan has it, its corner, its figures, and how to write a value. */
export interface Facts {
  readonly axle: Axle
  readonly model: CornerModel
  readonly figures: AxleFigures
  readonly targets: Plan['targets']
  readonly units: Plan['units']
  /** A value with its unit, in the plan's own units. */
  readonly say: Say
  /** The same of what is more than nothing: `less than 1/16 in` where it would read as 0. */
  readonly some: Some
}

/** One thing to look for: a finding, or null when there is nothing to say. */
export type Rule = (facts: Facts) => Finding | null

export const factsOf = (
  axle: Axle,
  model: CornerModel,
  figures: AxleFigures,
  plan: Pick<Plan, 'units' | 'targets'>,
  say: Say,
): Facts => ({
  axle,
  model,
  figures,
  targets: plan.targets,
  units: plan.units,
  say,
  some: (value, quantity) => {
    const text = say(value, quantity)
    return value <= 0 || text === '' || /[1-9]/.test(text)
      ? text
      : `less than ${say(finest(quantity, plan.units), quantity)}`
  },
})

/** The least that is told apart from nothing, SI. */
function finest(quantity: Quantity, units: Plan['units']): number {
  const { size, digits } = unitOf(quantity, units)
  return quantity === 'length' && units === 'inch' ? INCH / 16 : size * 10 ** -digits
}
