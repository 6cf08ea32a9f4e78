import { describe, expect, it } from 'vitest'
import { demandOf } from '../../../core/loads/demand.ts'
import { setupModel } from '../../../core/loads/setup-model.ts'
import { solve } from '../../../core/loads/solve.ts'
import type { Axle, Corner, Load, Vehicle } from '../../../core/plan/schema.ts'
import { off } from './near.ts'
import { bumpOf, carry, plainAxle, plainPlan, stopHard, turn } from './plain-car.ts'

const GRAVITY = 9.80665
const ATMOSPHERE = 101_325
const area = (Math.PI / 4) * 0.04 ** 2
/** A stop whose first touch is a step of 2 kN, or as many newtons as said. */
const stepping = (gap: number, step = 2000): Corner['stop'] => ({
  kind: 'hydraulic',
  stroke: 0.07,
  gap,
  shaftDiameter: 0.04,
  charge: step / area,
  gasVolume: area * 0.2,
})

function solved(axles: Axle[], vehicle: Partial<Vehicle>, ...loads: Load[]) {
  const plan = plainPlan(axles, vehicle, loads)
  return solve(setupModel(plan, plan.setups[0]!), demandOf(loads))
}

function settled(axles: Axle[], vehicle: Partial<Vehicle>, ...loads: Load[]) {
  const found = solved(axles, vehicle, ...loads)
  if (found.outcome !== 'settles') throw new Error(found.outcome)
  return found
}

describe('loads on one setup', () => {
  it('park the wheel on the step while the stop carries part of what it gives at the touch', () => {
    const axle = plainAxle({ rate: 30_000, weight: 3000, stop: stepping(0.02) })
    const [loaded] = settled([axle], {}, carry({ front: 300 })).axles
    expect(loaded!.wheel).toBe(loaded!.atStop)
    expect(loaded!.wheel).toBeCloseTo(0.02, 12)
    expect(loaded!.beforeStop).toBe(0)
    // What the payload brings less what the springs take over the gap.
    expect(off(loaded!.state.outer.stop, 150 * GRAVITY - 0.02 * 30_000)).toBeLessThan(1e-9)
  })

  it('let the step carry what a turn asks for, and only then go past it', () => {
    const stop = stepping(0.02, 600)
    const axle = plainAxle({ rate: 30_000, weight: 3000, track: 1.6, stop })
    const vehicle = { cgHeight: 0.7, rollAxisHeight: 0.2 }
    const gentle = settled([axle], vehicle, turn(3.5))
    const { outer, inner } = gentle.axles[0]!.state
    expect(gentle.axles[0]!.beforeStop).toBe(0)
    expect(outer.stop).toBeGreaterThan(100)
    expect(outer.stop).toBeLessThan(590)
    expect(off(outer.springs + outer.stop + inner.springs, 6000)).toBeLessThan(1e-12)
    const hard = settled([axle], vehicle, turn(8))
    expect(hard.axles[0]!.beforeStop).toBeLessThan(-1e-4)
    expect(hard.axles[0]!.state.outer.stop).toBeGreaterThan(600)
    // Slow gas past the touch (isothermal): A·((p₀ + patm)·V₀/(V₀ − A·x) − patm).
    const pushed = -hard.axles[0]!.beforeStop!
    const force = area * (((600 / area + ATMOSPHERE) * 0.2) / (0.2 - pushed) - ATMOSPHERE)
    expect(off(hard.axles[0]!.state.outer.stop, force)).toBeLessThan(1e-9)
  })

  it('on a solid axle move shocks and stops by their own arms', () => {
    const stop = stepping(0.03)
    const axle = plainAxle({
      suspension: 'solid',
      track: 1.6,
      shockSpacing: 1,
      stopSpacing: 0.6,
      rate: 30_000,
      weight: 3000,
      stop,
    })
    const { roll, axles } = settled([axle], {}, turn(1.5))
    expect(off(axles[0]!.wheel, roll * 0.8)).toBeLessThan(1e-9)
    expect(off(axles[0]!.atStop, roll * 0.3)).toBeLessThan(1e-9)
    expect(off(axles[0]!.state.outer.atShock, roll * 0.5)).toBeLessThan(1e-9)
    // The stop, nearer the middle, is met later than the wheel passes its engagement.
    expect(off(axles[0]!.beforeStop!, 0.03 - roll * 0.3)).toBeLessThan(1e-9)
    const { outer, inner } = axles[0]!.state
    const mass = (2 * 3000) / GRAVITY
    expect(off((outer.springs - inner.springs) * 0.5, mass * 0.5 * (1.5 + GRAVITY * roll))).toBeLessThan(1e-9)
  })

  it('stop at full bump, where something solid carries the rest', () => {
    const axle = plainAxle({ rate: 30_000, weight: 3000, clearance: { bump: 0.05, droop: 0.2 } })
    const [loaded] = settled([axle], {}, carry({ front: 1000 })).axles
    expect(loaded!.wheel).toBe(0.05)
    expect(loaded!.beforeBump).toBe(0)
    expect(off(loaded!.state.outer.end, 500 * GRAVITY - 0.05 * 30_000)).toBeLessThan(1e-9)
  })

  it('lift the inner wheel of a stiff axle and leave the rest of the roll to the other', () => {
    const stiff = { rate: 200_000, clearance: { bump: null, droop: 0.01 } }
    const front = plainAxle({ id: 'front', weight: 3000, unsprungMass: 20, track: 1.4, ...stiff })
    const rear = plainAxle({ id: 'rear', rate: 20_000, weight: 3000, unsprungMass: 20, track: 1.4 })
    const { axles, roll } = settled([front, rear], { cgHeight: 0.9, rollAxisHeight: 0.1 }, turn(6))
    expect(axles.map(({ state }) => state.lifted)).toEqual([true, false])
    expect(off(axles[0]!.state.moment, (3000 + 20 * GRAVITY) * 1.4)).toBeLessThan(1e-9)
    expect(axles[1]!.wheel).toBeGreaterThan(roll * 0.69)
  })

  it('roll over, as an outcome and not a number, when no angle below 20° balances the turn', () => {
    const axle = plainAxle({ rate: 30_000, weight: 3000, track: 1.4 })
    expect(solved([axle], { cgHeight: 1.2, rollAxisHeight: 0 }, turn(9))).toEqual({ outcome: 'rolls over' })
    // Too soft to hold itself up, however little it is turned.
    const soft = plainAxle({ rate: 3000, weight: 3000, track: 1.4 })
    expect(solved([soft], { cgHeight: 0.8, rollAxisHeight: 0 }, turn(0.5))).toEqual({ outcome: 'rolls over' })
  })

  it('lean into the turn when the roll axis is above the center of gravity', () => {
    const axle = plainAxle({ rate: 30_000, weight: 3000, track: 1.4 })
    const { roll, axles } = settled([axle], { cgHeight: 0.4, rollAxisHeight: 0.7 }, turn(4))
    expect(roll).toBeLessThan(0)
    expect(axles[0]!.used).toBeLessThan(0)
    const stiffness = 2 * 30_000 * 0.7 ** 2
    const mass = 6000 / GRAVITY
    expect(off(roll, (-mass * 0.3 * 4) / (stiffness + mass * 0.3 * GRAVITY))).toBeLessThan(1e-9)
  })

  it('cannot brake a plan with one axle', () => {
    expect(solved([plainAxle({ rate: 30_000, weight: 3000 })], {}, stopHard(5))).toEqual({ outcome: 'needs two axles' })
  })

  it('add terrain after everything else, and no further than full bump', () => {
    const axle = plainAxle({ rate: 30_000, weight: 3000, clearance: { bump: 0.1, droop: 0.2 } })
    const sunk = (50 * GRAVITY) / 30_000
    const near = settled([axle], {}, carry({ front: 100 }), bumpOf(0.05)).axles[0]!
    expect(off(near.wheel, sunk + 0.05)).toBeLessThan(1e-9)
    expect(off(near.beforeBump, 0.1 - sunk - 0.05)).toBeLessThan(1e-9)
    const far = settled([axle], {}, carry({ front: 100 }), bumpOf(0.5)).axles[0]!
    expect([far.wheel, far.beforeBump]).toEqual([0.1, 0])
  })

  it('are solved together: braking and payload change what cornering finds', () => {
    const axles = [
      plainAxle({ id: 'front', rate: 30_000, weight: 3000, stop: stepping(0.02) }),
      plainAxle({ id: 'rear', rate: 25_000, weight: 2500 }),
    ]
    const wheel = (...loads: Load[]) => settled(axles, {}, ...loads).axles[0]!.wheel
    const alone = wheel(turn(4)) + wheel(stopHard(5)) + wheel(carry({ front: 60 }))
    expect(Math.abs(wheel(turn(4), stopHard(5), carry({ front: 60 })) - alone)).toBeGreaterThan(0.005)
  })
})
