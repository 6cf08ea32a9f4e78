import type { Finding } from '../../budget/results.ts'
import type { CornerModel } from '../../corner/corner-model.ts'
import type { Axle, AxleId, Corner } from '../../plan/schema.ts'
import type { FormatOptions } from '../../units/format.ts'
import type { Quantity } from '../../units/quantity.ts'
import type { AxleOutcome } from '../plan-ride.ts'
import type { CornerRide } from '../results.ts'
import type { Course } from '../terrain.ts'

/** A finding of a ride: of one axle on one course. */
export interface RideFinding extends Finding {
  readonly axle: AxleId
  readonly course: string
}

/** What a rule looks at: the axle and its ride, how to write a value, and how to ask what another corner would have done. */
export interface Ridden {
  readonly axle: Axle
  readonly model: CornerModel
  readonly course: Course
  readonly ride: CornerRide
  /** A value with its unit, in the plan's own units. */
  readonly say: (value: number, quantity: Quantity, options?: FormatOptions) => string
  /** The same course with another corner. */
  readonly again: (corner: Corner) => AxleOutcome
}

/** One thing to look for: a finding, or null when there is nothing to say. */
export type RideRule = (ridden: Ridden) => Finding | null

/** What a course is called in a sentence. */
export function called(course: Course): string {
  const name = course.name?.trim() ?? ''
  return `“${name === '' ? course.id : name}”`
}

export const times = (count: number): string => (count === 1 ? 'once' : count === 2 ? 'twice' : `${count} times`)
