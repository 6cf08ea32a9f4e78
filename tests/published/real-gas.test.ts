import { describe, expect, it } from 'vitest'
import { afterGauge, chargeAt, chargeBeforeGauge, hoseVolume, idealChargeAt } from '../../core/forces/charge.ts'
import type { GasChamber, GasLaw } from '../../core/forces/gas.ts'
import {
  type NitrogenState,
  nitrogenAt,
  nitrogenAtDensity,
  nitrogenCompressibility,
  nitrogenEntropy,
  nitrogenPressure,
  nitrogenSqueezed,
} from '../../core/forces/nitrogen.ts'
import { compareGas, realGas } from '../../core/forces/real-gas.ts'
import { ATMOSPHERE, INCH, PSI } from '../../core/units/constants.ts'
import { allClose, close } from '../close.ts'
import { integrate } from '../quadrature.ts'

/**
 * The reference equation of state of nitrogen: R. Span, E. W. Lemmon, R. T Jacobsen, W. Wagner and A. Yokozeki, J. Phys. Chem. Ref. Data 29
 * (2000) 1361, evaluated with its published coefficients. The equation of the program is another, shorter one by R. Span and W. Wagner.
 */

const CELSIUS = 273.15

function state(found: NitrogenState): Extract<NitrogenState, { ok: true }> {
  if (!found.ok) throw new Error(found.reason)
  return found
}

/** Compressibility factor by gauge pressure in psi, at 0, 20, 40, 60, 80 and 100 °C. */
const COMPRESSIBILITY: readonly (readonly [number, readonly number[]])[] = [
  [0, [0.99954, 0.99976, 0.99992, 1.00004, 1.00013, 1.00021]],
  [100, [0.99658, 0.99823, 0.99947, 1.00041, 1.00113, 1.00168]],
  [200, [0.99389, 0.99694, 0.99922, 1.00095, 1.00227, 1.00328]],
  [300, [0.99146, 0.99587, 0.99916, 1.00165, 1.00355, 1.005]],
  [500, [0.98744, 0.99444, 0.99964, 1.00356, 1.00653, 1.0088]],
  [800, [0.98362, 0.9941, 1.00186, 1.00767, 1.01206, 1.0154]],
  [1000, [0.98261, 0.99511, 1.00434, 1.01124, 1.01643, 1.02037]],
  [1250, [0.98313, 0.99779, 1.00858, 1.01662, 1.02266, 1.02722]],
  [1500, [0.98567, 1.00202, 1.01406, 1.02301, 1.02972, 1.03476]],
]

describe('compressibility of nitrogen', () => {
  const factors = (psi: number): number[] =>
    [0, 20, 40, 60, 80, 100].map(celsius => {
      const { temperature, density } = state(nitrogenAt(celsius + CELSIUS, psi * PSI + ATMOSPHERE))
      return nitrogenCompressibility(temperature, density)
    })

  it.each(COMPRESSIBILITY)('at %s psi, 0 to 100 °C, is within 0.1 %%', (psi, wanted) =>
    allClose(factors(psi), wanted, { rel: 1e-3 }),
  )

  it.each(COMPRESSIBILITY.filter(([psi]) => psi <= 300))(
    'at %s psi, where stops are charged, is within 0.03 %%',
    (psi, wanted) => allClose(factors(psi), wanted, { rel: 3e-4 }),
  )

  it('300 K and 10 MPa: 111.7254 kg/m³ (28.0134 g/mol); 0.1 MPa: 1.12328', () => {
    const mass = (pressure: number) => state(nitrogenAt(300, pressure)).density * 0.0280134
    close(mass(10e6), 111.7254, { rel: 1e-3 })
    close(mass(0.1e6), 1.12328, { rel: 5e-5 })
  })
})

/** From 1.48 MPa absolute and 293 K: V₀/V, pressure in MPa and temperature in K without heat leaving, pressure kept at 293 K. */
const SQUEEZED = [
  [1.5, 2.6424, 346.357, 2.21746],
  [2, 4.00375, 390.462, 2.95401],
  [3, 7.25411, 463.205, 4.42688],
  [4, 11.15344, 523.677, 5.90362],
  [5, 15.67433, 576.52, 7.38949],
  [6, 20.81217, 624.08, 8.89001],
  [7, 26.57563, 667.745, 10.41102],
  [8, 32.98242, 708.416, 11.95872],
] as const

describe('nitrogen squeezed from 1.48 MPa and 293 K', () => {
  const start = state(nitrogenAt(293, 1.48e6))

  it('starts at 609.394997 mol/m³', () => close(start.density, 609.394997, { rel: 1e-4 }))

  it.each(SQUEEZED)(
    '%s to 1, no heat leaving: %s MPa within 0.2 %%, %s K within 0.1 %%',
    (ratio, pressure, temperature) => {
      const end = state(nitrogenSqueezed(start, ratio))
      close(end.pressure / 1e6, pressure, { rel: 2e-3 })
      close(end.temperature, temperature, { rel: 1e-3 })
    },
  )

  it.each(SQUEEZED)('%s to 1, kept at its temperature: within 0.1 %%', (ratio, _1, _2, pressure) =>
    close(nitrogenPressure(293, start.density * ratio) / 1e6, pressure, { rel: 1e-3 }),
  )

  it('is stiffer than n = 1.4 says: 2.5 % at 2 to 1, 8 % at 4, 21 % at 8', () => {
    const chamber: GasChamber = { area: 1, charge: 1.48e6 - ATMOSPHERE, volume: 1 }
    const stiffer = (ratio: number): number => {
      const found = compareGas(chamber, 1 - 1 / ratio, 'fast', 293)
      return found.ok ? found.difference.pressure : Number.NaN
    }
    allClose([2, 4, 8].map(stiffer), [0.02509, 0.08209, 0.21254], { abs: 2.5e-3 })
  })
})

/** Isentropic exponent ρw²/p by gauge pressure in psi, at 20 and 100 °C: the slope of log p over log ρ without heat leaving. */
describe('isentropic exponent of nitrogen', () => {
  const exponent = (celsius: number, psi: number): number => {
    const from = state(nitrogenAt(celsius + CELSIUS, psi * PSI + ATMOSPHERE))
    const [low, high] = [0.999, 1.001].map(ratio => state(nitrogenSqueezed(from, ratio)))
    return Math.log(high!.pressure / low!.pressure) / Math.log(high!.density / low!.density)
  }
  it.each([
    [0, 1.4011, 1.3994],
    [200, 1.4227, 1.418],
    [500, 1.4603, 1.448],
    [1000, 1.5365, 1.5035],
    [1500, 1.6291, 1.5651],
  ])('at %s psi: %s at 20 °C, %s at 100 °C, within 0.25 %%', (psi, cool, hot) =>
    allClose([exponent(20, psi), exponent(100, psi)], [cool, hot], { rel: 2.5e-3 }),
  )
})

/** Charged at 20 °C: gauge psi at −20, 0, 40, 60, 80 and 100 °C, nitrogen and ideal gas. */
const SHUT_IN: readonly (readonly [number, readonly number[], readonly number[]])[] = [
  [100, [84.04, 92.02, 107.97, 115.94, 123.91, 131.88], [84.35, 92.17, 107.83, 115.65, 123.48, 131.3]],
  [200, [169.62, 184.82, 215.17, 230.32, 245.47, 260.61], [170.7, 185.35, 214.65, 229.3, 243.94, 258.59]],
  [300, [254.74, 277.39, 322.59, 345.15, 367.69, 390.22], [257.06, 278.53, 321.47, 342.94, 364.41, 385.88]],
  [500, [423.59, 461.84, 538.09, 576.12, 614.11, 652.04], [429.77, 464.89, 535.11, 570.23, 605.34, 640.46]],
  [1000, [837.98, 919.13, 1080.62, 1161.02, 1241.24, 1321.28], [861.55, 930.77, 1069.23, 1138.45, 1207.68, 1276.91]],
]

describe('a charge shut in at 20 °C', () => {
  const temperatures = [-20, 0, 40, 60, 80, 100].map(celsius => celsius + CELSIUS)
  const room = 20 + CELSIUS

  it.each(SHUT_IN)('of %s psi, as nitrogen, is within 0.1 %% of gauge', (psi, real) => {
    const found = temperatures.map(at => {
      const then = chargeAt(psi * PSI, room, at)
      return then.ok ? then.charge / PSI : Number.NaN
    })
    allClose(found, real, { rel: 1e-3 })
  })

  it.each(SHUT_IN)('of %s psi, as an ideal gas, is that gas exactly', (psi, _, ideal) =>
    allClose(
      temperatures.map(at => idealChargeAt(psi * PSI, room, at) / PSI),
      ideal,
      { abs: 0.0051 },
    ),
  )

  it('up to 300 psi the ideal gas errs by no more than 0.5 % at 0 °C and 1.2 % at 100 °C', () => {
    const off = (psi: number, at: number): number => {
      const real = chargeAt(psi * PSI, room, at + CELSIUS)
      return real.ok ? Math.abs(idealChargeAt(psi * PSI, room, at + CELSIUS) / real.charge - 1) : Number.NaN
    }
    for (const psi of [50, 100, 200, 300]) {
      expect(off(psi, 0)).toBeLessThan(0.005)
      expect(off(psi, 100)).toBeLessThan(0.012)
    }
  })
})

/** A stop as in `nitrogen.test.ts`: 2 in diameter, gas 2.5 in times its area, 200 psi. */
const chamber: GasChamber = {
  area: Math.PI * INCH ** 2,
  charge: 200 * PSI,
  volume: 2.5 * Math.PI * INCH ** 3,
}

describe('nitrogen behind a shaft', () => {
  const at = (travel: number, law: GasLaw) => {
    const found = realGas(chamber, travel, law, 293.15)
    if (!found.ok) throw new Error(found.reason)
    return found
  }

  it('takes the work its force does, slow and fast', () => {
    for (const law of ['slow', 'fast'] as const) {
      const work = integrate(x => at(x, law).force, 0, 1.9 * INCH, [])
      close(at(1.9 * INCH, law).energy, work, { rel: 1e-7 })
    }
  })

  it('at full length is its charge, at the temperature it was charged at', () => {
    for (const law of ['slow', 'fast'] as const) {
      const { pressure, temperature, force, energy } = at(0, law)
      close(pressure, chamber.charge + ATMOSPHERE, { rel: 1e-9 })
      close(temperature, 293.15, { rel: 1e-9 })
      close(force, chamber.area * chamber.charge, { rel: 1e-9 })
      close(energy, 0, { abs: 1e-6 })
    }
  })

  it('keeps its entropy when no heat leaves', () => {
    const from = state(nitrogenAt(293, 1.48e6))
    const to = state(nitrogenSqueezed(from, 5))
    close(nitrogenEntropy(to.temperature, to.density), nitrogenEntropy(from.temperature, from.density), { abs: 1e-8 })
  })

  it('names what it is not asked to know', () => {
    expect(realGas(chamber, 0, 'slow', 200)).toEqual({ ok: false, reason: 'temperature out of range' })
    expect(realGas({ ...chamber, charge: 7e7 }, 0, 'slow', 300)).toEqual({ ok: false, reason: 'pressure out of range' })
    expect(compareGas(chamber, 2.499 * INCH, 'fast', 300).ok).toBe(false)
    expect(nitrogenAtDensity(300, 25_000).ok).toBe(false)
    expect(chargeAt(200 * PSI, 293, 1000)).toEqual({ ok: false, reason: 'temperature out of range' })
  })
})

/** Boyle's law over stop and hose, which starts full of air at atmosphere; anybody can follow it: 1 cu in of hose on 9 of gas takes a tenth. */
describe('a gauge with its hose', () => {
  it('takes from a small stop what it is filled with', () => {
    close(afterGauge(200 * PSI, 9, 1) / PSI, 180, { rel: 1e-14 })
    close(afterGauge(200 * PSI, 9, 1, 2) / PSI, 162, { rel: 1e-14 })
    close(afterGauge(200 * PSI, 9, 1, 0) / PSI, 200, { rel: 1e-14 })
  })

  it('is made up for by starting higher', () =>
    close(afterGauge(chargeBeforeGauge(200, 9, 1, 3), 9, 1, 3), 200, { rel: 1e-14 }))

  it('of two feet and 1/8 in bore holds 0.2945 cu in: 5 psi of 200 in 11.5 cu in', () => {
    const hose = hoseVolume(INCH / 8, 24 * INCH)
    close(hose / INCH ** 3, 0.2945, { abs: 5e-5 })
    close(200 - afterGauge(200, 11.5 * INCH ** 3, hose), 4.994, { abs: 1e-3 })
  })
})
