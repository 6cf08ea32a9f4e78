import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fieldText, formatMeasure } from '../../core/units/format.ts'
import { nearestFraction } from '../../core/units/fraction.ts'
import { parseMeasure } from '../../core/units/parse.ts'
import { fromUnit, QUANTITIES, type Quantity, type System, toUnit, unitOf } from '../../core/units/quantity.ts'
import { close } from '../close.ts'

const runs = { numRuns: 1500, seed: 71 }
const quantity = fc.constantFrom(...(Object.keys(QUANTITIES) as Quantity[]))
const system = fc.constantFrom<System>('inch', 'metric')
/** In the unit shown; no quantity of a car has more digits than this. */
const shown = fc.oneof(
  fc.double({ min: -1e6, max: 1e6, noNaN: true }),
  fc.double({ min: -30, max: 30, noNaN: true }),
  fc.integer({ min: -400, max: 400 }).map(marks => marks / 16),
  fc.constantFrom(0, -0, 1e-9, -1e-9, 0.9999, 0.99996, 999.9996, 15.99 / 16, 1 / 32),
)

const parsed = (text: string, of: Quantity, units: System): number => {
  const read = parseMeasure(text, of, units)
  return read.ok ? read.value : Number.NaN
}

describe('a measure', () => {
  it('read back from what is shown is off by half a last digit at most, half a tape mark for inches', () => {
    fc.assert(
      fc.property(quantity, system, shown, fc.boolean(), fc.boolean(), (of, units, value, withUnit, sign) => {
        const text = formatMeasure(fromUnit(value, of, units), of, units, { unit: withUnit, sign })
        const { size, digits } = unitOf(of, units)
        const half = of === 'length' && units === 'inch' ? 1 / 32 : 10 ** -digits / 2
        close(parsed(text, of, units), value * size, { abs: half * size * (1 + 1e-9), rel: 1e-12 }, text)
      }),
      runs,
    )
  })

  it('shown in one system and read in the other, by the unit behind it, is the same measure', () => {
    fc.assert(
      fc.property(quantity, system, shown, (of, units, value) => {
        const text = formatMeasure(fromUnit(value, of, units), of, units, { unit: true })
        fc.pre(unitOf(of, units).label !== '')
        const other = units === 'inch' ? 'metric' : 'inch'
        expect(parseMeasure(text, of, other)).toEqual(parseMeasure(text, of, units))
      }),
      runs,
    )
  })

  it('in a field is as fine as its digits, or within half a thousandth of an inch of its tape mark', () => {
    fc.assert(
      fc.property(quantity, system, shown, (of, units, value) => {
        const text = fieldText(fromUnit(value, of, units), of, units)
        const { size, digits } = unitOf(of, units)
        const fine = 10 ** -(Math.abs(value) < 1 ? Math.max(4, digits) : digits) / 2
        const half = of === 'length' && units === 'inch' ? Math.max(fine, 5e-4) : fine
        close(parsed(text, of, units), value * size, { abs: half * size * (1 + 1e-6), rel: 1e-12 }, text)
      }),
      runs,
    )
  })

  it('in a field does not creep: read and shown again it is the same text', () => {
    fc.assert(
      fc.property(quantity, system, shown, (of, units, value) => {
        const text = fieldText(fromUnit(value, of, units), of, units)
        expect(fieldText(parsed(text, of, units), of, units)).toBe(text)
      }),
      runs,
    )
  })

  it('never reads as none, whatever is typed', () => {
    const typed = fc.oneof(
      fc.string({ maxLength: 30 }),
      fc.stringMatching(/^[-+−]?[0-9., /⁄]{0,12} ?(in|mm|lb|psi|"|')?$/),
      fc.constantFrom('1e999', 'NaN', 'Infinity', '1/0', '0/0', '5 1/0', '9'.repeat(39), '.', '-', '1,2,3', '1..2'),
    )
    fc.assert(
      fc.property(typed, quantity, system, (text, of, units) => {
        const read = parseMeasure(text, of, units)
        if (read.ok) expect(Number.isFinite(read.value)).toBe(true)
        else expect(read.problem).toMatch(/^[A-Z“].*\.$/)
      }),
      runs,
    )
  })
})

describe('fractions of an inch', () => {
  it('are reduced, below one, and the nearest mark', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 500, noNaN: true }), fc.constantFrom(8, 16, 32), (inches, finest) => {
        const { negative, whole, numerator, denominator } = nearestFraction(inches, finest)
        const value = (negative ? -1 : 1) * (whole + numerator / denominator)
        expect(Math.abs(value - inches)).toBeLessThanOrEqual(0.5 / finest + 1e-12)
        expect(numerator).toBeLessThan(denominator)
        expect(numerator === 0 || numerator % 2 === 1).toBe(true)
        expect(finest % denominator).toBe(0)
      }),
      runs,
    )
  })

  it('and units turn back into themselves', () => {
    fc.assert(
      fc.property(quantity, system, fc.double({ min: -1e6, max: 1e6, noNaN: true }), (of, units, value) => {
        close(toUnit(fromUnit(value, of, units), of, units), value, { rel: 4 * Number.EPSILON, abs: 1e-300 })
      }),
      runs,
    )
  })
})
