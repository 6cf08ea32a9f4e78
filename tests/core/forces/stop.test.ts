import { describe, expect, it } from 'vitest'
import { circleArea, gasEnergy, gasForce } from '../../../core/forces/gas.ts'
import { stopModel } from '../../../core/forces/stop.ts'
import { allClose, close } from '../../close.ts'
import { integrate } from '../../quadrature.ts'
import { plainStop } from '../plain-corner.ts'

describe('a hydraulic stop', () => {
  const stop = plainStop()
  const model = stopModel(stop)
  it('begins at area times charge, the same slow and fast', () => {
    const first = circleArea(stop.shaftDiameter) * stop.charge
    close(model.force(0, 'slow').value, first, { rel: 1e-12 })
    close(model.force(0, 'fast').value, first, { rel: 1e-12 })
    expect(model.corners).toEqual([])
  })

  it('without charge begins at nothing and still has a rate', () => {
    const empty = stopModel(plainStop({ charge: 0 }))
    close(empty.force(0, 'slow').value, 0, { abs: 1e-9 })
    expect(empty.force(0, 'slow').slope).toBeGreaterThan(0)
  })

  it('takes the energy under its force', () => {
    for (const law of ['slow', 'fast'] as const)
      for (const share of [0.1, 0.5, 1]) {
        const travel = share * stop.stroke
        const wanted = integrate(x => model.force(x, law).value, 0, travel, [])
        close(model.energy(travel, law), wanted, { rel: 1e-12 })
      }
    expect(model.energy(0, 'slow')).toBe(0)
  })
})

describe('an elastomer stop', () => {
  const rows = [
    { deflection: 0, force: 0 },
    { deflection: 0.01, force: 500 },
    { deflection: 0.03, force: 4000 },
    { deflection: 0.04, force: 4000 },
  ]
  const model = stopModel({ kind: 'elastomer', gap: 0.02, curve: rows })
  it('goes through its rows, ends with them, and does not care how fast', () => {
    expect(model.stroke).toBe(0.04)
    expect(model.corners).toEqual([0.01, 0.03])
    allClose(
      rows.map(row => model.force(row.deflection, 'slow').value),
      rows.map(row => row.force),
      { rel: 1e-12, abs: 1e-12 },
    )
    expect(model.force(0.017, 'fast')).toEqual(model.force(0.017, 'slow'))
    expect(model.force(0.035, 'slow')).toEqual({ value: 4000, slope: 0 })
  })

  it('takes the energy under its curve', () => {
    for (const travel of [0.004, 0.01, 0.022, 0.04]) {
      const wanted = integrate(x => model.force(x, 'slow').value, 0, travel, model.corners)
      close(model.energy(travel, 'slow'), wanted, { rel: 1e-12 })
    }
  })
})

describe('gas', () => {
  const chamber = { area: 4e-4, charge: 1e6, volume: 2e-4 }
  it('at no travel is its charge on the area; further in, less than a vacuum could hold back never', () => {
    close(gasForce(chamber, 0, 'slow').value, 400, { rel: 1e-12 })
    expect(gasForce(chamber, 0.4999, 'fast').value).toBeGreaterThan(gasForce(chamber, 0.4999, 'slow').value)
  })

  it('gives back the slow law as the exponent comes to 1: 1 % of squeeze costs about the same either way', () => {
    const travel = 0.005
    close(gasEnergy(chamber, travel, 'fast'), gasEnergy(chamber, travel, 'slow'), { rel: 3e-3 })
  })
})
