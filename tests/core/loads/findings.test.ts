import { describe, expect, it } from 'vitest'
import { loadFindings } from '../../../core/loads/findings.ts'
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

function found(loads: Load[], other: Partial<Axle> = {}) {
  const plan = plainPlan([{ ...plainAxle({ rate: 30_000, weight: 3000, stop }), ...other }], {}, loads)
  return loadFindings(plan, setupLoads(plan, plan.setups[0]!))
}

const said = (loads: Load[]) => found(loads).map(({ id, severity, message }) => [id, severity, message])

describe('findings of the loads', () => {
  it('say nothing while there is room', () => expect(said([bumpOf(0.03)])).toEqual([]))

  it('say what little is left, and who took the rest', () => {
    expect(said([{ ...bumpOf(0.06), name: 'Washboard' }])).toEqual([
      ['loads-leave-little', 'caution', 'With “Washboard”, 20.0 mm is left before the front stop.'],
    ])
    expect(said([bumpOf(0.05), { ...carry({ front: 60 }), name: 'Tools' }])).toEqual([
      ['loads-leave-little', 'caution', 'With “Terrain” and “Tools” together, 20.2 mm is left before the front stop.'],
    ])
  })

  it('count loads that are too many to name, all of them or some', () => {
    const loads = [bumpOf(0.1), carry({ front: 60 }), turn(1)]
    expect(said(loads).map(([, , message]) => message)).toEqual([expect.stringMatching(/^With all 3 loads together, /)])
    const plan = plainPlan([plainAxle({ rate: 30_000, weight: 3000, stop })], {}, [...loads, stopHard(1)])
    const some = setupLoads(
      plan,
      plan.setups[0]!,
      loads.map(({ id }) => id),
    )
    expect(loadFindings(plan, some).map(({ message }) => message)).toContainEqual(
      expect.stringMatching(/^With the 3 loads counted, together, /),
    )
  })

  it('say that the stop is reached, and that full bump is', () => {
    expect(said([bumpOf(0.1)])).toEqual([
      ['loads-reach-stop', 'caution', 'With “Terrain”, the front uses 100.0 mm; its stop is met after 80.0 mm.'],
    ])
    expect(said([carry({ front: 3000 })])).toEqual([
      [
        'loads-reach-full-bump',
        'danger',
        'With “Payload”, the outer front wheel is at full bump, with 1,810 N on whatever ends it.',
      ],
    ])
  })

  it('say once that it rolls over, alone or together', () => {
    expect(said([turn(60)])).toEqual([
      ['rolls-over-turn', 'danger', 'With “Corner”, it finds no balance below 20° of roll: it rolls over.'],
    ])
    const both = found([turn(60), bumpOf(0.01)])
    expect(both.map(({ id, load }) => [id, load])).toEqual([
      ['rolls-over-turn', 'turn'],
      ['rolls-over', null],
    ])
  })

  it('say that braking needs another axle', () => {
    expect(found([stopHard(4)]).map(({ id, severity, load }) => [id, severity, load])).toEqual([
      ['braking-needs-two-axles-brake', 'note', 'brake'],
    ])
  })
})
