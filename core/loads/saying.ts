import type { Plan } from '../plan/schema.ts'
import { type FormatOptions, formatMeasure } from '../units/format.ts'
import type { Quantity } from '../units/quantity.ts'

/** Writes a value with its unit, in the plan's own units. */
export type Say = (value: number, quantity: Quantity, options?: FormatOptions) => string

export const sayIn =
  (system: Plan['units']): Say =>
  (value, quantity, options) =>
    formatMeasure(value, quantity, system, { unit: true, ...options })

/** `A`, `A and B`, `A, B and C`. */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
