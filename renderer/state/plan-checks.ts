import type { Problem } from '../../core/plan/problem.ts'
import type { Plan } from '../../core/plan/schema.ts'

type Checks = typeof import('../../core/plan/parse.ts')

let here: Checks | null = null

/**
 * Fetches what checks a plan: large, and no part of the first picture, whose plan the host has checked. It comes with the fields, before
 * which there is nothing to check; who brings a plan from elsewhere waits for it.
 */
export async function fetchChecks(): Promise<void> {
  here ??= await import('../../core/plan/parse.ts')
}

/** What is wrong with a plan made by an edit, see core/plan/parse.ts. */
export const problemsOfEdit = (before: Plan, after: Plan): readonly Problem[] =>
  here === null ? STARTING : here.problemsOfEdit(before, after)

/** What is wrong with what may be a plan. */
export function problemsOf(value: unknown): readonly Problem[] {
  if (here === null) return STARTING
  const parsed = here.parsePlan(value)
  return parsed.ok ? [] : parsed.problems
}

export const isPlan = (value: unknown): boolean => problemsOf(value).length === 0

const STARTING: readonly Problem[] = [
  { path: '', found: 'a window that is still starting', wanted: 'the same again in a moment' },
]
