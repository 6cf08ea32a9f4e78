import fc from 'fast-check'
import { parsePlan } from '../../core/plan/parse.ts'
import type { Plan } from '../../core/plan/schema.ts'

type Branch = Record<string | number, unknown>

/** Every number of a value, as the branch that holds it and its key there. */
function numbers(value: unknown): [Branch, string][] {
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, inner]) =>
    typeof inner === 'number' ? [[value as Branch, key] satisfies [Branch, string]] : numbers(inner),
  )
}

/** From the least length a plan file takes to its largest force, evenly over the powers of ten; nothing, and a hair either side of it. */
const extreme = fc.oneof(
  fc.double({ min: -9, max: 9, noNaN: true }).map(power => 10 ** power),
  fc.double({ min: -9, max: 1, noNaN: true }).map(power => -(10 ** power)),
  fc.constantFrom(0, 1e-5, 1e-300, 20, 1e8, 2e8),
)

const change = fc.record({
  place: fc.nat(),
  value: extreme,
  /** Half the time the number is stretched instead, so that more of them still make sense. */
  factor: fc.option(fc.constantFrom(1e-4, 0.01, 0.1, 10, 100, 1e4)),
})

/** Plans that parsePlan takes although up to four of their numbers were made as large or small as a file may have them; null when it does not. */
export const extremePlan = (from: fc.Arbitrary<Plan>): fc.Arbitrary<Plan | null> =>
  fc.tuple(from, fc.array(change, { minLength: 1, maxLength: 4 })).map(([drawn, changes]) => {
    const copy = structuredClone(drawn)
    const all = numbers(copy.setups)
    for (const { place, value, factor } of changes) {
      const [branch, key] = all[place % all.length]!
      branch[key] = factor === null ? value : (branch[key] as number) * factor
    }
    const read = parsePlan(copy)
    return read.ok ? read.plan : null
  })
