import type { Problem } from '../../../core/plan/problem.ts'
import type { Quantity, System } from '../../../core/units/quantity.ts'
import { saidOf, wantedWords } from '../../fields/refusals.ts'

/** What a value of a part is called, and in what it is measured. */
export interface Named {
  readonly label: string
  readonly quantity: Quantity
}

/**
 * What is wrong with a part, in the units on screen; null when nothing is.
 * @param others what other values of the part are, by the end of their path: a problem may be theirs
 */
export function problemWords(
  problems: readonly Problem[],
  quantity: Quantity,
  system: System,
  others: Readonly<Record<string, Named>> = {},
): string | null {
  const [first] = problems
  if (first === undefined) return null
  const other = Object.entries(others).find(([path]) => first.path.endsWith(`.${path}`))?.[1]
  if (other !== undefined)
    return `It does not go with the ${other.label.toLowerCase()}: that would have to be ${wantedWords(first, other.quantity, system)}.`
  const { wrong, right } = saidOf(first, quantity, system)
  return `${wrong} ${right}`
}
