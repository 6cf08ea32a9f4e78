import { type FormatOptions, formatMeasure } from './format.ts'
import type { Quantity, System } from './quantity.ts'

/** Writes a value with its unit. */
export type Say = (value: number, quantity: Quantity, options?: FormatOptions) => string

/** In the units of a system. */
export const sayIn =
  (system: System): Say =>
  (value, quantity, options) =>
    formatMeasure(value, quantity, system, { unit: true, ...options })

/** `A`, `A and B`, `A, B and C`. @param last between the last two */
export const listed = (words: readonly string[], last = 'and'): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)!}`
