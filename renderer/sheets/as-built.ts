import type { Axle, Plan } from '../../core/plan/schema.ts'
import { type Row, rows } from './differences.ts'
import { sayer } from './figures.ts'

/** What was measured after the work, SI, by its path inside the axle. */
export type Built = Readonly<Record<string, number>>

/** What can be typed back from a shop sheet: what the plan after the work has a value for. */
export const blanks = (before: Axle, after: Axle): Row[] => rows(before, after).filter(({ after: is }) => is !== null)

/** Arithmetic on a converted fraction leaves this much of a tolerance. */
const EXACT = 1 + 1e-6

/** What was built further from the plan than its tolerance, in sentences. */
export const beyond = (plan: Plan, before: Axle, after: Axle, built: Built): string[] => {
  const say = sayer(plan)
  return blanks(before, after).flatMap(({ path, name, quantity, after: is, tolerance }) => {
    const value = built[path]
    if (value === undefined || is === null || Math.abs(value - is) <= tolerance * EXACT) return []
    const off = say(Math.abs(value - is), quantity)
    const held = tolerance === 0 ? 'no tolerance is given' : `${say(tolerance, quantity)} either way is to be held`
    return [
      `As built, ${name} is ${say(value, quantity)}: ${off} ${value > is ? 'more' : 'less'} than planned, and ${held}.`,
    ]
  })
}

/** The axle as built: what was planned, with what was measured in its place and no longer assumed. */
export function builtAxle(after: Axle, built: Built): Axle {
  const axle = structuredClone(after)
  for (const [path, value] of Object.entries(built)) {
    const keys = path.split('.')
    const last = keys.pop()!
    const holder = keys.reduce<Record<string, unknown>>(
      (inner, key) => inner[key] as Record<string, unknown>,
      axle as unknown as Record<string, unknown>,
    )
    holder[last] = value
  }
  if (axle.assumed !== undefined) axle.assumed = axle.assumed.filter(path => !Object.hasOwn(built, path))
  return axle
}
