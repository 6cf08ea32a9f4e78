import { expect, it } from 'vitest'
import { axleBudget } from '../../../core/budget/budget.ts'
import { FIGURES, figuresOf, readFigures } from '../../../core/tolerance/figures.ts'
import { seed } from '../../seeds/seed.ts'

const demos = ['before-and-after.stopgap', 'new-chassis.stopgap', 'on-its-stops.stopgap'].map(seed)

/** What stands at a path of a budget, zones by their id; NaN where there is none. */
function at(budget: unknown, path: string): number {
  const found = path.split('.').reduce((value: unknown, key): unknown => {
    if (Array.isArray(value)) return value.find(({ id }) => id === key)
    return (value as Record<string, unknown> | null | undefined)?.[key]
  }, budget)
  return typeof found === 'number' ? found : Number.NaN
}

it('figures of trials are those of the budget, each by its path there', () => {
  const budgets = demos.flatMap(plan =>
    plan.setups.flatMap(({ axles }) =>
      axles.flatMap(axle =>
        [axle, { ...axle, corner: { ...axle.corner, stop: null } }].map(each => axleBudget(each, plan)),
      ),
    ),
  )
  expect(budgets.some(({ engagement }) => engagement === null)).toBe(true)
  expect(new Set(FIGURES.map(({ id }) => id)).size).toBe(FIGURES.length)
  for (const budget of budgets) {
    const wanted = FIGURES.map(({ id }) =>
      id === 'beforeStop' ? (budget.engagement?.wheel ?? Number.NaN) - budget.static.position : at(budget, id),
    )
    expect([...figuresOf(budget)]).toEqual(wanted)
  }
})

it('reads them where it is told to', () => {
  const [plan] = demos
  const budget = axleBudget(plan!.setups[0]!.axles[0]!, plan!)
  const rows = new Float64Array(2 * FIGURES.length)
  readFigures(budget, rows, FIGURES.length)
  expect([...rows.subarray(FIGURES.length)]).toEqual([...figuresOf(budget)])
  expect(rows.subarray(0, FIGURES.length).every(value => value === 0)).toBe(true)
  const everyOther = new Float64Array(2 * FIGURES.length)
  readFigures(budget, everyOther, 1, 2)
  expect([...everyOther].filter((_, i) => i % 2 === 1)).toEqual([...figuresOf(budget)])
  expect(everyOther.every((value, i) => i % 2 === 1 || value === 0)).toBe(true)
})
