import fc from 'fast-check'
import { expect, test } from 'vitest'
import { INCH } from '../../../core/units/constants.ts'
import { stepped } from '../../../renderer/fields/stepping.ts'

const inches = (value: number, direction: 1 | -1, big = false) =>
  Math.round((stepped(value * INCH, 'length', 'inch', direction, big) / INCH) * 1e6) / 1e6

test.each([
  [2, 1, false, 2.0625],
  [2, -1, false, 1.9375],
  [2.03, 1, false, 2.0625],
  [2.03, -1, false, 2],
  [-0.01, 1, false, 0],
  [0, -1, false, -0.0625],
  [2, 1, true, 3],
  [2.5, -1, true, 1.5],
] as const)('%f in, %i, big %s: %f in', (from, direction, big, to) => {
  expect(inches(from, direction, big)).toBe(to)
})

test('metric lengths go by the millimetre, ten of them with the page keys', () => {
  expect(stepped(0.0825, 'length', 'metric', 1, false)).toBeCloseTo(0.083, 9)
  expect(stepped(0.08, 'length', 'metric', -1, true)).toBeCloseTo(0.07, 9)
})

test('a step up from a mark and a step down again is where it began', () => {
  fc.assert(
    fc.property(fc.integer({ min: -2000, max: 2000 }), fc.boolean(), (sixteenths, big) => {
      const from = (sixteenths / 16) * INCH
      const up = stepped(from, 'length', 'inch', 1, big)
      expect(Math.abs(stepped(up, 'length', 'inch', -1, big) - from)).toBeLessThan(1e-12)
      expect(Object.is(stepped(-INCH / 16, 'length', 'inch', 1, false), 0)).toBe(true)
    }),
    { seed: 5 },
  )
})

test('a step always moves, by no more than one stride', () => {
  fc.assert(
    fc.property(fc.double({ min: -1, max: 1, noNaN: true }), fc.constantFrom(1 as const, -1 as const), (from, way) => {
      const moved = (stepped(from, 'length', 'inch', way, false) - from) * way
      expect(moved).toBeGreaterThan(0)
      expect(moved).toBeLessThanOrEqual(INCH / 16 + 1e-6 * INCH)
    }),
    { seed: 6 },
  )
})
