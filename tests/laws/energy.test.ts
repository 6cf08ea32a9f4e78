import fc from 'fast-check'
import { describe, it } from 'vitest'
import { axleBudget, energyBetween } from '../../core/budget/budget.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import type { CornerModel, GasLaw } from '../../core/corner/corner-model.ts'
import { close } from '../close.ts'
import { integrate } from '../quadrature.ts'
import { arbitraryCorner } from './arbitrary-corner.ts'
import { arbitraryPlan } from './arbitrary-plan.ts'

const runs = { numRuns: 300, seed: 21 }

/**
 * Where a quadrature is good for this: away from the dead points of an arm, where its motion ratio is infinite, and inside the travel.
 * Within a thousandth of either end of an arm's travel the square-root singularity is left to the closed form.
 */
function away({ linkage, droop, bump }: CornerModel): [number, number] {
  const { lowest, highest } = linkage
  const margin = Number.isFinite(highest - lowest) && linkage.knots.length === 0 ? (highest - lowest) / 50 : 0
  return [Math.max(droop, lowest + margin), Math.min(bump, highest - margin)]
}

/** ∫F dw by quadrature, broken at the kinks. */
const byQuadrature = (model: CornerModel, law: GasLaw, from: number, to: number): number =>
  integrate(wheel => model.forces(wheel, law).total, from, to, model.kinks)

describe('energy', () => {
  it.each(['slow', 'fast'] as const)(
    'is the integral of the force at the wheel, %s gas, over every kind of corner',
    law => {
      fc.assert(
        fc.property(arbitraryCorner(), corner => {
          const model = cornerModel(corner)
          const [from, to] = away(model)
          const wanted = byQuadrature(model, law, from, to)
          close(model.energy(to, law) - model.energy(from, law), wanted, { rel: 1e-9, abs: 1e-7 })
        }),
        runs,
      )
    },
  )

  it('of the springs is ½kx² of each, whatever locks, binds or is loose', () => {
    fc.assert(
      fc.property(arbitraryCorner(), fc.double({ min: 0, max: 1, noNaN: true }), (corner, share) => {
        const model = cornerModel({ ...corner, stop: null, shock: { ...corner.shock, gas: null } })
        fc.pre(model.bump > 0)
        const wheel = model.droop + share * (model.bump - model.droop)
        const held = model
          .parts(wheel)
          .springs.reduce(
            (sum, { compression }, i) => sum + (corner.springs.springs[i]!.rate * compression ** 2) / 2,
            0,
          )
        close(model.energy(wheel, 'slow'), held, { rel: 1e-10, abs: 1e-9 })
      }),
      runs,
    )
  })

  it('of the zones adds up to the energy of the whole travel, and their lengths to the travel', () => {
    fc.assert(
      fc.property(arbitraryPlan(), plan => {
        for (const axle of plan.setups.flatMap(setup => setup.axles)) {
          const model = cornerModel(axle.corner)
          const { zones, travel } = axleBudget(axle, plan, model)
          const sum = (of: 'length' | 'energy') => zones.reduce((total, zone) => total + zone[of], 0)
          close(sum('length'), travel.total, { rel: 1e-14 })
          close(travel.total, travel.bump + travel.droop, { rel: 1e-14 })
          close(sum('energy'), energyBetween(model, model.droop, model.bump), { rel: 1e-12, abs: 1e-9 })
          const [, coilover, engagement] = zones
          if (travel.bump > 0) close(coilover!.share + engagement!.share, 1, { rel: 1e-14 })
        }
      }),
      { ...runs, numRuns: 150 },
    )
  })
})
