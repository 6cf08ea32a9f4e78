import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { axleBudget } from '../../core/budget/budget.ts'
import type { AxleBudget } from '../../core/budget/results.ts'
import { changeAxle } from '../../core/changes/apply.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import { type OneChange, oneChangeEach } from '../../core/loads/one-change.ts'
import { parsePlan } from '../../core/plan/parse.ts'
import type { Axle, Plan } from '../../core/plan/schema.ts'
import { seed, seedNames } from '../seeds/seed.ts'
import { between } from './arbitrary-linkage.ts'
import { arbitraryPlan } from './arbitrary-plan.ts'

/** The axle with values put in at their paths, and nothing else. */
function withValues(axle: Axle, values: Readonly<Record<string, number>>): Axle {
  const copy = structuredClone(axle) as unknown as Record<string, never>
  for (const [path, value] of Object.entries(values)) {
    const keys = path.split('.')
    const last = keys.pop()!
    Object.assign(
      keys.reduce<Record<string, never>>((inner, key) => inner[key]!, copy),
      { [last]: value },
    )
  }
  return copy as unknown as Axle
}

/** The whole budget of an axle whose ride height is taped anew where its own budget says it rests; null where it does not sit. */
function retaped(axle: Axle, plan: Plan): AxleBudget | null {
  const settled = changeAxle(axle, [{ kind: 'settle' }], () => '')
  return settled.ok ? axleBudget(settled.axle, plan) : null
}

const coiloverShare = (budget: AxleBudget): number => budget.zones.find(({ id }) => id === 'coilover')!.share

/** A change made a little less than asked for, along with all that moves with it. */
const part = (axle: Axle, { field, now, to, along }: OneChange, share: number): Axle => {
  const short: Record<string, number> = { [field]: now + (to! - now) * share }
  for (const [path, value] of Object.entries(along)) {
    const before = path.split('.').reduce<unknown>((inner, key) => (inner as Record<string, unknown>)[key], axle)
    short[path] = (before as number) + (value - (before as number)) * share
  }
  return withValues(axle, short)
}

/** Made in the plan, run through its budget: the share asked for, and not with less. */
function proves(axle: Axle, plan: Plan, share: number, change: OneChange): void {
  const changed = withValues(axle, { [change.field]: change.to!, ...change.along })
  const parsed = parsePlan({ ...plan, setups: [{ id: 'changed', name: '', axles: [changed] }] })
  expect(parsed.ok ? [] : parsed.problems).toEqual([])
  const budget = retaped(changed, plan)!
  expect(coiloverShare(budget)).toBeGreaterThanOrEqual(share - 1e-6)
  expect(Math.abs(coiloverShare(budget) - change.after.share)).toBeLessThan(1e-6)
  // It has come to rest there, and lost none of its bump travel for it. A table's rows are joined anew through the new zero: there only about.
  if (axle.corner.linkage.kind !== 'table') expect(Math.abs(budget.static.position)).toBeLessThan(1e-6)
  expect(cornerModel(changed.corner).bump).toBeGreaterThan(cornerModel(axle.corner).bump - 1e-6)
  if (change.kind === 'preload' && axle.corner.linkage.kind !== 'table') {
    // By the collar alone, as the change of that name does it: the divider's ring stays where it is.
    const turned = changeAxle(axle, [{ kind: 'settle' }, { kind: 'preload', preload: change.to! }], () => '')
    if (turned.ok)
      expect(Math.abs(coiloverShare(axleBudget(turned.axle, plan)) - change.after.share)).toBeLessThan(1e-6)
  }
  if (coiloverShare(budget) < share + 1e-6) return
  // Where more than that comes out, it is a jump: a little less of the change falls short, or does not sit.
  const less = retaped(part(axle, change, 1 - 1e-6), plan)
  expect(less === null || coiloverShare(less) < share).toBe(true)
}

describe('one change of each kind that the diagnosis names', () => {
  it('proves itself in the budget of every demo plan, for its own target and others', () => {
    const proved: Record<string, number> = {}
    for (const name of seedNames) {
      const plan = seed(name)
      for (const axle of plan.setups.flatMap(({ axles }) => axles))
        for (const share of [plan.targets?.coiloverShare ?? 0.4, 0.55, 0.7])
          for (const change of oneChangeEach(axle, share)) {
            if (change.to === null) continue
            proves(axle, plan, share, change)
            proved[change.kind] = (proved[change.kind] ?? 0) + 1
          }
    }
    expect(Object.keys(proved)).toEqual(expect.arrayContaining(['gap', 'preload', 'rate', 'stroke']))
  })

  it('proves itself in the budget of any plan', () => {
    const proved: Record<string, number> = {}
    fc.assert(
      fc.property(arbitraryPlan(), between(0.1, 0.9), (plan, share) => {
        for (const axle of plan.setups[0]!.axles)
          for (const change of oneChangeEach(axle, share)) {
            if (change.to === null) continue
            proves(axle, plan, share, change)
            proved[change.kind] = (proved[change.kind] ?? 0) + 1
          }
      }),
      { numRuns: 40, seed: 11, endOnFailure: true },
    )
    expect(Object.keys(proved)).toEqual(expect.arrayContaining(['charge', 'gap', 'preload', 'rate', 'stroke']))
  })

  it('is not said to be impossible where some value of its kind would do', () => {
    let tried = 0
    const furthest = { gap: 0.3, preload: 0.2, rate: 3, charge: 2e6, stroke: 0.9 }
    fc.assert(
      fc.property(arbitraryPlan(), between(0.1, 0.9), between(0, 1), (plan, share, far) => {
        const [axle] = plan.setups[0]!.axles
        for (const change of oneChangeEach(axle!, share)) {
          if (change.to !== null || (change.kind !== 'gap' && change.kind !== 'charge')) continue
          const to =
            change.kind === 'charge' ? Math.min(2.8e6, change.now + far * furthest.charge) : change.now + far * 0.3
          const changed = withValues(axle!, { [change.field]: to })
          const { bump } = cornerModel(axle!.corner)
          if (cornerModel(changed.corner).bump < bump - 1e-9 || to < change.now) continue
          const budget = retaped(changed, plan)
          tried += 1
          if (budget !== null) expect(coiloverShare(budget)).toBeLessThan(share)
        }
      }),
      { numRuns: 50, seed: 12, endOnFailure: true },
    )
    expect(tried).toBeGreaterThan(20)
  })
})
