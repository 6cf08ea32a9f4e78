import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { planBudget } from '../../core/budget/budget.ts'
import type { AxleBudget } from '../../core/budget/results.ts'
import { readPlan } from '../../core/plan/parse.ts'
import type { Plan } from '../../core/plan/schema.ts'

export const seedFolder = path.join(import.meta.dirname, '../../seeds')

/** File names of the demo plans, in the order the window offers them. */
export const seedNames = readdirSync(seedFolder)
  .filter(name => name.endsWith('.stopgap'))
  .sort()

export const seedText = (name: string): string => readFileSync(path.join(seedFolder, name), 'utf8')

/** A demo plan; throws with its problems when it is none. */
export function seed(name: string): Plan {
  const read = readPlan(seedText(name))
  if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read.problems)}`)
  return read.plan
}

/** The budget of one axle of a demo plan. */
export function seedBudget(plan: Plan, setup: string, axle: 'front' | 'rear'): AxleBudget {
  const found = planBudget(plan)
    .setups.find(({ id }) => id === setup)
    ?.axles.find(({ id }) => id === axle)
  if (found === undefined) throw new Error(`no ${axle} axle in a setup ${setup}`)
  return found
}
