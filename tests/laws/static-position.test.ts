import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../core/corner/corner.ts'
import { restingPosition } from '../../core/corner/static-position.ts'
import { arbitraryCorner } from './arbitrary-corner.ts'

const runs = { numRuns: 300, seed: 31 }

describe('the static position', () => {
  it('balances the weight to 1e-9, or stands on the step, or at the end of the travel with the rest carried there', () => {
    const outcomes = { balance: 0, step: 0, bump: 0, droop: 0 }
    fc.assert(
      fc.property(arbitraryCorner(), fc.double({ min: 200, max: 9000, noNaN: true }), (corner, weight) => {
        const model = cornerModel(corner)
        const rest = restingPosition(model, weight)
        const below = model.forces(rest, 'slow', 'below').total
        const above = model.forces(rest, 'slow', 'above').total
        // What a position known to 1e-12 m leaves open.
        const room = 1e-9 * weight + 1e-12 * Math.abs(model.wheelRate(rest, 'slow'))
        if (Math.abs(below - weight) <= room || Math.abs(above - weight) <= room) outcomes.balance += 1
        else if (rest === model.bump && above < weight) outcomes.bump += 1
        else if (rest === model.droop && below > weight) outcomes.droop += 1
        else {
          outcomes.step += 1
          expect(below).toBeLessThan(weight)
          expect(above).toBeGreaterThan(weight)
          expect(rest).toBe(model.engagement)
        }
      }),
      { numRuns: 500, seed: 32 },
    )
    expect(
      Object.values(outcomes).every(count => count > 0),
      JSON.stringify(outcomes),
    ).toBe(true)
  })

  it('is the step itself for every weight the step can carry, whichever way the corner comes to it', () => {
    fc.assert(
      fc.property(
        arbitraryCorner('ratio'),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (corner, share, start) => {
          const model = cornerModel(corner)
          const { engagement, droop, bump } = model
          fc.pre(corner.stop?.kind === 'hydraulic' && engagement !== null && engagement > droop && engagement < bump)
          const foot = model.forces(engagement!, 'slow', 'below').total
          const top = model.forces(engagement!, 'slow', 'above').total
          fc.pre(top - foot > 1e-3)
          const weight = foot + share * (top - foot)
          expect(restingPosition(model, weight, droop + start * (bump - droop))).toBe(engagement)
        },
      ),
      { ...runs, numRuns: 100 },
    )
  })
})
