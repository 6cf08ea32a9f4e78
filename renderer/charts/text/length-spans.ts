import { INCH } from '../../../core/units/constants.ts'
import { formatMeasure } from '../../../core/units/format.ts'
import { nearestFraction } from '../../../core/units/fraction.ts'
import { type System, unitOf } from '../../../core/units/quantity.ts'
import { type Span, span, type TextStyle } from './span.ts'

export interface LengthOptions {
  readonly sign?: boolean
  readonly unit?: boolean
}

/** From this size up a fraction is built: raised, slash, lowered. */
const BUILT_FROM = 15
const FRACTION_SLASH = '⁄'

const unitSize = (size: number): number => (size >= BUILT_FROM ? Math.max(11, size * 0.6) : Math.max(10.5, size * 0.85))

function builtFraction(value: number, style: TextStyle, sign: boolean): Span[] {
  const { negative, whole, numerator, denominator } = nearestFraction(value / INCH)
  const mark = negative ? '−' : sign && (whole > 0 || numerator > 0) ? '+' : ''
  const number = whole > 0 || numerator === 0 ? `${mark}${whole}` : mark
  const spans = number === '' ? [] : [span(number, style)]
  if (numerator === 0) return spans
  const part = { ...style, size: style.size * 0.7 }
  return [
    ...spans,
    span(String(numerator), part, whole > 0 ? style.size * 0.12 : 0, style.size * 0.3),
    span(FRACTION_SLASH, { ...style, size: style.size * 0.9 }),
    span(String(denominator), part),
  ]
}

/**
 * A length as spans: sixteenths or whole millimetres, the unit smaller than its number.
 * @param value m, finite
 */
export function lengthSpans(value: number, system: System, style: TextStyle, options: LengthOptions = {}): Span[] {
  const { sign = false, unit = false } = options
  const number =
    system === 'inch' && style.size >= BUILT_FROM
      ? builtFraction(value, style, sign)
      : [span(formatMeasure(value, 'length', system, { sign, digits: system === 'metric' ? 0 : undefined }), style)]
  if (!unit) return number
  return [
    ...number,
    span(
      unitOf('length', system).label,
      { ...style, size: unitSize(style.size) },
      style.size * (style.size >= BUILT_FROM ? 0.22 : 0.28),
    ),
  ]
}

const MARK: Readonly<Record<System, number>> = { inch: INCH / 16, metric: 1e-3 }

/** The finest mark people read a length to, m. */
export const tapeMark = (system: System): number => MARK[system]

/** A position as shown, m: on the nearest mark of the tape. Lengths are differences of these, so that they add up. */
export const onTape = (value: number, system: System): number => {
  const marks = Math.round(value / MARK[system])
  return marks === 0 ? 0 : marks * MARK[system]
}

/** A length in words, for a screen reader. */
export function spokenLength(value: number, system: System): string {
  const text = formatMeasure(Math.abs(value), 'length', system, { digits: system === 'metric' ? 0 : undefined })
  return `${onTape(value, system) < 0 ? 'minus ' : ''}${text} ${system === 'inch' ? 'inches' : 'millimetres'}`
}

/** A wheel position in words. */
export function spokenPosition(wheel: number, system: System): string {
  const shown = onTape(wheel, system)
  if (shown === 0) return 'at ride height'
  return `${spokenLength(Math.abs(shown), system)} ${shown > 0 ? 'above' : 'below'} ride height`
}
