import { INCH } from '../../core/units/constants.ts'
import { formatMeasure } from '../../core/units/format.ts'
import { type Quantity, type System, unitOf } from '../../core/units/quantity.ts'

/** Finest mark a length is shown to, m. */
const mark = (system: System): number => (system === 'inch' ? INCH / 16 : 1e-4)

/**
 * A position at its nearest mark, m. Positions are rounded first and lengths are differences of rounded positions, so that
 * the lengths of zones add up to the travel shown.
 */
export function onTape(position: number, system: System): number {
  const marks = Math.sign(position) * Math.round(Math.abs(position) / mark(system))
  return marks * mark(system)
}

/** Any other value as far as it is shown, SI. */
export function toDigits(value: number, quantity: Quantity, system: System): number {
  const { size, digits } = unitOf(quantity, system)
  return Number((value / size).toFixed(digits)) * size
}

/** A length with its unit. */
export const length = (value: number, system: System): string => formatMeasure(value, 'length', system, { unit: true })

/** A force to 10 lb or 10 N, N: the model is not better than that. */
export function toTen(value: number, system: System): number {
  const ten = 10 * unitOf('force', system).size
  return Math.round(value / ten) * ten
}

/** A force with its unit, as far as it is shown. */
export const force = (value: number, system: System): string =>
  formatMeasure(toTen(value, system), 'force', system, { unit: true })
