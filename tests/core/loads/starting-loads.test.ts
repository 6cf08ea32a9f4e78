import { describe, expect, it } from 'vitest'
import { setupLoads } from '../../../core/loads/ledger.ts'
import { startingLoads } from '../../../core/loads/starting-loads.ts'
import { parsePlan } from '../../../core/plan/parse.ts'
import { plainAxle, plainPlan } from './plain-car.ts'

const axle = (id: 'front' | 'rear') => plainAxle({ id, rate: 30_000, weight: 3500 })
const car = plainPlan([axle('front'), axle('rear')], {})

describe('starting loads', () => {
  it('are two people and gear, half a tank, a hard corner and hard braking, all assumed, on a plan that is still right', () => {
    const loads = startingLoads(car)
    expect(loads.map(({ name, kind, assumed }) => [name, kind, assumed])).toEqual([
      ['Two people and gear', 'payload', true],
      ['Half a tank of fuel', 'payload', true],
      ['Hard corner', 'cornering', true],
      ['Hard braking', 'braking', true],
    ])
    const plan = { ...car, loads }
    expect(parsePlan(plan)).toEqual({ ok: true, plan })
    for (const { takes } of setupLoads(plan, plan.setups[0]!).ledger[0]!.rows) {
      expect(takes).toBeGreaterThanOrEqual(0)
      expect(takes).toBeLessThan(0.1)
    }
  })

  it('do not brake a plan with one axle', () => {
    expect(startingLoads(plainPlan([axle('rear')], {})).map(({ kind }) => kind)).not.toContain('braking')
  })

  it('take ids the plan does not have', () => {
    const once = { ...car, loads: startingLoads(car) }
    const twice = { ...car, loads: [...once.loads, ...startingLoads(once)] }
    const thrice = startingLoads(twice)
    expect(thrice[0]!.id).toBe('two-people-3')
    expect(parsePlan({ ...twice, loads: [...twice.loads, ...thrice] }).ok).toBe(true)
  })
})
