import { formatMeasure } from '../../../core/units/format.ts'
import { fromUnit, type System, toUnit, unitOf } from '../../../core/units/quantity.ts'

/** A force rounded to the ten pounds or newtons it can be trusted to, without unit. */
export function forceNumber(force: number, system: System): string {
  const tens = Math.round(toUnit(force, 'force', system) / 10) * 10
  return formatMeasure(fromUnit(tens, 'force', system), 'force', system)
}

/** As few letters as will do: 850, 2.61k, 1.2M. */
export function shortForce(force: number, system: System): string {
  const shown = toUnit(force, 'force', system)
  const size = Math.abs(shown)
  if (size < 1000) return String(Math.round(shown))
  const [scaled, letter] = size < 1e6 ? [shown / 1e3, 'k'] : [shown / 1e6, 'M']
  return `${Number(scaled.toPrecision(3))}${letter}`
}

export const forceUnit = (system: System): string => unitOf('force', system).label
