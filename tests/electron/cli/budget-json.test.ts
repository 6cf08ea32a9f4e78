import { describe, expect, it } from 'vitest'
import { planBudget } from '../../../core/budget/budget.ts'
import { budgetJson } from '../../../electron/cli/budget-json.ts'
import { seed, seedNames } from '../../seeds/seed.ts'

/** The shape other programs count on: keys in order, nothing more. */
const KEYS = {
  id: true,
  travel: { bump: true, droop: true, total: true, bumpLimitedBy: true, droopLimitedBy: true },
  limits: true,
  engagement: { wheel: true, shock: true, share: true, force: true },
  zones: [{ id: true, from: true, to: true, length: true, share: true, energy: true }],
  crossover: true,
  mainSpring: { leftAtRide: true, leftAtEngagement: true, leftAtBump: true },
  shockLeftAtBump: true,
  static: { position: true, springForce: true, stopForce: true, rideForce: true, sprungWeight: true },
  ride: { motionRatio: true, wheelRate: true, frequency: true },
  bump: { forceSlow: true, forceFast: true, stopForceFast: true },
  findings: [{ id: true, severity: true, message: true, values: true }],
}

/** What is in `value` where `shape` looks, and where the two differ in keys. */
function differences(value: unknown, shape: unknown, at: string): string[] {
  if (shape === true || value === null) return value === undefined ? [`${at} is missing`] : []
  if (Array.isArray(shape)) {
    if (!Array.isArray(value)) return [`${at} is no list`]
    return value.flatMap((item, i) => differences(item, shape[0], `${at}[${i}]`))
  }
  const [keys, wanted] = [Object.keys(value as object), Object.keys(shape as object)]
  if (keys.join() !== wanted.join()) return [`${at} has ${keys.join()} instead of ${wanted.join()}`]
  return wanted.flatMap(key =>
    differences((value as Record<string, unknown>)[key], (shape as Record<string, unknown>)[key], `${at}.${key}`),
  )
}

describe('the budget for programs', () => {
  it.each(seedNames)('%s has the keys of the contract, in order, and no others', name => {
    const json = JSON.parse(JSON.stringify(budgetJson(seed(name)))) as ReturnType<typeof budgetJson>
    expect(Object.keys(json)).toEqual(['setups'])
    expect(json.setups.map(setup => Object.keys(setup))).toEqual(json.setups.map(() => ['id', 'axles']))
    expect(
      json.setups.flatMap(({ id, axles }) => axles.flatMap(axle => differences(axle, KEYS, `${id}.${axle.id}`))),
    ).toEqual([])
  })

  it('notices a key too many and a key too few', () => {
    expect(differences({ a: 1, b: 2 }, { a: true }, 'x')).toEqual(['x has a,b instead of a'])
    expect(differences({}, { a: true }, 'x')).toEqual(['x has  instead of a'])
  })

  it.each(seedNames)('%s has the numbers of the budget, every digit', name => {
    const plan = seed(name)
    expect(planBudget(plan)).toMatchObject(JSON.parse(JSON.stringify(budgetJson(plan))))
  })
})
