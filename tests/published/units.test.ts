import { describe, expect, it } from 'vitest'
import { FOOT, GRAVITY, INCH, MILE_PER_HOUR, POUND, POUND_FORCE, PSI } from '../../core/units/constants.ts'
import { QUANTITIES, type Quantity, type System, unitOf } from '../../core/units/quantity.ts'
import { close } from '../close.ts'

/** NIST SP 811, appendix B: exact by the definitions of the pound (0.45359237 kg), the inch (0.0254 m) and g (9.80665 m/s²). */
const EXACT = {
  inch: 0.0254,
  pound: 0.45359237,
  poundForce: 4.4482216152605,
  psi: 6894.757293168361,
  poundPerInch: 175.12683524647636,
  footPound: 1.3558179483314003,
  cubicInch: 1.6387064e-5,
  milePerHour: 0.44704,
  kilometrePerHour: 1 / 3.6,
  bar: 1e5,
}

/** No more than the rounding of two products. */
const ROUNDING = { rel: 4 * Number.EPSILON }

describe('units, NIST SP 811 (appendix B)', () => {
  it('has the defined ones exactly', () => {
    expect({ inch: INCH, pound: POUND, milePerHour: MILE_PER_HOUR, g: GRAVITY }).toEqual({
      inch: EXACT.inch,
      pound: EXACT.pound,
      milePerHour: EXACT.milePerHour,
      g: 9.80665,
    })
  })

  it('has the derived ones to the last digits', () => {
    close(POUND_FORCE, EXACT.poundForce, ROUNDING, 'lbf')
    close(PSI, EXACT.psi, ROUNDING, 'psi')
    close(POUND_FORCE / INCH, EXACT.poundPerInch, ROUNDING, 'lbf/in')
    close(POUND_FORCE / FOOT, 14.593902937206362, ROUNDING, 'lbf/ft')
    close(POUND_FORCE * FOOT, EXACT.footPound, ROUNDING, 'ft·lbf')
    close(POUND_FORCE * INCH, 0.11298482902761668, ROUNDING, 'in·lbf')
    close(INCH ** 3, EXACT.cubicInch, ROUNDING, 'in³')
  })

  const shown: [Quantity, System, string, number][] = [
    ['length', 'inch', 'in', EXACT.inch],
    ['length', 'metric', 'mm', 1e-3],
    ['mass', 'inch', 'lb', EXACT.pound],
    ['mass', 'metric', 'kg', 1],
    ['force', 'inch', 'lb', EXACT.poundForce],
    ['force', 'metric', 'N', 1],
    ['rate', 'inch', 'lb/in', EXACT.poundPerInch],
    ['rate', 'metric', 'N/mm', 1e3],
    ['pressure', 'inch', 'psi', EXACT.psi],
    ['pressure', 'metric', 'bar', EXACT.bar],
    ['volume', 'inch', 'cu in', EXACT.cubicInch],
    ['volume', 'metric', 'cm³', 1e-6],
    ['speed', 'inch', 'mph', EXACT.milePerHour],
    ['speed', 'metric', 'km/h', EXACT.kilometrePerHour],
    ['shaftSpeed', 'inch', 'in/s', EXACT.inch],
    ['damping', 'inch', 'lb·s/in', EXACT.poundPerInch],
    ['energy', 'inch', 'ft·lb', EXACT.footPound],
    ['rollRate', 'inch', 'lb·ft/°', (EXACT.footPound * 180) / Math.PI],
    ['rollRate', 'metric', 'N·m/°', 180 / Math.PI],
    ['acceleration', 'inch', 'g', 9.80665],
    ['angle', 'metric', 'deg', Math.PI / 180],
  ]
  it.each(shown)('shows %s (%s) in %s', (quantity, system, label, size) => {
    const unit = unitOf(quantity, system)
    expect(unit.label).toBe(label)
    close(unit.size, size, ROUNDING)
  })

  const typed: [Quantity, string, number][] = [
    ['length', 'ft', 0.3048],
    ['length', 'cm', 0.01],
    ['force', 'kn', 1000],
    ['rate', 'lbf/in', EXACT.poundPerInch],
    ['pressure', 'kpa', 1000],
    ['pressure', 'mpa', 1e6],
    ['volume', 'in3', EXACT.cubicInch],
    ['volume', 'l', 1e-3],
    ['speed', 'ft/s', 0.3048],
    ['mass', 'lbs', EXACT.pound],
  ]
  it.each(typed)('takes %s typed in %s', (quantity, label, size) => {
    const accepted: Readonly<Record<string, number>> = QUANTITIES[quantity].accepted
    close(accepted[label] ?? Number.NaN, size, ROUNDING)
  })
})
