import { wholePlan } from './whole-plan.ts'

type Branch = Record<string | number, unknown>

/** The plan with one value replaced at a path such as `setups[0].axles[1].id`; undefined takes the key away. */
export function withValue(path: string, value: unknown): unknown {
  const plan: unknown = wholePlan()
  const keys = path.split(/[.[\]]+/).filter(key => key !== '')
  const holder = keys.slice(0, -1).reduce((inner, key) => (inner as Branch)[key], plan) as Branch
  const last = keys.at(-1)!
  if (value === undefined) delete holder[last]
  else holder[last] = value
  return plan
}
