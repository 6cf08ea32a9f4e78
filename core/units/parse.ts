import { QUANTITIES, type Quantity, type System, unitOf } from './quantity.ts'

export type Measure = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly problem: string }

const NUMBER = String.raw`\d[\d,]*(?:\.\d*)?|\.\d+`
const SHAPE = new RegExp(
  String.raw`^([+\-−–]?)\s*(?:(${NUMBER})(?:\s+|\s*[-−–]\s*)(\d+)\s*[/⁄]\s*(\d+)|(\d+)\s*[/⁄]\s*(\d+)|(${NUMBER}))\s*(.*)$`,
  's',
)

const example: Partial<Record<Quantity, Record<System, string>>> = {
  length: { inch: '2 7/8, 2.875 or 73 mm', metric: '73, 73.5 or 2 7/8 in' },
}

const digitsOf = (text: string): number => Number(text.replaceAll(',', ''))
const refused = (problem: string): Measure => ({ ok: false, problem })

/**
 * What a person typed, in SI: `2 7/8`, `2-7/8"`, `2.875`, `82.5 mm`, `1,376`. Without a unit the number is in the system's own unit.
 * Fails with a sentence that says what would be right; never gives NaN or infinity.
 */
export function parseMeasure(text: string, quantity: Quantity, system: System): Measure {
  const unit = unitOf(quantity, system)
  const likely = example[quantity]?.[system] ?? `a number${unit.label === '' ? '' : ` in ${unit.label}`}`
  const typed = text.trim()
  if (typed === '') return refused(`Nothing entered. Enter ${likely}.`)
  const match = SHAPE.exec(typed)
  if (match === null || typed.length > 40) return refused(`Not a number. Enter ${likely}.`)
  const [, sign = '', whole, over, under, aloneOver, aloneUnder, plain, label = ''] = match
  const divisor = Number(under ?? aloneUnder ?? 1)
  if (divisor === 0) return refused(`A fraction over zero. Enter ${likely}.`)
  const magnitude = digitsOf(whole ?? plain ?? '0') + Number(over ?? aloneOver ?? 0) / divisor
  const given = label.trim().toLowerCase().replace(/\s+/g, ' ').replace(/\.$/, '')
  const accepted: Readonly<Record<string, number>> = QUANTITIES[quantity].accepted
  const size =
    given === '' || given === unit.label.toLowerCase()
      ? unit.size
      : Object.hasOwn(accepted, given)
        ? accepted[given]
        : undefined
  if (size === undefined) return refused(`“${label.trim()}” is not a unit of this. Enter ${likely}.`)
  const value = (sign === '' || sign === '+' ? magnitude : -magnitude) * size
  if (!Number.isFinite(value)) return refused(`Too large. Enter ${likely}.`)
  return { ok: true, value: value === 0 ? 0 : value }
}
