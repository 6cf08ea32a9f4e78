import type { Problem } from '../../../core/plan/problem.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import type { Quantity, System } from '../../../core/units/quantity.ts'
import { toUnit, unitOf } from '../../../core/units/quantity.ts'
import { inUnits } from '../../fields/refusals.ts'

const LIMIT = /^([-\d.e+]+) or (more|less)$/

/**
 * What is wrong with a part, in the units on screen; null when nothing is.
 * @param others what other values of the part are called, by the end of their path: a problem may be theirs
 */
export function problemWords(
  problems: readonly Problem[],
  quantity: Quantity,
  system: System,
  others: Readonly<Record<string, string>> = {},
): string | null {
  const [first] = problems
  if (first === undefined) return null
  const other = Object.entries(others).find(([path]) => first.path.endsWith(`.${path}`))?.[1]
  if (other !== undefined)
    return `It does not go with the ${other}: that would have to be ${inUnits(first.wanted, quantity, system)}.`
  const limit = LIMIT.exec(first.wanted)
  if (limit === null) return `That cannot be. Right would be ${inUnits(first.wanted, quantity, system)}.`
  const value = Number(limit[1])
  const { digits } = unitOf(quantity, system)
  // A limit nobody could read off is nothing to a person: more than nothing is what is meant.
  const least = toUnit(Math.abs(value), quantity, system) < 10 ** -digits
  const words = formatMeasure(least ? 0 : value, quantity, system, { unit: true })
  if (limit[2] === 'less') return `Too much: it takes ${words} or less.`
  return least && value > 0 ? `Too little: it takes more than ${words}.` : `Too little: it takes ${words} or more.`
}
