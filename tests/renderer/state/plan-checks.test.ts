import { expect, test } from 'vitest'
import { fetchChecks, isPlan, problemsOf, problemsOfEdit } from '../../../renderer/state/plan-checks.ts'
import { aPlan } from '../a-plan.ts'

test('until what checks plans is here, an edit is refused in words; then it is looked at', async () => {
  const before = aPlan()
  const after = { ...before, title: 'Other' }
  expect(problemsOfEdit(before, after)).toEqual([
    { path: '', found: 'a window that is still starting', wanted: 'the same again in a moment' },
  ])
  expect(isPlan(before)).toBe(false)
  await fetchChecks()
  expect(problemsOfEdit(before, after)).toEqual([])
  expect(problemsOfEdit(before, { ...before, title: 'x'.repeat(201) })).toMatchObject([{ path: 'title' }])
  expect(problemsOf({ ...before, units: 'cubit' })).toMatchObject([{ path: 'units', found: '"cubit"' }])
  expect(isPlan(before)).toBe(true)
})
