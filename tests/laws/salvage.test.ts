import fc from 'fast-check'
import { expect, it } from 'vitest'
import { formatPlan } from '../../core/plan/file-text.ts'
import { measurementPaths } from '../../core/plan/measurements.ts'
import { readPlan } from '../../core/plan/parse.ts'
import { salvage } from '../../core/plan/salvage.ts'
import { salvageWords } from '../../core/plan/salvage-words.ts'
import type { Axle, Plan } from '../../core/plan/schema.ts'
import { arbitraryPlan } from './arbitrary-plan.ts'

const texts = fc.sample(arbitraryPlan(), { numRuns: 40, seed: 23 }).map(plan => ({ plan, text: formatPlan(plan) }))
const stock = fc.constantFrom(...texts)

const valueAt = (axle: Axle, path: string): unknown =>
  path.split('.').reduce<unknown>((inner, key) => (inner as Record<string, unknown> | undefined)?.[key], axle)

/** Measurements that differ from those of the plan without being marked. */
const untrue = (found: Plan, plan: Plan): string[] =>
  found.setups.flatMap((setup, i) =>
    setup.axles.flatMap((axle, j) =>
      measurementPaths(axle)
        .filter(path => axle.assumed?.includes(path) !== true)
        .filter(path => {
          const was = plan.setups[i]?.axles[j]
          return was === undefined || JSON.stringify(valueAt(axle, path)) !== JSON.stringify(valueAt(was, path))
        })
        .map(path => `${i} ${j} ${path}`),
    ),
  )

it('of a plan cut at any byte gives a plan in which whatever is not marked as assumed is as it was, or nothing', () => {
  let read = 0
  fc.assert(
    fc.property(stock, fc.integer({ min: 0, max: 9999 }), ({ plan, text }, share) => {
      const bytes = Buffer.from(text)
      const cut = bytes.subarray(0, Math.floor((share / 10_000) * bytes.byteLength)).toString()
      const found = salvage(cut)
      if (found === null) return
      read += 1
      expect(readPlan(formatPlan(found.plan)).ok).toBe(true)
      expect(untrue(found.plan, plan)).toEqual([])
      expect(salvageWords(found).join('')).toMatch(/\S/)
    }),
    { numRuns: 150, seed: 29 },
  )
  expect(read).toBeGreaterThan(50)
})

it('of a plan with bits turned over gives a plan that can be used, or nothing, and never throws', () => {
  let read = 0
  const flips = fc.array(fc.tuple(fc.nat(), fc.nat(7)), { minLength: 1, maxLength: 6 })
  fc.assert(
    fc.property(stock, flips, ({ text }, turned) => {
      const bytes = Buffer.from(text)
      for (const [at, bit] of turned) bytes[at % bytes.byteLength]! ^= 1 << bit
      const damaged = new TextDecoder().decode(bytes)
      const found = salvage(damaged)
      if (found === null) return
      read += 1
      expect(readPlan(damaged).ok).toBe(false)
      expect(readPlan(formatPlan(found.plan)).ok).toBe(true)
    }),
    { numRuns: 150, seed: 31 },
  )
  expect(read).toBeGreaterThan(50)
})
