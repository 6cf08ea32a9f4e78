import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { axleBudget } from '../../core/budget/budget.ts'
import { parsePlan } from '../../core/plan/parse.ts'
import type { Axle, Plan } from '../../core/plan/schema.ts'
import { carMeasuredOf } from '../../core/tolerance/car-measured.ts'
import { ledgerSureness } from '../../core/tolerance/ledger-sureness.ts'
import { measuredOf } from '../../core/tolerance/measured.ts'
import { BLOCK, deviationsOf } from '../../core/tolerance/monte-carlo.ts'
import { surenessOf } from '../../core/tolerance/sureness.ts'
import { trialAxle } from '../../core/tolerance/trial-axle.ts'
import { trialsOf, tryBlock } from '../../core/tolerance/trials.ts'
import { arbitraryPlan } from './arbitrary-plan.ts'

const runs = { numRuns: 12, seed: 5 }
const firstAxle = (plan: Plan): Axle => plan.setups[0]!.axles[0]!

/** The plan with one tolerance for every measurement of its first axle. */
const withTolerance = (plan: Plan, halfWidth: number): Plan => {
  const axle = firstAxle(plan)
  const paths = measuredOf(axle).map(({ path }) => `${axle.id}.${path}`)
  return { ...plan, tolerances: { version: 1, values: Object.fromEntries(paths.map(path => [path, halfWidth])) } }
}

describe('how sure a budget is', () => {
  it('has no width with no tolerance, and every finding for certain', () => {
    fc.assert(
      fc.property(arbitraryPlan(), given => {
        const plan = withTolerance(given, 0)
        const axle = firstAxle(plan)
        const trials = trialsOf(plan, axle)
        const { figures, findings } = surenessOf(trials, [tryBlock(trials, 0)])
        for (const { value, low, high, firstOrder, why } of figures) {
          expect([low, high]).toEqual([value, value])
          expect(firstOrder).toEqual({ low: value, high: value })
          expect(why).toBeNull()
        }
        const { findings: nominal } = axleBudget(axle, plan)
        expect(findings.map(({ id }) => id).sort()).toEqual(nominal.map(({ id }) => id).sort())
        expect(findings.every(({ chance }) => chance === 1)).toBe(true)
      }),
      runs,
    )
  })

  it('has a ledger of no width with no tolerance of the car, its axles or its loads', () => {
    let bands = 0
    fc.assert(
      fc.property(arbitraryPlan(), given => {
        const plan: Plan = {
          ...given,
          loads: [
            { id: 'crew', name: '', kind: 'payload', masses: { front: 40 } },
            { id: 'turn', name: '', kind: 'cornering', lateral: 2 },
            { id: 'bump', name: '', kind: 'terrain', amplitude: 0.01 },
          ],
        }
        const setup = plan.setups[0]!
        const paths = [
          ...setup.axles.flatMap(axle => measuredOf(axle).map(({ path }) => `${axle.id}.${path}`)),
          ...carMeasuredOf(plan, setup).map(({ path }) => path),
        ]
        const values = Object.fromEntries(paths.map(path => [path, 0]))
        const exact: Plan = { ...plan, tolerances: { version: 1, values } }
        for (const { bands: found, ranking } of ledgerSureness(exact, setup, undefined, { trials: BLOCK })) {
          expect(ranking).toEqual([])
          for (const { value, low, high } of found) {
            expect([low, high]).toEqual([value, value])
            bands += 1
          }
        }
      }),
      { ...runs, numRuns: 4 },
    )
    expect(bands).toBeGreaterThan(0)
  })

  it('only ever tries axles a plan file may hold', () => {
    let tried = 0
    fc.assert(
      fc.property(arbitraryPlan(), given => {
        const axle = firstAxle(given)
        const doubtful: Axle = { ...axle, assumed: measuredOf(axle).map(({ path }) => path) }
        const trial = trialAxle(doubtful, measuredOf(doubtful))
        const columns = trial.variables.map(variable => deviationsOf(variable, 3, 0))
        for (let number = 0; number < 20; number += 1) {
          const put = trial.put(columns.map(column => column[number]!))
          const { assumed: _, ...rest } = structuredClone(put) as Axle
          const parsed = parsePlan({ ...given, setups: [{ id: 'trial', name: '', axles: [rest] }] })
          // A trial may lose what ends its travel within reach; the corner then ends at the end of the search.
          const problems = parsed.ok
            ? []
            : parsed.problems.filter(({ found }) => !found.startsWith('nothing that ends'))
          expect(problems).toEqual([])
          tried += 1
        }
      }),
      runs,
    )
    expect(tried).toBe(12 * 20)
  })

  it('gives the same blocks the same trials, in whatever order they are done', () => {
    fc.assert(
      fc.property(arbitraryPlan(), fc.nat(1000), (plan, seed) => {
        const trials = trialsOf(plan, firstAxle(plan), seed)
        const [a, b] = [tryBlock(trials, 4), tryBlock(trials, 1)]
        const again = [tryBlock(trialsOf(plan, firstAxle(plan), seed), 1), tryBlock(trials, 4)]
        expect([b, a]).toEqual(again)
        expect(surenessOf(trials, [a, b])).toEqual(surenessOf(trials, [b, a]))
      }),
      { ...runs, numRuns: 6 },
    )
  })

  it('keeps bands in order, chances between 0 and 1, and the kinds of trials whole', () => {
    fc.assert(
      fc.property(arbitraryPlan(), plan => {
        const trials = trialsOf(plan, firstAxle(plan))
        const { figures, findings, regimes } = surenessOf(trials, [tryBlock(trials, 0)])
        for (const { low, high, present } of figures) {
          expect(low).toBeLessThanOrEqual(high)
          expect(present).toBeGreaterThan(0)
          expect(present).toBeLessThanOrEqual(1)
        }
        for (const { chance } of findings) expect(chance > 0 && chance <= 1).toBe(true)
        for (const { chances } of regimes) {
          const whole = chances.reduce((sum, { chance }) => sum + Math.round(chance * BLOCK), 0)
          expect(whole).toBe(BLOCK)
        }
      }),
      runs,
    )
  })
})
