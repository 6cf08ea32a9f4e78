import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { liftingMoment, loadedAxle } from '../../core/loads/axle-in-roll.ts'
import { type Demand, demandOf, NO_DEMAND } from '../../core/loads/demand.ts'
import { setupLoads } from '../../core/loads/ledger.ts'
import { setupModel } from '../../core/loads/setup-model.ts'
import { type Solved, solve } from '../../core/loads/solve.ts'
import type { Axle, Load, Plan } from '../../core/plan/schema.ts'
import { off } from '../core/loads/near.ts'
import { between } from './arbitrary-linkage.ts'
import { arbitraryPlan } from './arbitrary-plan.ts'

const GRAVITY = 9.80665
const plan = arbitraryPlan()
const first = (given: Plan) => setupModel(given, given.setups[0]!)
const runs = { numRuns: 60, seed: 7 }

const demand: fc.Arbitrary<Demand> = fc.record({
  masses: fc.record({ front: between(-30, 200), rear: between(-30, 300) }),
  lateral: fc.oneof(between(-8, -0.05), between(0.05, 8)),
  deceleration: between(-6, 6),
  amplitude: fc.constant(0),
})

const possible = (given: Plan, asked: Demand): Demand =>
  given.setups[0]!.axles.length === 2 ? asked : { ...asked, deceleration: 0 }

const wheels = (solved: Solved): number[] =>
  solved.outcome === 'settles' ? solved.axles.map(({ wheel }) => wheel) : [Number.NaN]

/** Where a gap closes for the first time going up, by halving; null where it is closed from the start, or never closes. */
function lookedFor(gap: (wheel: number) => number, from: number, to: number): number | null {
  if (gap(from) <= 0) return null
  const count = Math.ceil((to - from) / 1e-3)
  for (let i = 1; i <= count; i += 1) {
    let [open, closed] = [from + ((to - from) * (i - 1)) / count, from + ((to - from) * i) / count]
    if (gap(closed) > 0) continue
    while (closed - open > 1e-10) {
      const middle = (open + closed) / 2
      if (gap(middle) > 0) open = middle
      else closed = middle
    }
    return closed
  }
  return null
}

describe('loads', () => {
  it('of nothing leave the car at rest', () => {
    fc.assert(
      fc.property(plan, given => {
        const setup = first(given)
        const solved = solve(setup, NO_DEMAND)
        expect(wheels(solved)).toEqual(setup.axles.map(({ rest }) => rest))
        expect(solved.outcome === 'settles' && solved.axles.map(({ used }) => used)).toEqual(setup.axles.map(() => 0))
      }),
      runs,
    )
  })

  it('of no size take nothing, each alone and together, and leave all there is', () => {
    const nothing: Load[] = [
      { id: 'crew', name: '', kind: 'payload', masses: { front: 0, rear: 0 } },
      { id: 'turn', name: '', kind: 'cornering', lateral: 0 },
      { id: 'brake', name: '', kind: 'braking', deceleration: 0 },
      { id: 'bump', name: '', kind: 'terrain', amplitude: 0 },
    ]
    fc.assert(
      fc.property(plan, given => {
        const { ledger } = setupLoads({ ...given, loads: nothing }, given.setups[0]!)
        for (const { rows, together, balance, engagement, zone } of ledger) {
          expect([...rows, together].map(({ takes }) => takes)).toEqual(Array(rows.length + 1).fill(0))
          if (engagement !== null) expect(balance.beforeStop).toBe(zone)
        }
      }),
      runs,
    )
  })

  it('of payload never raise a corner as they grow', () => {
    fc.assert(
      fc.property(plan, between(-200, 900), between(0, 300), (given, mass, more) => {
        const setup = first(given)
        const at = (kilograms: number) =>
          wheels(solve(setup, { ...NO_DEMAND, masses: { front: kilograms, rear: kilograms } }))
        const [less, heavier] = [at(mass), at(mass + more)]
        expect(heavier.filter((wheel, i) => wheel < less[i]! - 1e-11)).toEqual([])
      }),
      runs,
    )
  })

  it('leave what can be measured: from where they put the car, the balance is the way to the touch, and to full bump', () => {
    let measured = 0
    fc.assert(
      fc.property(plan, given => {
        const setup = given.setups[0]!
        const found = setupLoads(given, setup)
        for (const { id, together, zone, balance, from, rows, difference } of found.ledger) {
          if (together.to === null) continue
          const { axle, model } = first(given).axles.find(each => each.axle.id === id)!
          // On a solid axle in roll shock and wheel stand elsewhere than the stop, and may come to their end sooner.
          const toBump = model.bump - together.to
          if (axle.suspension === 'independent') expect(Math.abs(balance.beforeBump! - toBump)).toBeLessThan(1e-9)
          else expect(balance.beforeBump!).toBeLessThan(toBump + 1e-9)
          const touch = lookedFor(wheel => model.parts(wheel).stopGap ?? 1, model.droop, model.bump)
          if (touch === null) continue
          measured += 1
          expect(Math.abs(together.to + balance.beforeStop! - touch)).toBeLessThan(1e-6)
          // Rows, what they add together, and what is left cover the zone from rest to that touch.
          expect(Math.abs(from + zone - touch)).toBeLessThan(1e-6)
          if (difference === null) continue
          const alone = together.chosen.map(load => rows.find(row => row.id === load)!.takes!)
          const spent = alone.reduce((sum, takes) => sum + takes, 0) + difference
          expect(Math.abs(from + spent + balance.beforeStop! - touch)).toBeLessThan(1e-6)
        }
      }),
      runs,
    )
    expect(measured).toBeGreaterThan(20)
  })

  it('stand in their rows as each would alone', () => {
    fc.assert(
      fc.property(plan, given => {
        const setup = given.setups[0]!
        for (const { id, rows } of setupLoads(given, setup).ledger)
          for (const row of rows) {
            const alone = setupLoads({ ...given, loads: given.loads.filter(load => load.id === row.id) }, setup)
            const { together } = alone.ledger.find(axle => axle.id === id)!
            if (together.chosen.length === 1) expect(row.to).toBe(together.to)
          }
      }),
      { ...runs, numRuns: 30 },
    )
  })

  it('mirror: a turn to the other side rolls the other way and moves the outer wheels alike', () => {
    fc.assert(
      fc.property(plan, demand, (given, asked) => {
        const setup = first(given)
        const left = solve(setup, possible(given, asked))
        const right = solve(setup, possible(given, { ...asked, lateral: -asked.lateral }))
        expect(wheels(right)).toEqual(wheels(left))
        if (left.outcome === 'settles' && right.outcome === 'settles') expect(right.roll + left.roll).toBe(0)
      }),
      runs,
    )
  })

  it('pitch nothing when front and rear are alike', () => {
    fc.assert(
      fc.property(plan, between(0, 300), between(0, 6), (given, mass, lateral) => {
        const axle: Axle = given.setups[0]!.axles[0]!
        const twins: Axle[] = [
          { ...axle, id: 'front' },
          { ...axle, id: 'rear' },
        ]
        const setup = first({ ...given, setups: [{ id: 'twins', name: '', axles: twins }] })
        const solved = solve(setup, { ...NO_DEMAND, masses: { front: mass, rear: mass }, lateral })
        if (solved.outcome !== 'settles') return
        const [front, rear] = solved.axles.map(({ state }) => state.outer.wheel + state.inner.wheel)
        expect(front).toBe(rear)
      }),
      runs,
    )
  })

  it('balance: every axle carries its weight and the moments meet to 1e-9, steps and ends of the travel included', () => {
    let [rolling, onGround] = [0, 0]
    fc.assert(
      fc.property(plan, demand, (given, asked) => {
        const setup = first(given)
        const loads = possible(given, asked)
        const solved = solve(setup, loads)
        if (solved.outcome !== 'settles' || solved.roll === 0) return
        rolling += 1
        const { cgHeight, rollAxisHeight } = given.vehicle
        const height = cgHeight - rollAxisHeight
        const sprung = setup.axles.reduce(
          (sum, { axle }) => sum + 2 * (axle.corner.cornerMass - axle.corner.unsprungMass) + loads.masses[axle.id],
          0,
        )
        const lean = height > 0 ? Math.abs(solved.roll) : -Math.abs(solved.roll)
        const asks = Math.abs(sprung * height * (Math.abs(loads.lateral) + GRAVITY * lean))
        const resisted = solved.axles.reduce((sum, { state }) => sum + state.moment, 0)
        expect(Math.abs(resisted - asks)).toBeLessThan(1e-9 * Math.max(1, asks))
        for (const [i, { state, weight }] of solved.axles.entries()) {
          const { axle, model } = setup.axles[i]!
          if (weight + axle.corner.unsprungMass * GRAVITY > 0)
            expect(Math.abs(state.lift - 2 * weight)).toBeLessThan(1e-6)
          const loaded = loadedAxle(axle, model, weight, 0)
          if (state.lifted) {
            expect(off(state.moment, liftingMoment(loaded))).toBeLessThan(1e-9)
            continue
          }
          onGround += 1
          const { outer, inner } = state
          if (outer.end !== 0 || inner.end !== 0) continue
          const solid = axle.suspension === 'solid'
          const shockArm = (solid ? axle.shockSpacing! : axle.track) / 2
          const stopArm = (solid ? axle.stopSpacing! : axle.track) / 2
          const moment =
            (outer.springs + outer.gas - inner.springs - inner.gas) * shockArm +
            (outer.stop - inner.stop) * stopArm +
            axle.antiRollRate * Math.abs(solved.roll)
          expect(Math.abs(moment - state.moment)).toBeLessThan(1e-9 * Math.max(1, asks))
          for (const side of [outer, inner]) {
            expect(Math.abs(side.springs - model.forces(side.atShock, 'slow').springs)).toBeLessThan(1e-4)
            const step = [
              model.forces(side.atStop - 1e-11, 'slow', 'below').stop,
              model.forces(side.atStop + 1e-11, 'slow').stop,
            ]
            expect(side.stop).toBeGreaterThan(Math.min(...step) - 1e-3)
            expect(side.stop).toBeLessThan(Math.max(...step) + 1e-3)
          }
        }
      }),
      { ...runs, numRuns: 150 },
    )
    expect(rolling).toBeGreaterThan(50)
    expect(onGround).toBeGreaterThan(50)
  })

  it('of terrain lift the wheel by what they ask for, as far as the travel goes', () => {
    fc.assert(
      fc.property(plan, between(0, 0.4), (given, amplitude) => {
        const setup = first(given)
        const solved = solve(setup, demandOf([{ id: 'bump', name: '', kind: 'terrain', amplitude }]))
        const wanted = setup.axles.map(({ rest, model }) => Math.min(model.bump, rest + amplitude))
        expect(wheels(solved).filter((wheel, i) => Math.abs(wheel - wanted[i]!) > 2e-9)).toEqual([])
      }),
      runs,
    )
  })
})
