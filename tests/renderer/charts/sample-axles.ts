import type { Axle, Corner, Stop } from '../../../core/plan/schema.ts'
import { INCH, POUND, POUND_FORCE, PSI } from '../../../core/units/constants.ts'

/** An invented trailing arm corner with everything on it, in inches and pounds as a builder would tape it. */

const inches = (...values: number[]): [number, number, number] => values.map(value => value * INCH) as never

export const hydraulicStop = {
  kind: 'hydraulic',
  stroke: 3 * INCH,
  gap: 1.8125 * INCH,
  shaftDiameter: 1.75 * INCH,
  charge: 165 * PSI,
  gasVolume: 9 * INCH ** 3,
  body: { bore: 2 * INCH, ratedPressure: 1500 * PSI },
} as const satisfies Stop

export const sampleCorner: Corner = {
  cornerMass: 1376 * POUND,
  unsprungMass: 214 * POUND,
  linkage: {
    kind: 'arm',
    pivot: [inches(34, 6, 2.7), inches(34, -6, 2.7)],
    wheel: inches(0, 0, 0),
    shockLower: inches(9.5, 0, 2.3),
    shockUpper: inches(14.5, 0, 32.6),
    stopPad: inches(16.25, 0, 4),
    stopAxis: [0, 0, 1],
  },
  shock: {
    stroke: 16 * INCH,
    showing: 7.6875 * INCH,
    shaftDiameter: 0.875 * INCH,
    gas: { charge: 175 * PSI, volume: 27 * INCH ** 3 },
    compression: [],
    rebound: [],
  },
  springs: {
    springs: [
      { name: 'tender', rate: (250 * POUND_FORCE) / INCH, freeLength: 10 * INCH, solidLength: 2.875 * INCH },
      { name: 'main', rate: (350 * POUND_FORCE) / INCH, freeLength: 18 * INCH, solidLength: 6.875 * INCH },
    ],
    preload: 2.125 * INCH,
    crossover: { gap: 5.375 * INCH },
  },
  stop: hydraulicStop,
  tire: { radius: 17.9 * INCH, rate: (1456 * POUND_FORCE) / INCH, damping: 400 },
  clearance: { bump: null, droop: 9.25 * INCH },
}

export const sampleAxle: Axle = {
  id: 'rear',
  suspension: 'independent',
  track: 66 * INCH,
  antiRollRate: 20_000,
  corner: sampleCorner,
}

export const withCorner = (corner: Partial<Corner>): Axle => ({ ...sampleAxle, corner: { ...sampleCorner, ...corner } })

/** The same corner with another gap, and the charge that goes with it. */
export const proposedAxle = withCorner({ stop: { ...hydraulicStop, gap: 2.5625 * INCH, stroke: 2.25 * INCH } })
