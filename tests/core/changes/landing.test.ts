import { describe, expect, it } from 'vitest'
import { energyHeight, FINE, HIGHEST, landingHeight } from '../../../core/changes/landing.ts'
import { cornerModel } from '../../../core/corner/corner.ts'
import { ride } from '../../../core/ride/ride.ts'
import { GRAVITY, INCH } from '../../../core/units/constants.ts'
import { close } from '../../close.ts'
import { seed, seedNames } from '../../seeds/seed.ts'
import { LB_IN, plainCorner } from '../plain-corner.ts'

const everyCorner = seedNames.flatMap(name =>
  seed(name).setups.flatMap(setup =>
    setup.axles.map(({ id, corner }) => ({ where: `${name}, ${setup.id}, ${id}`, corner })),
  ),
)

describe('the landing height', () => {
  it.each(everyCorner)('of $where: the whole ride takes it, and does not take a little more', ({ corner }) => {
    const model = cornerModel(corner)
    const { drop, by } = landingHeight(model)
    expect(by).toBe('simulation')
    const bottoms = (from: number): number => {
      const outcome = ride(model, { id: 'landing', name: '', kind: 'landing', drop: from })
      return outcome.ok ? outcome.bottoms : Number.NaN
    }
    expect(bottoms(drop - FINE)).toBe(0)
    expect(bottoms(drop + 2 * FINE)).toBeGreaterThan(0)
  })

  it.each(everyCorner)('of $where is more than the energy alone promises', ({ corner }) => {
    const model = cornerModel(corner)
    expect(landingHeight(model).drop).toBeGreaterThanOrEqual(energyHeight(model))
    expect(landingHeight(model, 'energy')).toEqual({ drop: energyHeight(model), by: 'energy' })
  })

  it('by energy is ½kx² over the weight, less the travel', () => {
    // 600 lb over 200 lb/in: loose at droop, 3 in above ride height; 6 in more to the end of the shock.
    const corner = plainCorner({ springs: { ...plainCorner().springs, preload: 0 } })
    const model = cornerModel(corner)
    const travel = 12 * INCH
    close(model.bump - model.droop, travel, { rel: 1e-9 })
    const held = (200 * LB_IN * travel ** 2) / 2
    close(energyHeight(model), held / (300 * GRAVITY) - travel, { rel: 1e-9 })
  })

  it('is nothing where the car comes to full bump without falling, and no more than was looked at', () => {
    const weak = plainCorner({
      springs: { ...plainCorner().springs, springs: [{ ...plainCorner().springs.springs[0]!, rate: 5 * LB_IN }] },
    })
    expect(landingHeight(cornerModel(weak))).toEqual({ drop: 0, by: 'simulation' })
    const strong = plainCorner({
      springs: { ...plainCorner().springs, springs: [{ ...plainCorner().springs.springs[0]!, rate: 9000 * LB_IN }] },
    })
    expect(landingHeight(cornerModel(strong)).drop).toBe(HIGHEST)
  })
})
