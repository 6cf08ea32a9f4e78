import { describe, expect, it } from 'vitest'
import { fieldText, formatMeasure } from '../../../core/units/format.ts'
import { fromUnit, type Quantity, type System } from '../../../core/units/quantity.ts'

const text = (shown: number, quantity: Quantity, system: System, options = {}) =>
  formatMeasure(fromUnit(shown, quantity, system), quantity, system, options)

describe('formatMeasure', () => {
  it.each([
    [2.875, '2 7/8'],
    [0.5, '1/2'],
    [-0.5, '−1/2'],
    [-4.0625, '−4 1/16'],
    [3, '3'],
    [0, '0'],
    [1 / 40, '0'],
    [-1 / 40, '0'],
    [1 / 32, '1/16'],
    [5.99, '6'],
    [-5.99, '−6'],
    [1234.5, '1,234 1/2'],
  ])('%s in reads %s', (inches, wanted) => expect(text(inches, 'length', 'inch')).toBe(wanted))

  it.each([
    [1376.4, 'mass', 'inch', {}, '1,376'],
    [352.04, 'mass', 'metric', { unit: true }, '352.0 kg'],
    [200, 'pressure', 'inch', { unit: true }, '200 psi'],
    [13.79, 'pressure', 'metric', { unit: true }, '13.79 bar'],
    [-12.34, 'length', 'metric', { unit: true }, '−12.3 mm'],
    [-0.04, 'length', 'metric', {}, '0.0'],
    [0.04, 'length', 'metric', { sign: true }, '0.0'],
    [12.34, 'length', 'metric', { sign: true }, '+12.3'],
    [1.5, 'length', 'inch', { sign: true, unit: true }, '+1 1/2 in'],
    [1.5, 'length', 'inch', { decimal: true, unit: true }, '1.500 in'],
    [1.5, 'length', 'inch', { digits: 1 }, '1.5'],
    [49.6, 'share', 'inch', { unit: true }, '50 %'],
    [0.7, 'ratio', 'inch', { unit: true }, '0.700'],
    [1234567.891, 'force', 'metric', { digits: 2 }, '1,234,567.89'],
  ] as const)('%s of %s (%s) %j reads %s', (shown, quantity, system, options, wanted) =>
    expect(text(shown, quantity, system, options)).toBe(wanted),
  )
})

describe('fieldText', () => {
  it.each([
    [2.875, 'length', 'inch', '2 7/8'],
    [2.8754, 'length', 'inch', '2 7/8'],
    [2.9, 'length', 'inch', '2.9'],
    [0.123, 'length', 'inch', '0.123'],
    [0.0621, 'length', 'inch', '1/16'],
    [73, 'length', 'metric', '73'],
    [73.5, 'length', 'metric', '73.5'],
    [-73.5, 'length', 'metric', '−73.5'],
    [-0.00001, 'length', 'metric', '0'],
    [0.1234, 'pressure', 'metric', '0.1234'],
    [1376, 'mass', 'inch', '1,376'],
    [0.65, 'ratio', 'inch', '0.65'],
    [100, 'rate', 'inch', '100'],
  ] as const)('%s of %s (%s) is edited as %s', (shown, quantity, system, wanted) =>
    expect(fieldText(fromUnit(shown, quantity, system), quantity, system)).toBe(wanted),
  )
})
