import { describe, expect, it } from 'vitest'
import { parseMeasure } from '../../../core/units/parse.ts'
import type { Quantity, System } from '../../../core/units/quantity.ts'
import { close } from '../../close.ts'

const IN = 0.0254

const TAKEN: readonly [text: string, quantity: Quantity, system: System, value: number][] = [
  ['2 7/8', 'length', 'inch', 2.875 * IN],
  ['2-7/8', 'length', 'inch', 2.875 * IN],
  ['2 - 7/8', 'length', 'inch', 2.875 * IN],
  ['2-7/8"', 'length', 'inch', 2.875 * IN],
  ['2–7⁄8 in', 'length', 'inch', 2.875 * IN],
  ['7/8', 'length', 'inch', 0.875 * IN],
  ['2⅞', 'length', 'inch', 2.875 * IN],
  ['2 ⅞″', 'length', 'inch', 2.875 * IN],
  ['−½', 'length', 'inch', -0.5 * IN],
  ['2 7/8”', 'length', 'metric', 2.875 * IN],
  ["3 1/4''", 'length', 'metric', 3.25 * IN],
  ['2’', 'length', 'inch', 0.6096],
  ['-7/8', 'length', 'inch', -0.875 * IN],
  ['−2 7/8', 'length', 'inch', -2.875 * IN],
  ['+ 3', 'length', 'inch', 3 * IN],
  ['2.875', 'length', 'inch', 2.875 * IN],
  ['.5', 'length', 'inch', 0.5 * IN],
  ['5.', 'length', 'inch', 5 * IN],
  ['  3  ', 'length', 'inch', 3 * IN],
  ['73 mm', 'length', 'inch', 0.073],
  ['73', 'length', 'metric', 0.073],
  ['2 7/8 in', 'length', 'metric', 2.875 * IN],
  ['2 7/8 inches', 'length', 'metric', 2.875 * IN],
  ['1.5 ft', 'length', 'metric', 0.4572],
  ["2'", 'length', 'metric', 0.6096],
  ['82.5MM', 'length', 'inch', 0.0825],
  ['1,376', 'mass', 'inch', 1376 * 0.45359237],
  ['352 kg', 'mass', 'inch', 352],
  ['776 lbs.', 'mass', 'metric', 776 * 0.45359237],
  ['200', 'pressure', 'inch', 200 * 6894.757293168361],
  ['14 bar', 'pressure', 'inch', 1.4e6],
  ['250 lb/in', 'rate', 'metric', 250 * 175.12683524647636],
  ['60 n/mm', 'rate', 'inch', 60_000],
  ['6 cu  in', 'volume', 'metric', 6 * 1.6387064e-5],
  ['97 cc', 'volume', 'inch', 97e-6],
  ['45 mph', 'speed', 'metric', 45 * 0.44704],
  ['50%', 'share', 'inch', 0.5],
  ['0.7', 'ratio', 'inch', 0.7],
  ['-0', 'length', 'inch', 0],
]

describe('parseMeasure', () => {
  it.each(TAKEN)('takes %j as %s (%s)', (text, quantity, system, value) => {
    const read = parseMeasure(text, quantity, system)
    if (!read.ok) throw new Error(read.problem)
    close(read.value, value, { rel: 4 * Number.EPSILON })
    expect(Object.is(read.value, -0)).toBe(false)
  })

  const LIKELY = 'Enter 2 7/8, 2.875 or 73 mm.'
  const REFUSED: readonly [text: string, quantity: Quantity, problem: string][] = [
    ['', 'length', `Nothing entered. ${LIKELY}`],
    ['   ', 'length', `Nothing entered. ${LIKELY}`],
    ['wide', 'length', `Not a number. ${LIKELY}`],
    ['--3', 'length', `Not a number. ${LIKELY}`],
    ['2 7/', 'length', `“7/” is not a unit of this. ${LIKELY}`],
    ['1/0', 'length', `A fraction over zero. ${LIKELY}`],
    ['2 7/0', 'length', `A fraction over zero. ${LIKELY}`],
    ['3 kg', 'length', `“kg” is not a unit of this. ${LIKELY}`],
    ['3 constructor', 'length', `“constructor” is not a unit of this. ${LIKELY}`],
    ['3 in in', 'length', `“in in” is not a unit of this. ${LIKELY}`],
    ['12 3', 'length', `“3” is not a unit of this. ${LIKELY}`],
    ['1e3', 'length', `“e3” is not a unit of this. ${LIKELY}`],
    ['9'.repeat(41), 'length', `Not a number. ${LIKELY}`],
    ['psi', 'pressure', 'Not a number. Enter a number in psi.'],
    ['200 mm', 'pressure', '“mm” is not a unit of this. Enter a number in psi.'],
    ['0.7 in', 'ratio', '“in” is not a unit of this. Enter a number.'],
  ]
  it.each(REFUSED)('refuses %j as %s, and says what would be right', (text, quantity, problem) => {
    expect(parseMeasure(text, quantity, 'inch')).toEqual({ ok: false, problem })
  })

  it('gives the example of its own system', () => {
    expect(parseMeasure('x', 'length', 'metric')).toEqual({
      ok: false,
      problem: 'Not a number. Enter 73, 73.5 or 2 7/8 in.',
    })
  })
})
