/** Units of length a head may name, m, and of time, s. */
const LENGTHS: Readonly<Record<string, number>> = { m: 1, cm: 1e-2, mm: 1e-3, in: 0.0254, inch: 0.0254 }
const TIMES: Readonly<Record<string, number>> = { s: 1, sec: 1, ms: 1e-3, us: 1e-6, µs: 1e-6, min: 60 }
/** Other units a row of units may hold. */
const OTHERS = new Set(
  [
    '',
    '-',
    'v',
    'mv',
    'volt',
    'volts',
    'counts',
    'g',
    'n',
    'lb',
    'deg',
    '°',
    '%',
    'c',
    '°c',
    'm/s',
    'km/h',
    'mph',
  ].concat(['rpm', 'm/s²', 'hz', 'a', 'bar', 'psi', 'hh:mm:ss', 'time']),
)

/** `(mm)` → `mm` */
export const bareUnit = (text: string): string =>
  text
    .trim()
    .replace(/^[([](.*)[)\]]$/, '$1')
    .trim()
    .toLowerCase()

export const isUnit = (text: string): boolean => {
  const bare = bareUnit(text)
  return Object.hasOwn(LENGTHS, bare) || Object.hasOwn(TIMES, bare) || OTHERS.has(bare)
}

const sizeIn = (units: Readonly<Record<string, number>>, unit: string | null): number | null =>
  unit !== null && Object.hasOwn(units, unit) ? units[unit]! : null

/** Size of a unit of length, m, or of time, s; null for another. */
export const lengthUnit = (unit: string | null): number | null => sizeIn(LENGTHS, unit)
export const timeUnit = (unit: string | null): number | null => sizeIn(TIMES, unit)

/** Those with large letters, which are read without regard to them. */
const SYMBOLS: Readonly<Record<string, string>> = {
  v: 'V',
  mv: 'mV',
  a: 'A',
  n: 'N',
  hz: 'Hz',
  c: 'C',
  '°c': '°C',
}

/** A unit as it is written. */
export const unitSymbol = (unit: string): string => (Object.hasOwn(SYMBOLS, unit) ? SYMBOLS[unit]! : unit)
