import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { liftingMoment, loadedAxle } from '../../core/loads/axle-in-roll.ts'
import { type Demand, demandOf, NO_DEMAND } from '../../core/loads/demand.ts'
import { setupLoads } from '../../core/loads/ledger.ts'
import { setupModel } from '../../core/loads/setup-model.ts'
import { type Solved, solve } from '../../core/loads/solve.ts'
import type { Axle, Plan } from '../../core/plan/schema.ts'
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

  it('take, with what balance is left, the whole zone; and each alone with what they add together does too', () => {
    fc.assert(
      fc.property(plan, given => {
        for (const axle of setupLoads(given, given.setups[0]!).ledger) {
          const { together, difference, zone, balance, engagement, bump, rows } = axle
          if (together.takes === null) continue
          const left = balance.beforeStop ?? bump - together.to!
          expect(engagement === null).toBe(balance.beforeStop === null)
          expect(Math.abs(together.takes + left - zone)).toBeLessThan(1e-12)
          if (difference === null) continue
          const sum = rows.filter(({ id }) => together.chosen.includes(id)).reduce((all, { takes }) => all + takes!, 0)
          expect(Math.abs(sum + difference + left - zone)).toBeLessThan(1e-12)
        }
      }),
      runs,
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
