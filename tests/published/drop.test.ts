import { describe, expect, it } from 'vitest'
import { energyBetween } from '../../core/budget/budget.ts'
import { energyHeight } from '../../core/changes/landing.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import type { CornerModel } from '../../core/corner/corner-model.ts'
import { findRoot } from '../../core/numerics/roots.ts'
import { GRAVITY } from '../../core/units/constants.ts'
import { close } from '../close.ts'
import { plainCorner } from '../core/plain-corner.ts'

/** One spring of a rate in N/m, just touching at ride height, with so much to go, m. */
const free = (rate: number, travel = 0.9, sprung = 300): CornerModel =>
  cornerModel(
    plainCorner({
      cornerMass: sprung + plainCorner().unsprungMass,
      shock: { stroke: travel, showing: travel, shaftDiameter: 0.02, gas: null, compression: [], rebound: [] },
      springs: {
        springs: [{ name: 'main', rate, freeLength: 2, solidLength: 0.5 }],
        preload: 0,
        crossover: null,
      },
    }),
  )

/** How far a mass dropped onto the spring pushes it in: its fall, the push included, is the energy the spring takes. */
function deepest(model: CornerModel, mass: number, height: number): number {
  const left = (wheel: number): number => energyBetween(model, 0, wheel) - mass * GRAVITY * (height + wheel)
  const root = findRoot(left, 1e-6, 0.9, 1e-12)
  return root.found ? root.at : Number.NaN
}

/** δ = δst·(1 + √(1 + 2h/δst)), any strength-of-materials text. */
describe('a mass dropped onto a spring', () => {
  it('500 kg from 0.5 m onto 30 N/mm: 0.59951545 m and 17 985.46 N (recomputed)', () => {
    const model = free(30_000)
    const depth = deepest(model, 500, 0.5)
    close(depth, 0.59951545, { abs: 5e-9 })
    close(model.forces(depth, 'fast').total, 17_985.46, { abs: 0.005 })
  })

  it('let go without a fall goes twice as deep as it comes to rest', () => {
    const model = free(30_000)
    const rest = (500 * GRAVITY) / 30_000
    close(deepest(model, 500, 0), 2 * rest, { rel: 1e-10 })
  })

  it('1500 kg at 1.5 m/s stop in 150 mm on two springs of 75 N/mm (V. B. Bhandari, Design of Machine Elements, ex. 10.6)', () => {
    const taken = 2 * energyBetween(free(75_000), 0, 0.15)
    close(taken, (1500 * 1.5 ** 2) / 2, { rel: 1e-12 })
    expect(free(75_000).forces(0.15, 'fast').total).toBe(11_250)
  })
})

/** The same the other way round: the drop whose energy a spring of that travel holds. */
describe('the landing height by energy', () => {
  it('of 500 kg over 0.59951545 m of 30 N/mm is 0.5 m (recomputed)', () =>
    close(energyHeight(free(30_000, 0.59951545, 500)), 0.5, { abs: 1e-7 }))

  it('of 20 kg over 1.79 mm of a bar of 15 mm and 2 m, E 210 GPa, is 150 mm (J. M. Gere, Mechanics of Materials, ex. 2-16, from memory; recomputed)', () => {
    const bar = (210e9 * (Math.PI / 4) * 0.015 ** 2) / 2
    close(energyHeight(free(bar, 1.79e-3, 20)), 0.15, { abs: 1e-3 })
  })

  it('of twice the travel it rests at is nothing', () =>
    close(energyHeight(free(30_000, (2 * 500 * GRAVITY) / 30_000, 500)), 0, { abs: 1e-9 }))
})
