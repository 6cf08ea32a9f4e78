import { fromUnit, type Quantity, type System, toUnit, unitOf } from '../../core/units/quantity.ts'

/** Arrow keys move by the mark of the tape, page keys by ten of them; inches by the whole inch. */
const bigStep = (quantity: Quantity, system: System): number =>
  quantity === 'length' && system === 'inch' ? 1 : unitOf(quantity, system).step * 10

/**
 * The next mark above or below a value, in SI: a value between two marks goes to the nearer one in that direction.
 * @param value SI
 */
export function stepped(value: number, quantity: Quantity, system: System, direction: 1 | -1, big: boolean): number {
  const { step } = unitOf(quantity, system)
  const stride = big ? bigStep(quantity, system) : step
  const marks = toUnit(value, quantity, system) / step
  // A value this close to a mark is on it: conversions leave a rounding behind.
  const near = 1e-6
  const per = Math.round(stride / step)
  const on = Math.abs(marks - Math.round(marks)) < near
  const next = on
    ? Math.round(marks) + direction * per
    : (direction > 0 ? Math.ceil(marks) : Math.floor(marks)) + direction * (per - 1)
  return fromUnit(next * step, quantity, system) || 0
}
