import { describe, it } from 'vitest'
import { close } from '../close.ts'
import { amplitudes } from '../core/ride/amplitudes.ts'

/** One mass on a spring and damper over a sine road: the wheel is light and its tire ten thousand times as stiff, so that it follows the road. */
const onOneSpring = (mass: number, spring: number, damper: number, w: number): number =>
  amplitudes({ sprung: mass, unsprung: mass / 25, spring, damper, tire: spring * 1e4 }, w).chassis

/**
 * D. J. Inman, Engineering Vibration, base excitation (from memory; recomputed): a road of 1 cm amplitude and 6 m wave, printed as
 * ω = v·0.2909 rad/s per km/h, under a car of 40 000 N/m and 2000 N·s/m. Amplitudes in cm.
 */
describe('a car over a sine road, D. J. Inman, Engineering Vibration (from memory; recomputed)', () => {
  it.each([
    [1007, 5.818, 3.19],
    [1007, 23.271, 0.121],
    [1007, 29.089, 0.087],
    [1007, 43.633, 0.051],
    [1585, 5.818, 2.32],
    [1585, 23.271, 0.075],
    [1585, 29.089, 0.054],
    [1585, 43.633, 0.032],
  ])('%d kg at %d rad/s moves %d cm', (mass, w, moved) =>
    close(onOneSpring(mass, 40_000, 2000, w), moved, { abs: moved > 1 ? 6e-3 : 6e-4 }),
  )
})

describe('transmissibility, J. P. Den Hartog, Mechanical Vibrations, ch. 2', () => {
  const [mass, spring] = [400, 20_000]
  const natural = Math.sqrt(spring / mass)
  it.each([0.1, 0.25, 0.6])('is 1 at √2 times the natural frequency, whatever the damping: %d of critical', damping =>
    close(onOneSpring(mass, spring, 2 * damping * Math.sqrt(spring * mass), natural * Math.SQRT2), 1, { rel: 1e-3 }),
  )

  it.each([
    [0.5, 0.2],
    [2, 0.2],
    [3, 0.5],
  ])('is √((1 + (2ζr)²)/((1 − r²)² + (2ζr)²)) at r = %d, ζ = %d', (r, zeta) => {
    const damped = (2 * zeta * r) ** 2
    const ratio = Math.sqrt((1 + damped) / ((1 - r ** 2) ** 2 + damped))
    close(onOneSpring(mass, spring, 2 * zeta * Math.sqrt(spring * mass), r * natural), ratio, { rel: 2e-3 })
  })
})

/**
 * How much of a road's slope the golden car of the roughness index answers with, by wave length in m, at 80 km/h (its equations and values:
 * M. W. Sayers, T. D. Gillespie and W. D. O. Paterson, World Bank Technical Paper 46, 1986; gains recomputed). Peaks near 15 and 2.4 m as in
 * M. W. Sayers and S. M. Karamihas, The Little Book of Profiling, 1998 (from memory).
 */
describe('slope gain of the golden car', () => {
  const car = { sprung: 250, unsprung: 37.5, spring: 63.3 * 250, damper: 6 * 250, tire: 653 * 250 }
  it.each([
    [1, 0.27309],
    [1.25, 0.4786],
    [2, 1.53354],
    [2.4, 1.664],
    [3, 1.45322],
    [5, 1.16967],
    [7.5, 1.16488],
    [10, 1.25968],
    [15, 1.52731],
    [20, 1.23403],
    [30, 0.45481],
    [50, 0.13659],
    [100, 0.0316],
  ])('of waves of %d m is %d', (wave, gain) =>
    close(amplitudes(car, (2 * Math.PI * (80 / 3.6)) / wave).travel, gain, { rel: 1e-3 }),
  )
})
