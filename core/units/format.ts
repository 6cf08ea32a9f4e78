import { nearestFraction } from './fraction.ts'
import { type Quantity, type System, toUnit, unitOf } from './quantity.ts'

export interface FormatOptions {
  /** Put the unit behind the number. */
  readonly unit?: boolean
  /** Put a plus before a positive number. */
  readonly sign?: boolean
  /** Digits after the point instead of the unit's own. */
  readonly digits?: number
  /** Inches as decimals, for what is not read off a tape. */
  readonly decimal?: boolean
}

const MINUS = '−'

/** Digits in groups of three, a fixed number of them after the point. */
function grouped(magnitude: number, digits: number): string {
  const text = magnitude.toFixed(digits)
  if (magnitude < 999) return text
  const [whole = '0', rest] = text.split('.')
  const thousands = whole.length > 15 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, ',')
  return rest === undefined ? thousands : `${thousands}.${rest}`
}

function inchText(inches: number): { text: string; negative: boolean } {
  const { negative, whole, numerator, denominator } = nearestFraction(inches)
  const fraction = numerator === 0 ? '' : `${numerator}/${denominator}`
  const text =
    whole === 0 && fraction !== '' ? fraction : `${grouped(whole, 0)}${fraction === '' ? '' : ` ${fraction}`}`
  return { text, negative }
}

/**
 * A value as people read it: inches as fractions of a sixteenth, everything else as decimals.
 * @param value SI, finite
 */
export function formatMeasure(value: number, quantity: Quantity, system: System, options: FormatOptions = {}): string {
  const unit = unitOf(quantity, system)
  const shown = toUnit(value, quantity, system)
  const asFraction = quantity === 'length' && system === 'inch' && !options.decimal && options.digits === undefined
  const digits = options.digits ?? unit.digits
  const { text, negative } = asFraction
    ? inchText(shown)
    : { text: grouped(Math.abs(shown), digits), negative: shown < 0 && Number(Math.abs(shown).toFixed(digits)) > 0 }
  const sign = negative ? MINUS : options.sign && value > 0 && /[1-9]/.test(text) ? '+' : ''
  return `${sign}${text}${options.unit && unit.label !== '' ? ` ${unit.label}` : ''}`
}

/** What a field shows for editing: as `formatMeasure`, but trailing zeros dropped and finer where the tape mark would lose the value. */
export function fieldText(value: number, quantity: Quantity, system: System): string {
  const unit = unitOf(quantity, system)
  const shown = toUnit(value, quantity, system)
  if (quantity === 'length' && system === 'inch' && Math.abs(shown * 16 - Math.round(shown * 16)) < 16 * 5e-4)
    return formatMeasure(value, quantity, system)
  const text = grouped(Math.abs(shown), Math.max(unit.digits, Math.abs(shown) < 1 ? 4 : unit.digits))
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text
  return `${shown < 0 && short !== '0' ? MINUS : ''}${short}`
}
