import { axleBudget } from '../../core/budget/budget.ts'
import type { AxleBudget } from '../../core/budget/results.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { axleText } from './axle-text.ts'
import { changeText } from './change-text.ts'
import { paragraph, underlined } from './paragraph.ts'

const AXLES = { front: 'Front axle', rear: 'Rear axle' } as const

/** How a setup differs from the first, axle by axle. */
function changes(baseline: readonly AxleBudget[], axles: readonly AxleBudget[], system: Plan['units']): string {
  const compared = axles.map(after => {
    const before = baseline.find(({ id }) => id === after.id)
    const text = before === undefined ? '  Not in the first setup.\n' : changeText(before, after, system)
    return `${AXLES[after.id]}\n${text}`
  })
  const gone = baseline
    .filter(({ id }) => !axles.some(axle => axle.id === id))
    .map(({ id }) => `${AXLES[id]}\n  Not in this setup.\n`)
  return [...compared, ...gone].join('\n')
}

/** The budget of a plan for people: every setup and axle, in the plan's own units, then what changes from the first setup to each other. */
export function budgetText(plan: Plan): string {
  const setups = plan.setups.map(setup => ({
    name: setup.name,
    axles: setup.axles.map(axle => {
      const model = cornerModel(axle.corner)
      return { budget: axleBudget(axle, plan, model), model }
    }),
  }))
  const [first, ...others] = setups
  const budgets = (of: (typeof setups)[number]) => of.axles.map(({ budget }) => budget)
  const blocks = [
    paragraph(plan.title) +
      paragraph('Positions are wheel travel from ride height. Gas is given slow and fast: the truth lies between.'),
    ...setups.map(
      ({ name, axles }) =>
        `${underlined(name, '═')}\n${axles
          .map(({ budget, model }) => `${AXLES[budget.id]}, one wheel\n\n${axleText(budget, model, plan.units)}`)
          .join('\n')}`,
    ),
    ...others.map(
      other =>
        `${underlined(`From “${first!.name}” to “${other.name}”`, '═')}\n${changes(budgets(first!), budgets(other), plan.units)}`,
    ),
  ]
  return blocks.join('\n')
}
