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

/** As typed on any keyboard or pasted from elsewhere: `2½`, `2 7/8″`, `3’` read like `2 1/2`, `2 7/8"`, `3'`. */
const plain = (text: string): string =>
  text
    .replace(/\s*([¼-¾⅐-⅞])/g, (_, fraction: string) => ` ${fraction.normalize('NFKD')}`)
    .replace(/[″”“]|''|’’|′′/g, '"')
    .replace(/[′’]/g, "'")
    .trim()

const digitsOf = (text: string): number => Number(text.replaceAll(',', ''))
const refused = (problem: string): Measure => ({ ok: false, problem })

/** What may be entered, for an error or a hint: `2 7/8, 2.875 or 73 mm`. */
export function likelyEntry(quantity: Quantity, system: System): string {
  const { label } = unitOf(quantity, system)
  return example[quantity]?.[system] ?? `a number${label === '' ? '' : ` in ${label}`}`
}

/**
 * What a person typed, in SI: `2 7/8`, `2-7/8"`, `2.875`, `2⅞`, `82.5 mm`, `1,376`. Without a unit the number is in the system's own unit.
 * Fails with a sentence that says what would be right; never gives NaN or infinity.
 */
export function parseMeasure(text: string, quantity: Quantity, system: System): Measure {
  const unit = unitOf(quantity, system)
  const likely = likelyEntry(quantity, system)
  const typed = plain(text)
  if (typed === '') return refused(`Nothing entered. Enter ${likely}.`)
  const match = SHAPE.exec(typed)
  if (match === null || typed.length > 40) return refused(`Not a number. Enter ${likely}.`)
  const [, sign = '', whole, over, under, aloneOver, aloneUnder, alone, label = ''] = match
  const divisor = Number(under ?? aloneUnder ?? 1)
  if (divisor === 0) return refused(`A fraction over zero. Enter ${likely}.`)
  const magnitude = digitsOf(whole ?? alone ?? '0') + Number(over ?? aloneOver ?? 0) / divisor
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
