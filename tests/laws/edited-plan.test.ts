import { isDeepStrictEqual } from 'node:util'
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { parsePlan, problemsOfEdit } from '../../core/plan/parse.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { arbitraryPlan } from './arbitrary-plan.ts'
import { mutated } from './mutated.ts'

type Branch = Record<string, unknown>

/** `after`, with everything that is as it was before taken from there, as an edit leaves it. */
function sharing(before: unknown, after: unknown): unknown {
  if (isDeepStrictEqual(before, after)) return before
  if (typeof after !== 'object' || after === null || typeof before !== 'object' || before === null) return after
  const inside = (key: string): unknown => sharing((before as Branch)[key], (after as Branch)[key])
  if (Array.isArray(after)) return Array.from(after, (_, i) => inside(String(i)))
  const made = {}
  for (const key of Object.keys(after))
    Object.defineProperty(made, key, { value: inside(key), enumerable: true, configurable: true, writable: true })
  return Object.getPrototypeOf(after) === Object.prototype ? made : after
}

const stock = fc.constantFrom(...fc.sample(arbitraryPlan(), { numRuns: 40, seed: 21 }))

it('an edit is told the same of what it changed as if the whole plan were looked at', () => {
  const seen = { right: 0, wrong: 0 }
  fc.assert(
    fc.property(
      stock.chain(before => mutated(fc.constant(before)).map(after => ({ before, after: sharing(before, after) }))),
      ({ before, after }) => {
        const whole = parsePlan(after)
        seen[whole.ok ? 'right' : 'wrong'] += 1
        expect(problemsOfEdit(before, after as Plan)).toEqual(whole.ok ? [] : whole.problems)
      },
    ),
    { numRuns: 2000, seed: 22 },
  )
  expect(Math.min(seen.right, seen.wrong)).toBeGreaterThan(100)
})
