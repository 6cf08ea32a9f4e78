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

/** Either way, by what a value is measured with; each entry names where it is from. What is only assumed is a guess, as wide as guesses turn out to be: common practice. */
export const USUAL: Readonly<Record<Kind, Usual>> = {
  /** Read to its sixteenths: common practice. */
  tape: { quantity: 'length', least: INCH / 16, share: 0, assumed: { least: INCH / 4, share: 0.1 } },
  /** Reads to a thousandth of an inch; a shaft is worn and plated to five of them: common practice. */
  caliper: { quantity: 'length', least: INCH / 200, share: 0, assumed: { least: INCH / 16, share: 0.1 } },
  /** Platform scales under four tires, with fuel and people about right: 1 %, common practice. */
  scale: { quantity: 'mass', least: 0, share: 0.01, assumed: { least: 0, share: 0.2 } },
  /** 5 psi, common practice: about 2 % of a 300 psi dial, grade B of ASME B40.100 in its middle half (from memory). */
  gauge: { quantity: 'pressure', least: 5 * PSI, share: 0, assumed: { least: 25 * PSI, share: 0.25 } },
  /** Within 3 % of its print: common practice. Shear moduli given for one wire differ by as much (Machinery's Handbook: 11.2 to 11.6 million psi). */
  springRate: { quantity: 'rate', least: 0, share: 0.03, assumed: { least: 0, share: 0.15 } },
  /** Goes with air pressure and wear: 10 %, common practice. */
  tireRate: { quantity: 'rate', least: 0, share: 0.1, assumed: { least: 0, share: 0.3 } },
  /** Filled with oil from a graduated cylinder: 5 %, common practice. */
  volume: { quantity: 'volume', least: 0, share: 0.05, assumed: { least: 0, share: 0.3 } },
  /** Two travels taped against each other, an eighth in six inches: 2 %, common practice. */
  ratio: { quantity: 'ratio', least: 0, share: 0.02, assumed: { least: 0, share: 0.1 } },
  /** rad either way: a degree off a protractor, common practice. */
  direction: { quantity: 'angle', least: Math.PI / 180, share: 0, assumed: { least: Math.PI / 36, share: 0 } },
  /** Of its forces: foam differs by a tenth from part to part and with its temperature, common practice. */
  curve: { quantity: 'share', least: 0.1, share: 0, assumed: { least: 0.3, share: 0 } },
  /** Worked out rather than taped, from weights with an axle raised, the center of gravity and the roll axis: an inch or 5 %, common practice. */
  height: { quantity: 'length', least: INCH, share: 0.05, assumed: { least: 4 * INCH, share: 0.2 } },
  /** Of an anti-roll bar, from its diameter to the fourth power and its arms: 10 %, common practice. */
  rollRate: { quantity: 'rollRate', least: 0, share: 0.1, assumed: { least: 0, share: 0.3 } },
  /** What a turn or the brakes are asked for, read off a logger: 10 %, common practice. */
  acceleration: { quantity: 'acceleration', least: 0, share: 0.1, assumed: { least: 0, share: 0.3 } },
  /** What ground asks of the wheel: 1/2 in or 10 %, common practice. */
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
