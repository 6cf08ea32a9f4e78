import { describe, expect, it } from 'vitest'
import { setupLoads } from '../../../core/loads/ledger.ts'
import type { Axle, Load } from '../../../core/plan/schema.ts'
import { bumpOf, carry, plainAxle, plainPlan, stopHard, turn } from './plain-car.ts'

const stop = {
  kind: 'elastomer' as const,
  gap: 0.08,
  curve: [
    { deflection: 0, force: 0 },
    { deflection: 0.05, force: 9000 },
  ],
}
const axles = (...ids: Axle['id'][]) => ids.map(id => plainAxle({ id, rate: 30_000, weight: 3000, stop }))
const ledgerOf = (ids: Axle['id'][], loads: Load[], chosen?: string[]) => {
  const plan = plainPlan(axles(...ids), {}, loads)
  return setupLoads(plan, plan.setups[0]!, chosen)
}

describe('the ledger', () => {
  it('has a row a load, one for all together, and the balance before the stop and before full bump', () => {
    const { ledger } = ledgerOf(
      ['front', 'rear'],
      [{ ...carry({ front: 60, rear: 120 }), assumed: true }, bumpOf(0.03)],
    )
    const [front, rear] = ledger
    const rounded = (value: number | null) => value && Math.round(value * 1e6) / 1e6
    expect(front!.rows.map(({ id, label, assumed, takes }) => [id, label, assumed, rounded(takes)])).toEqual([
      ['carry', 'Payload', true, 0.009807],
      ['bump', 'Terrain', false, 0.03],
    ])
    expect(rounded(front!.together.takes)).toBe(0.039807)
    expect(rounded(front!.balance.beforeStop)).toBe(0.040193)
    expect(rounded(front!.balance.beforeBump)).toBe(rounded(front!.bump - front!.together.to!))
    expect(rounded(rear!.together.takes)).toBe(0.049613)
    expect(front!.together).toMatchObject({ assumed: true, chosen: ['carry', 'bump'], leftOut: [], outcome: 'settles' })
  })

  it('counts only the chosen loads together, and none as nothing', () => {
    const loads = [carry({ front: 60 }), bumpOf(0.03)]
    expect(ledgerOf(['front'], loads, ['bump']).ledger[0]!.together.chosen).toEqual(['bump'])
    const none = ledgerOf(['front'], loads, []).ledger[0]!
    expect([none.together.takes, none.balance.beforeStop]).toEqual([0, none.zone])
  })

  it('leaves out, by name, what a plan with one axle cannot do', () => {
    const { ledger, loads } = ledgerOf(['front'], [stopHard(5), bumpOf(0.03)])
    expect(loads.map(({ solved }) => solved.outcome)).toEqual(['needs two axles', 'settles'])
    expect(ledger[0]!.rows[0]).toMatchObject({ to: null, takes: null, outcome: 'needs two axles' })
    expect(ledger[0]!.together).toMatchObject({ chosen: ['bump'], leftOut: ['brake'], outcome: 'settles' })
    expect(ledger[0]!.together.takes).toBeCloseTo(0.03, 12)
  })

  it('has no balance for a car that rolls over', () => {
    const [front] = ledgerOf(['front'], [turn(40)]).ledger
    expect(front!.together).toMatchObject({ to: null, takes: null, outcome: 'rolls over' })
    expect(front!.balance).toEqual({ beforeStop: null, beforeBump: null })
    expect(front!.difference).toBeNull()
  })

  it('tells loads of one kind apart by name where there is more than one', () => {
    const loads = [
      { ...bumpOf(0.03), id: 'a', name: 'Washboard' },
      { ...bumpOf(0.05), id: 'b', name: 'Ruts' },
      { ...turn(3), name: 'Hard corner' },
    ]
    const { rows } = ledgerOf(['front'], loads).ledger[0]!
    expect(rows.map(({ label, shortLabel }) => [label, shortLabel])).toEqual([
      ['Washboard', 'Washboard'],
      ['Ruts', 'Ruts'],
      ['Hard corner', 'Corner'],
    ])
  })
})
