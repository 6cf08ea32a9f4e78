import { FOOT, GRAVITY, INCH, MILE_PER_HOUR, POUND, POUND_FORCE, PSI } from './constants.ts'

export type System = 'inch' | 'metric'

/** A unit people read: its label and its size in SI. */
export interface Unit {
  readonly label: string
  readonly size: number
  /** Digits after the point when shown; lengths in inches are shown as fractions instead. */
  readonly digits: number
  /** Step of an arrow key, in this unit. */
  readonly step: number
}

interface QuantityUnits {
  readonly inch: Unit
  readonly metric: Unit
  /** What else a person may type after a number, by lower-case label, as size in SI. */
  readonly accepted: Readonly<Record<string, number>>
}

const unit = (label: string, size: number, digits: number, step: number): Unit => ({ label, size, digits, step })

const lengths = { in: INCH, '"': INCH, inch: INCH, inches: INCH, ft: FOOT, "'": FOOT, mm: 1e-3, cm: 1e-2, m: 1 }
const forces = { lb: POUND_FORCE, lbf: POUND_FORCE, n: 1, kn: 1e3 }
const degree = Math.PI / 180

/**
 * Every quantity Stopgap shows: its unit in each system and what may be typed. The one place where SI meets the tape measure.
 * Factors: constants.ts.
 */
export const QUANTITIES = {
  length: { inch: unit('in', INCH, 3, 1 / 16), metric: unit('mm', 1e-3, 1, 1), accepted: lengths },
  mass: {
    inch: unit('lb', POUND, 0, 1),
    metric: unit('kg', 1, 1, 1),
    accepted: { lb: POUND, lbs: POUND, kg: 1, g: 1e-3 },
  },
  force: { inch: unit('lb', POUND_FORCE, 0, 10), metric: unit('N', 1, 0, 10), accepted: forces },
  rate: {
    inch: unit('lb/in', POUND_FORCE / INCH, 0, 5),
    metric: unit('N/mm', 1e3, 1, 1),
    accepted: { 'lb/in': POUND_FORCE / INCH, 'lbf/in': POUND_FORCE / INCH, 'n/mm': 1e3, 'n/m': 1, 'kn/m': 1e3 },
  },
  pressure: {
    inch: unit('psi', PSI, 0, 5),
    metric: unit('bar', 1e5, 2, 0.5),
    accepted: { psi: PSI, bar: 1e5, kpa: 1e3, mpa: 1e6, pa: 1 },
  },
  volume: {
    inch: unit('cu in', INCH ** 3, 2, 0.1),
    metric: unit('cm³', 1e-6, 1, 1),
    accepted: {
      'cu in': INCH ** 3,
      'in³': INCH ** 3,
      in3: INCH ** 3,
      'cm³': 1e-6,
      cm3: 1e-6,
      cc: 1e-6,
      ml: 1e-6,
      l: 1e-3,
    },
  },
  speed: {
    inch: unit('mph', MILE_PER_HOUR, 1, 1),
    metric: unit('km/h', 1 / 3.6, 1, 1),
    accepted: { mph: MILE_PER_HOUR, 'km/h': 1 / 3.6, 'm/s': 1, 'ft/s': FOOT },
  },
  shaftSpeed: {
    inch: unit('in/s', INCH, 1, 1),
    metric: unit('mm/s', 1e-3, 0, 10),
    accepted: { 'in/s': INCH, 'mm/s': 1e-3, 'm/s': 1 },
  },
  damping: {
    inch: unit('lb·s/in', POUND_FORCE / INCH, 2, 0.1),
    metric: unit('N·s/m', 1, 0, 10),
    accepted: { 'lb·s/in': POUND_FORCE / INCH, 'lb s/in': POUND_FORCE / INCH, 'n·s/m': 1, 'n s/m': 1 },
  },
  rollRate: {
    inch: unit('lb·ft/°', (POUND_FORCE * FOOT) / degree, 0, 5),
    metric: unit('N·m/°', 1 / degree, 0, 5),
    accepted: {
      'lb·ft/°': (POUND_FORCE * FOOT) / degree,
      'lb·ft/deg': (POUND_FORCE * FOOT) / degree,
      'lb ft/deg': (POUND_FORCE * FOOT) / degree,
      'n·m/°': 1 / degree,
      'n·m/deg': 1 / degree,
      'n·m/rad': 1,
    },
  },
  acceleration: {
    inch: unit('g', GRAVITY, 2, 0.05),
    metric: unit('g', GRAVITY, 2, 0.05),
    accepted: { g: GRAVITY, 'm/s²': 1, 'm/s2': 1 },
  },
  angle: {
    inch: unit('deg', degree, 1, 0.5),
    metric: unit('deg', degree, 1, 0.5),
    accepted: { deg: degree, '°': degree, rad: 1 },
  },
  energy: {
    inch: unit('ft·lb', FOOT * POUND_FORCE, 0, 1),
    metric: unit('J', 1, 0, 1),
    accepted: { ft·lb: FOOT * POUND_FORCE, 'ft lb': FOOT * POUND_FORCE, j: 1 },
  },
  ratio: { inch: unit('', 1, 3, 0.01), metric: unit('', 1, 3, 0.01), accepted: {} },
  share: { inch: unit('%', 0.01, 0, 1), metric: unit('%', 0.01, 0, 1), accepted: { '%': 0.01 } },
  frequency: { inch: unit('Hz', 1, 2, 0.1), metric: unit('Hz', 1, 2, 0.1), accepted: { hz: 1 } },
  time: { inch: unit('s', 1, 2, 0.5), metric: unit('s', 1, 2, 0.5), accepted: { s: 1, ms: 1e-3 } },
  count: { inch: unit('', 1, 0, 1), metric: unit('', 1, 0, 1), accepted: {} },
} as const satisfies Record<string, QuantityUnits>

export type Quantity = keyof typeof QUANTITIES

export const unitOf = (quantity: Quantity, system: System): Unit => QUANTITIES[quantity][system]

/** A value in SI as a number of the unit people read. */
export const toUnit = (value: number, quantity: Quantity, system: System): number =>
  value / unitOf(quantity, system).size

/** A number of the unit people read as a value in SI. */
export const fromUnit = (shown: number, quantity: Quantity, system: System): number =>
  shown * unitOf(quantity, system).size
