import { readJson } from './json-text.ts'
import { migrate } from './migrate.ts'
import type { Plan } from './schema.ts'

/** The text of a plan's file. `readPlan(formatPlan(plan))` gives the plan back. */
export const formatPlan = (plan: Plan): string => `${JSON.stringify(plan, null, 2)}\n`

/**
 * The plan in a text that `readPlan` has accepted, of whatever version, without all that is needed to look at it again.
 * @throws Error for a text that is not JSON or no plan; what else is wrong with one that was never accepted is not seen.
 */
export function acceptedPlan(text: string): Plan {
  const read = readJson(text, 'a plan saved by Stopgap')
  const current = read.ok ? migrate(read.value) : read
  if (current.ok) return current.plan as Plan
  const { path, found, wanted } = current.problem
  throw new Error(`A plan that was accepted has ${found} at “${path}”; right would be ${wanted}.`)
}
