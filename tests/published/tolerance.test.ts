import { describe, expect, it } from 'vitest'
import { agree, firstOrderBand } from '../../core/tolerance/agreement.ts'
import { type Distribution, standardUncertainty } from '../../core/tolerance/distribution.ts'
import { combined, slopesOf } from '../../core/tolerance/first-order.ts'
import { BLOCK, runBlock } from '../../core/tolerance/monte-carlo.ts'
import { deviation, mean, quantile, sorted } from '../../core/tolerance/statistics.ts'
import { allClose, close } from '../close.ts'

/** Trials of one result, sorted. */
function trials(
  f: (...deviations: number[]) => number,
  distributions: readonly Distribution[],
  blocks = 800,
): Float64Array {
  const inputs = distributions.map((distribution, i) => ({ key: `input ${i}`, distribution }))
  const values = new Float64Array(blocks * BLOCK)
  for (let block = 0; block < blocks; block += 1)
    runBlock(inputs, 11, block, (deviations, number) => {
      values[block * BLOCK + number] = f(...deviations)
    })
  return sorted(values)
}

const normal = (spread: number): Distribution => ({ kind: 'normal', deviation: spread })
const rectangular = (spread: number): Distribution => ({ kind: 'rectangular', halfWidth: spread * Math.sqrt(3) })
const within = (low: number, high: number): Distribution => ({ kind: 'rectangular', halfWidth: (high - low) / 2 })
const sum = (...deviations: number[]): number => deviations.reduce((total, value) => total + value, 0)
const middle95 = (values: Float64Array): number[] => [quantile(values, 0.025), quantile(values, 0.975)]

describe('first order, JCGM 100:2008 (GUM)', () => {
  it('H.1 end-gauge calibration: 50.000 838 mm, 32 nm', () => {
    // Lengths in nm: standard, difference, difference of expansions, temperature, expansion, difference of temperatures.
    const values = [50_000_623, 215, 0, -0.1, 11.5e-6, 0]
    const uncertainties = [25, 9.7, 0.58e-6, 0.41, 1.2e-6, 0.029]
    const length = (deviations: readonly number[]): number[] => {
      const [standard, difference, dAlpha, theta, alpha, dTheta] = values.map((value, i) => value + deviations[i]!)
      return [standard! + difference! - standard! * (dAlpha! * theta! + alpha! * dTheta!)]
    }
    const slopes = slopesOf(
      length,
      uncertainties.map(uncertainty => uncertainty / 10),
    )
    close(length([0, 0, 0, 0, 0, 0])[0]!, 50_000_838, { abs: 0.5 })
    const [uncertainty] = combined(slopes, uncertainties)
    close(uncertainty!, 32, { abs: 0.5 })
    // Recomputed with more digits.
    close(uncertainty!, 31.71, { abs: 0.005 })
  })

  it('H.2 resistance and reactance at once: 127.732, 219.847, 254.260 Ω with 0.071, 0.295, 0.236 and their correlations', () => {
    const readings = [
      [5.007, 4.994, 5.005, 4.99, 4.999],
      [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
      [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
    ]
    const means = readings.map(column => column.reduce((total, value) => total + value, 0) / 5)
    const covariances = readings.map((a, i) =>
      readings.map((b, j) => a.reduce((total, value, k) => total + (value - means[i]!) * (b[k]! - means[j]!), 0) / 20),
    )
    const results = (deviations: readonly number[]): number[] => {
      const [volt, ampere, phase] = means.map((value, i) => value + deviations[i]!)
      const impedance = volt! / ampere!
      return [impedance * Math.cos(phase!), impedance * Math.sin(phase!), impedance]
    }
    const slopes = slopesOf(results, [1e-5, 1e-8, 1e-6])
    // S·V·Sᵀ (JCGM 102:2011, 6.2): the readings hang together, so the program's sum over independent inputs does not serve.
    const found = slopes.map(row =>
      slopes.map(other => sum(...row.flatMap((a, i) => other.map((b, j) => a * covariances[i]![j]! * b)))),
    )
    allClose(results([0, 0, 0]), [127.732, 219.847, 254.26], { abs: 0.0005 })
    // Printed 0.295 for the second, 0.2956 recomputed: the printed value is cut, not rounded.
    allClose(
      found.map((row, i) => Math.sqrt(row[i]!)),
      [0.071, 0.2956, 0.236],
      { abs: 0.0005 },
    )
    const correlation = (i: number, j: number): number => found[i]![j]! / Math.sqrt(found[i]![i]! * found[j]![j]!)
    allClose([correlation(0, 1), correlation(0, 2), correlation(1, 2)], [-0.588, -0.485, 0.993], { abs: 0.0005 })
  })

  it('a pressure known to 1 % on a diameter known to 1 %: the area to 2 %, the force to 2.236 % (derived by hand)', () => {
    const force = ([p, d]: readonly number[]): number[] => [((100 + p!) * Math.PI * (2 + d!) ** 2) / 4]
    const slopes = slopesOf(force, [1e-3, 1e-5])
    close(combined(slopes, [1, 0.02])[0]! / force([0, 0])[0]!, Math.sqrt(5) / 100, { rel: 1e-8 })
  })
})

describe('trials, JCGM 101:2008', () => {
  it('9.2.2 four normal inputs: standard uncertainty 2.00, 95 % within ±3.92', () => {
    const values = trials(sum, [1, 1, 1, 1].map(normal))
    close(deviation(values), 2, { abs: 0.01 })
    allClose(middle95(values), [-3.92, 3.92], { abs: 0.04 })
  })

  it('9.2.3 four rectangular inputs: 2.00 and ±3.88, where slopes say ±3.92 (from memory, recomputed)', () => {
    const values = trials(sum, [1, 1, 1, 1].map(rectangular))
    close(deviation(values), 2, { abs: 0.01 })
    allClose(middle95(values), [-3.88, 3.88], { abs: 0.03 })
    expect(quantile(values, 0.975)).toBeLessThan(3.91)
  })

  it('9.2.4 one rectangle ten times the others: 10.1 and ±17.0, where slopes say ±19.9 (from memory, recomputed)', () => {
    const values = trials(sum, [1, 1, 1, 10].map(rectangular))
    close(deviation(values), 10.1, { abs: 0.06 })
    allClose(middle95(values), [-17.0, 17.0], { abs: 0.05 })
  })

  it('9.3 mass calibration: 0.0754 mg from trials and 1.0834 to 1.3825 mg, where slopes say 0.0539', () => {
    const mass = (mRc: number, dm: number, rhoA: number, rhoW: number, rhoR: number): number =>
      (100_000 + mRc + 1.234 + dm) * (1 + (1.2 + rhoA - 1.2) * (1 / (8000 + rhoW) - 1 / (8000 + rhoR))) - 100_000
    const distributions = [normal(0.05), normal(0.02), within(1.1, 1.3), within(7000, 9000), within(7950, 8050)]
    const values = trials(mass, distributions)
    close(deviation(values), 0.0754, { abs: 0.0004 })
    // The interval is read off 50 000 or more random trials: its third digit is uncertain, as the guide says.
    allClose(middle95(values), [1.0834, 1.3825], { abs: 0.002 })
    const uncertainties = distributions.map(standardUncertainty)
    const slopes = slopesOf(
      deviations => [mass(...(deviations as [number, number, number, number, number]))],
      uncertainties.map(uncertainty => uncertainty / 100),
    )
    close(combined(slopes, uncertainties)[0]!, 0.0539, { abs: 0.00005 })
  })

  it('9.4 y = x₁² + x₂², where slopes fail at the bottom and mend away from it (from memory, exact means recomputed)', () => {
    const spread = 0.005
    for (const [at, exact, byTrials, bySlopes] of [
      [0, 50e-6, 50e-6, 0],
      [0.01, 150e-6, 112e-6, 100e-6],
      [0.05, 2550e-6, 502e-6, 500e-6],
    ] as const) {
      const square = (a: number, b: number): number => (at + a) ** 2 + b ** 2
      const values = trials(square, [normal(spread), normal(spread)])
      close(mean(values), exact, { rel: 0.01 })
      close(deviation(values), byTrials, { rel: 0.01 })
      const slopes = slopesOf(([a, b]) => [square(a!, b!)], [spread / 1000, spread / 1000])
      const [uncertainty] = combined(slopes, [spread, spread])
      close(uncertainty!, bySlopes, { abs: 1e-12 })
      const band = { low: quantile(values, 0.05), high: quantile(values, 0.95) }
      expect(agree(band, firstOrderBand(at ** 2, uncertainty!), at ** 2)).toBe(at === 0.05)
    }
    // At the bottom y/σ² is χ² of two degrees of freedom: 95 % of it lies below −2·ln 0.05 = 5.99 (printed: within 0 to 150e-6).
    const bottom = trials((a, b) => a ** 2 + b ** 2, [normal(spread), normal(spread)])
    close(quantile(bottom, 0.95), -2 * Math.log(0.05) * spread ** 2, { rel: 0.02 })
  })
})
