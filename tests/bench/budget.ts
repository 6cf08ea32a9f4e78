import { planBudget } from '../../core/budget/budget.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import { wholePlan } from '../core/plan/whole-plan.ts'
import type { Benchmark } from './benchmark.ts'
import { timed } from './stopwatch.ts'

const whole = wholePlan()
/** Two setups of two axles: an arm with a hydraulic stop, and a table with an elastomer one. */
const plan = { ...whole, setups: [whole.setups[0]!, { ...whole.setups[0]!, id: 'proposed' }] }
const models = plan.setups.flatMap(setup => setup.axles.map(axle => cornerModel(axle.corner)))

/** Energy the crude way: the force at every millimetre of travel, corners ready made, added up. */
function addedUp(): number {
  let sum = 0
  for (const model of models)
    for (let wheel = model.droop; wheel < model.bump; wheel += 1e-3) sum += model.forces(wheel, 'fast').total * 1e-3
  return sum
}

/** The whole way from a plan to its budgets: limits, touch, kinks, rest, energy, findings. */
export const budgets: readonly Benchmark[] = [
  {
    name: 'budget of two setups of two axles',
    reference: 'their force added up at every millimetre',
    budget: 6,
    measure: () => timed(() => planBudget(plan), addedUp),
  },
]
