import fc from 'fast-check'
import { expect, test } from 'vitest'
import { INCH } from '../../../../core/units/constants.ts'
import { snapWheel, wheelAfterKey } from '../../../../renderer/charts/plate/handle.ts'
import { between } from '../../../laws/arbitrary-linkage.ts'

const bump = 9.4168 * INCH
const droop = -9.25 * INCH
const after = (key: string, inches: number): number | null => {
  const wheel = wheelAfterKey(key, inches * INCH, droop, bump, 'inch')
  return wheel === null ? null : wheel / INCH
}

test.each([
  ['ArrowUp', 6.5, 6.5625],
  ['ArrowDown', 6.5, 6.4375],
  ['PageUp', 6.5, 7.5],
  ['PageDown', -0.5, -1.5],
  ['End', 0, 9.4168],
  ['Home', 0, -9.25],
  ['ArrowUp', 9.4168, 9.4168],
  ['ArrowDown', 9.4168, 9.375],
  ['PageDown', -9, -9.25],
])('%s at %f in goes to %f in', (key, from, to) => {
  expect(after(key, from)).toBeCloseTo(to, 9)
})

test('in millimetres an arrow steps 1, a page 25', () => {
  expect(wheelAfterKey('ArrowUp', 0.165, -0.2, 0.2, 'metric')).toBeCloseTo(0.166, 9)
  expect(wheelAfterKey('PageDown', 0.165, -0.2, 0.2, 'metric')).toBeCloseTo(0.14, 9)
})

test('other keys are left to others', () => {
  expect(after('a', 1)).toBeNull()
  expect(after('Tab', 1)).toBeNull()
})

test('a snapped position is on the tape or at an end of the travel, and snapping again changes nothing', () => {
  fc.assert(
    fc.property(between(-1, 1), fc.constantFrom('inch' as const, 'metric' as const), (wheel, system) => {
      const snapped = snapWheel(wheel, droop, bump, system)
      const marks = snapped / (system === 'inch' ? INCH / 16 : 1e-3)
      expect(snapped === droop || snapped === bump || Math.abs(marks - Math.round(marks)) < 1e-9).toBe(true)
      expect(snapWheel(snapped, droop, bump, system)).toBe(snapped)
    }),
    { seed: 25 },
  )
})
