import { INCH, PSI } from '../units/constants.ts'
import type { Quantity } from '../units/quantity.ts'

/** What a measured value is, and with what it is measured. */
export type Kind =
  | 'tape'
  | 'caliper'
  | 'scale'
  | 'gauge'
  | 'springRate'
  | 'tireRate'
  | 'volume'
  | 'ratio'
  | 'direction'
  | 'curve'
  | 'height'
  | 'rollRate'
  | 'acceleration'
  | 'amplitude'

/** How far off a value usually is: the half-width either side of it, at least so much, or a share of it. */
interface Usual {
  readonly quantity: Quantity
  readonly least: number
  readonly share: number
  /** The same while the value is only assumed. */
  readonly assumed: { readonly least: number; readonly share: number }
}

/** A tape is read to its sixteenths, a scale to 1 %, a gauge to 5 psi, a spring is within 3 % of its print; the rest likewise: common practice. */
export const USUAL: Readonly<Record<Kind, Usual>> = {
  tape: { quantity: 'length', least: INCH / 16, share: 0, assumed: { least: INCH / 4, share: 0.1 } },
  caliper: { quantity: 'length', least: INCH / 200, share: 0, assumed: { least: INCH / 16, share: 0.1 } },
  scale: { quantity: 'mass', least: 0, share: 0.01, assumed: { least: 0, share: 0.2 } },
  gauge: { quantity: 'pressure', least: 5 * PSI, share: 0, assumed: { least: 25 * PSI, share: 0.25 } },
  springRate: { quantity: 'rate', least: 0, share: 0.03, assumed: { least: 0, share: 0.15 } },
  tireRate: { quantity: 'rate', least: 0, share: 0.1, assumed: { least: 0, share: 0.3 } },
  volume: { quantity: 'volume', least: 0, share: 0.05, assumed: { least: 0, share: 0.3 } },
  ratio: { quantity: 'ratio', least: 0, share: 0.02, assumed: { least: 0, share: 0.1 } },
  /** rad either way. */
  direction: { quantity: 'angle', least: Math.PI / 180, share: 0, assumed: { least: Math.PI / 36, share: 0 } },
  /** Of its forces. */
  curve: { quantity: 'share', least: 0.1, share: 0, assumed: { least: 0.3, share: 0 } },
  /** Worked out rather than taped: the center of gravity, the roll axis. */
  height: { quantity: 'length', least: INCH, share: 0.05, assumed: { least: 4 * INCH, share: 0.2 } },
  rollRate: { quantity: 'rollRate', least: 0, share: 0.1, assumed: { least: 0, share: 0.3 } },
  acceleration: { quantity: 'acceleration', least: 0, share: 0.1, assumed: { least: 0, share: 0.3 } },
  amplitude: { quantity: 'length', least: INCH / 2, share: 0.1, assumed: { least: INCH, share: 0.3 } },
}

/** Usual half-width of a value, SI. */
export function usualHalfWidth(kind: Kind, value: number, assumed: boolean): number {
  const { least, share } = assumed ? USUAL[kind].assumed : USUAL[kind]
  return Math.max(least, share * Math.abs(value))
}

const BY_PATH: readonly (readonly [RegExp, Kind])[] = [
  [/^corner\.(cornerMass|unsprungMass)$/, 'scale'],
  [/^corner\.linkage\.(shock|stop)$/, 'ratio'],
  [/^corner\.linkage\.stopAxis$/, 'direction'],
  [/^corner\.linkage\.(rows|pivot|wheel|shockLower|shockUpper|stopPad)$/, 'tape'],
  [/^corner\.(shock|stop)\.shaftDiameter$/, 'caliper'],
  [/^corner\.shock\.(stroke|showing)$/, 'tape'],
  [/^corner\.(shock\.gas|stop)\.charge$/, 'gauge'],
  [/^corner\.(shock\.gas\.volume|stop\.gasVolume)$/, 'volume'],
  [/^corner\.springs\.springs\.\d+\.rate$/, 'springRate'],
  [/^corner\.springs\.(springs\.\d+\.(freeLength|solidLength)|preload|crossover\.gap)$/, 'tape'],
  [/^corner\.stop\.(stroke|gap)$/, 'tape'],
  [/^corner\.stop\.curve$/, 'curve'],
  [/^corner\.tire\.rate$/, 'tireRate'],
  [/^corner\.clearance\.(bump|droop)$/, 'tape'],
]

/** The kind of a measurement the travel budget rests on, by its path inside the axle; null for those it does not rest on. */
export const kindOf = (path: string): Kind | null => BY_PATH.find(([pattern]) => pattern.test(path))?.[1] ?? null
