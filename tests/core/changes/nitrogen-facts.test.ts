import { describe, expect, it } from 'vitest'
import { nitrogenFacts, nitrogenWords } from '../../../core/changes/nitrogen-facts.ts'
import { chargeByTemperature, squeezeByStroke } from '../../../core/changes/nitrogen-tables.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'
import { sayIn } from '../../../core/units/saying.ts'
import { allClose, close } from '../../close.ts'
import { plainStop } from '../plain-corner.ts'

/** 200 psi, 4 to 1 closed: beyond full ideal law by a good deal. */
const stop = plainStop({ stroke: 3 * INCH, gasVolume: 4 * Math.PI * INCH ** 3 })

describe('what the nitrogen of a stop does', () => {
  const facts = nitrogenFacts(stop)

  it('hot: 200 psi set at 20 °C is 245.5 psi at 80 °C, 243.9 by the ideal law (Span et al. 2000, as in the published checks)', () => {
    close((facts.hot.real ?? Number.NaN) / PSI, 245.47, { rel: 1e-3 })
    close(facts.hot.ideal / PSI, 243.94, { abs: 0.0051 })
  })

  it('closed in a hit it is stiffer than n = 1.4', () => {
    expect(facts.closing.ok && facts.closing.difference.force).toBeGreaterThan(0.05)
  })

  it('under a gauge: what is left, and what to set so that the charge is left', () => {
    const again = nitrogenFacts({ ...stop, charge: facts.gauge.setTo })
    close(again.gauge.left, stop.charge, { rel: 1e-12 })
    expect(facts.gauge.left).toBeLessThan(stop.charge)
  })

  it('is said in the units of the plan', () => {
    const inch = nitrogenWords(facts, 'inch', sayIn('inch'))
    expect(inch[0]).toBe('Set at 68 °F, the charge is 246 psi at 176 °F.')
    expect(inch[1]).toMatch(
      /^Closed in a hit real nitrogen reaches [\d,]+ psi absolute, [\d.]+ % more than the ideal gas/,
    )
    expect(inch[2]).toMatch(/^A gauge with a hose of 0\.29 cu in takes it down to 195 psi/)
    expect(nitrogenWords(facts, 'metric', sayIn('metric'))[0]).toBe('Set at 20 °C, the charge is 16.93 bar at 80 °C.')
  })

  it('says so where real nitrogen is not known', () => {
    const hard = nitrogenFacts(plainStop({ charge: 3000 * PSI, gasVolume: 4.05 * Math.PI * INCH ** 3 }), { hotAt: 900 })
    expect(hard.hot.real).toBeNull()
    expect(hard.closing.ok).toBe(false)
    expect(nitrogenWords(hard, 'inch', sayIn('inch'))[1]).toMatch(/beyond what is known/)
  })
})

describe('tables of the nitrogen of a stop', () => {
  it('200 psi set at 20 °C, from −20 to 100 °C, as nitrogen and as an ideal gas (Span et al. 2000, as in the published checks)', () => {
    const rows = chargeByTemperature(stop)
    allClose(
      rows.map(({ at }) => at - 273.15),
      [-20, 0, 20, 40, 60, 80, 100],
      { abs: 1e-9 },
    )
    allClose(
      rows.map(({ real }) => (real ?? Number.NaN) / PSI),
      [169.62, 184.82, 200, 215.17, 230.32, 245.47, 260.61],
      { rel: 1e-3 },
    )
    allClose(
      rows.map(({ ideal }) => ideal / PSI),
      [170.7, 185.35, 200, 214.65, 229.3, 243.94, 258.59],
      { abs: 0.0051 },
    )
  })

  it('the further in, the more real nitrogen is stiffer than n = 1.4, and nothing at full length', () => {
    const off = squeezeByStroke(stop).map(({ gas }) => (gas.ok ? gas.difference.force : Number.NaN))
    close(off[0]!, 0, { abs: 1e-9 })
    for (const [i, each] of off.slice(1).entries()) expect(each).toBeGreaterThan(off[i]!)
  })

  it('say what is not known', () => {
    const hard = plainStop({ charge: 3000 * PSI, gasVolume: 4.05 * Math.PI * INCH ** 3 })
    expect(squeezeByStroke(hard).at(-1)!.gas.ok).toBe(false)
    expect(chargeByTemperature(plainStop({ charge: 9e7 })).some(({ real }) => real === null)).toBe(true)
  })
})
