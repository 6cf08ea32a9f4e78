import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { planBudget } from '../../core/budget/budget.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { arbitraryPlan } from './arbitrary-plan.ts'
import { extremePlan } from './extreme.ts'

/** Paths of the numbers in a result that are none, or endless. */
function endless(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} ${value}`]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) => endless(inner, `${path}.${key}`))
}

/** All a corner can be asked, at both ends, at ride height, at every kink and between. */
function answers(plan: Plan): unknown {
  return plan.setups
    .flatMap(setup => setup.axles)
    .map(({ corner }) => {
      const model = cornerModel(corner)
      const { droop, bump, kinks, engagement } = model
      const between = Array.from({ length: 9 }, (_, i) => droop + ((bump - droop) * (i + 1)) / 10)
      return [droop, 0, bump, ...kinks, ...between, ...(engagement === null ? [] : [engagement])].map(wheel => ({
        linkage: model.linkage.at(wheel),
        slow: [model.forces(wheel, 'slow', 'below'), model.forces(wheel, 'slow', 'above'), model.energy(wheel, 'slow')],
        fast: [model.forces(wheel, 'fast', 'below'), model.forces(wheel, 'fast', 'above'), model.energy(wheel, 'fast')],
        rates: [
          model.wheelRate(wheel, 'slow'),
          model.wheelRate(wheel, 'fast', 'below'),
          model.wheelRate(wheel, 'fast', 'above'),
        ],
        stop: model.stopForce(wheel, 'fast'),
        parts: model.parts(wheel),
      }))
    })
}

describe('a plan that makes sense has a budget of numbers', () => {
  it('whatever it is', () => {
    fc.assert(
      fc.property(arbitraryPlan(), plan => {
        expect(endless(planBudget(plan))).toEqual([])
        expect(endless(answers(plan))).toEqual([])
      }),
      { numRuns: 100, seed: 51 },
    )
  })

  it('however large or small its numbers are', () => {
    let taken = 0
    fc.assert(
      fc.property(extremePlan(arbitraryPlan()), plan => {
        if (plan === null) return
        taken += 1
        expect(endless(planBudget(plan))).toEqual([])
        expect(endless(answers(plan))).toEqual([])
      }),
      { numRuns: 600, seed: 52 },
    )
    expect(taken).toBeGreaterThan(100)
  }, 20_000)
})
