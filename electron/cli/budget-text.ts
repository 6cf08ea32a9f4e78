import { axleBudget } from '../../core/budget/budget.ts'
import type { AxleBudget } from '../../core/budget/results.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import type { Plan } from '../../core/plan/schema.ts'
import { axleText } from './axle-text.ts'
import { changeText } from './change-text.ts'
import { AXLE_NAMES, planTitle, setupName } from './names.ts'
import { paragraph, underlined } from './paragraph.ts'

/** A setup with what is told of each of its axles. */
interface PageOfSetup {
  readonly name: string
  readonly axles: readonly { readonly budget: AxleBudget; readonly text: string }[]
}

/** How a setup differs from the first, axle by axle. */
function changes(first: PageOfSetup, setup: PageOfSetup, system: Plan['units']): string {
  const of = ({ axles }: PageOfSetup, id: AxleBudget['id']) => axles.find(({ budget }) => budget.id === id)?.budget
  const told = (['front', 'rear'] as const).flatMap(id => {
    const [before, after] = [of(first, id), of(setup, id)]
    if (before === undefined && after === undefined) return []
    const text =
      before === undefined
        ? paragraph(`Not in “${first.name}”.`, '  ')
        : after === undefined
          ? paragraph(`Not in “${setup.name}”.`, '  ')
          : changeText(before, after, system)
    return [`${AXLE_NAMES[id]}\n${text}`]
  })
  return `${underlined(`From “${first.name}” to “${setup.name}”`, '═')}\n${told.join('\n')}`
}

/** A setup axle by axle; an axle that reads as in the first setup is not told twice. */
function setupText(setup: PageOfSetup, first: PageOfSetup): string {
  const axles = setup.axles.map(({ budget, text }) => {
    const told = setup !== first && first.axles.some(axle => axle.budget.id === budget.id && axle.text === text)
    const heading = `${AXLE_NAMES[budget.id]}, one wheel`
    return told ? paragraph(`${heading}: as in “${first.name}”.`) : `${heading}\n\n${text}`
  })
  return `${underlined(setup.name, '═')}\n${axles.join('\n')}`
}

/** The budget of a plan for people: every setup and axle, in the plan's own units, then what changes from the first setup to each other. */
export function budgetText(plan: Plan): string {
  const setups: PageOfSetup[] = plan.setups.map(setup => ({
    name: setupName(setup),
    axles: setup.axles.map(axle => {
      const model = cornerModel(axle.corner)
      const budget = axleBudget(axle, plan, model)
      return { budget, text: axleText(budget, model, plan.units) }
    }),
  }))
  const first = setups[0]!
  return [
    paragraph(planTitle(plan)) +
      paragraph('Positions are wheel travel from ride height. Gas is given slow and fast: the truth lies between.'),
    ...setups.map(setup => setupText(setup, first)),
    ...setups.slice(1).map(setup => changes(first, setup, plan.units)),
  ].join('\n')
}
