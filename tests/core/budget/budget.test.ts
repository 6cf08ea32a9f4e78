import { describe, expect, it } from 'vitest'
import { axleBudget, planBudget } from '../../../core/budget/budget.ts'
import type { AxleBudget } from '../../../core/budget/results.ts'
import type { Corner } from '../../../core/plan/schema.ts'
import { ATMOSPHERE, GRAVITY, INCH, POUND, POUND_FORCE, PSI } from '../../../core/units/constants.ts'
import { close } from '../../close.ts'
import { LB_IN, plainCorner, plainStop } from '../plain-corner.ts'
import { wholePlan } from '../plan/whole-plan.ts'

const budget = (other: Partial<Corner> = {}): AxleBudget =>
  axleBudget(
    { id: 'front', suspension: 'independent', track: 1.5, antiRollRate: 0, corner: plainCorner(other) },
    { units: 'inch' },
  )
const sprung = (pounds: number) => ({ cornerMass: (pounds + 100) * POUND, unsprungMass: 100 * POUND })
const EXACT = { rel: 1e-10, abs: 1e-12 }

/** Every number of a result against those worked out by hand; texts and nulls must be the same. */
function matches(found: unknown, wanted: unknown, path = 'budget'): void {
  if (typeof wanted === 'number') close(found as number, wanted, { rel: 1e-9, abs: 1e-9 }, path)
  else if (typeof wanted !== 'object' || wanted === null) expect(found, path).toBe(wanted)
  else {
    expect(Object.keys(found as object).sort(), path).toEqual(Object.keys(wanted).sort())
    for (const [key, value] of Object.entries(wanted))
      matches((found as Record<string, unknown>)[key], value, `${path}.${key}`)
  }
}

describe('the budget of a corner anybody can follow', () => {
  it('is what a pencil makes of it: 200 lb/in, 6 in of shaft showing, a stop without gas pressure 2 in off its pad', () => {
    // An elastomer that is a straight line of 1000 lb/in over 4 in, so that every figure is a product of round numbers.
    const foam = {
      kind: 'elastomer' as const,
      gap: 2 * INCH,
      curve: [
        { deflection: 0, force: 0 },
        { deflection: 4 * INCH, force: 4000 * POUND_FORCE },
      ],
    }
    const { findings: _, ...figures } = budget({
      ...sprung(1200),
      stop: foam,
      clearance: { bump: 5 * INCH, droop: null },
    })
    const inchPounds = INCH * POUND_FORCE
    const zone = (id: string, from: number, to: number, share: number, energy: number) => ({
      id,
      from: from * INCH,
      to: to * INCH,
      length: (to - from) * INCH,
      share,
      energy: energy * inchPounds,
    })
    const mass = 1200 * POUND
    const hertz = (rate: number) => Math.sqrt((rate * LB_IN) / mass) / (2 * Math.PI)
    matches(figures, {
      id: 'front',
      travel: {
        bump: 5 * INCH,
        droop: 6 * INCH,
        total: 11 * INCH,
        bumpLimitedBy: 'chassis contact',
        droopLimitedBy: 'shock extended',
      },
      limits: {
        'stop closed': 6 * INCH,
        'shock closed': 6 * INCH,
        'coil bind': 10 * INCH,
        'chassis contact': 5 * INCH,
      },
      engagement: { wheel: 2 * INCH, shock: 2 * INCH, share: 0.4, force: 1600 * POUND_FORCE },
      zones: [
        zone('droop', -6, 0, 0, (200 * 6 ** 2) / 2),
        zone('coilover', 0, 2, 0.4, (200 * (8 ** 2 - 6 ** 2)) / 2),
        zone('engagement', 2, 5, 0.6, (200 * (11 ** 2 - 8 ** 2)) / 2 + (1000 * 3 ** 2) / 2),
      ],
      crossover: null,
      mainSpring: { leftAtRide: 10 * INCH, leftAtEngagement: 8 * INCH, leftAtBump: 5 * INCH },
      shockLeftAtBump: INCH,
      static: {
        position: 0,
        springForce: 1200 * POUND_FORCE,
        stopForce: 0,
        rideForce: 1200 * POUND_FORCE,
        sprungWeight: 1200 * POUND_FORCE,
      },
      ride: {
        motionRatio: 1,
        wheelRate: 200 * LB_IN,
        frequency: hertz(200),
        frequencyOnTire: hertz((200 * 1200) / 1400),
        frequencyPastEngagement: hertz(1200),
      },
      bump: {
        forceSlow: (2200 + 3000) * POUND_FORCE,
        forceFast: (2200 + 3000) * POUND_FORCE,
        stopForceFast: 3000 * POUND_FORCE,
      },
    })
  })
})

describe('engagement at or below ride height', () => {
  it('leaves the coilover nothing, and still says where it was', () => {
    const { engagement, zones } = budget({ stop: plainStop({ gap: -INCH }) })
    close(engagement?.wheel ?? Number.NaN, -INCH, EXACT)
    close(engagement?.shock ?? Number.NaN, -INCH, EXACT)
    expect(engagement?.share).toBe(0)
    // The force is at the touch itself, below ride height: 5 in of 200 lb/in.
    close(engagement?.force ?? Number.NaN, 1000 * POUND_FORCE, EXACT)
    expect(zones[1]).toEqual({ id: 'coilover', from: 0, to: 0, length: 0, share: 0, energy: 0 })
    expect(zones[2]!.share).toBe(1)
  })

  it('below full droop, has its force at full droop and no frequency just past it', () => {
    const { engagement, travel, ride } = budget({
      stop: plainStop({ gap: -3 * INCH }),
      clearance: { bump: null, droop: 2 * INCH },
    })
    expect(engagement?.wheel).toBeLessThan(-travel.droop)
    expect(ride.frequencyPastEngagement).toBe(null)
    // There the springs are 4 in compressed and the stop an inch pushed in, its gas down to four fifths.
    const atmosphere = ATMOSPHERE / PSI
    const stop = Math.PI * ((200 + atmosphere) * (5 / 4) - atmosphere)
    close(engagement?.force ?? Number.NaN, (800 + stop) * POUND_FORCE, EXACT)
  })
})

describe('a car parked on the step', () => {
  it('gives its stop what the springs leave over, and rests at the touch', () => {
    const found = budget({ ...sprung(1800), stop: plainStop() }).static
    close(found.position, 2 * INCH, EXACT)
    close(found.springForce, 1600 * POUND_FORCE, EXACT)
    close(found.stopForce, 200 * POUND_FORCE, { rel: 1e-8 })
    close(found.sprungWeight, 1800 * POUND_FORCE, EXACT)
  })

  it('just touching at ride height carries between nothing and all of the charge', () => {
    const full = 200 * Math.PI
    const carried = (pounds: number) => budget({ ...sprung(pounds), stop: plainStop({ gap: 0 }) }).static
    close(carried(1300).stopForce, 100 * POUND_FORCE, { rel: 1e-8 })
    expect(carried(1300).position).toBe(0)
    close(carried(1200 + full - 1).stopForce, (full - 1) * POUND_FORCE, { rel: 1e-8 })
    expect(carried(1100).stopForce).toBe(0)
    close(carried(1100).position, -0.5 * INCH, EXACT)
  })
})

describe('a corner without bump', () => {
  it('has shares of nothing, and a main spring and shock as they stand', () => {
    const { zones, travel, engagement, shockLeftAtBump } = budget({
      shock: { ...plainCorner().shock, showing: 0 },
      stop: plainStop({ gap: INCH }),
    })
    expect([travel.bump, engagement, shockLeftAtBump]).toEqual([0, null, 0])
    expect(zones.map(({ share, length }) => [share, length])).toEqual([
      [0, 12 * INCH],
      [0, 0],
      [0, 0],
    ])
  })
})

describe('a plan', () => {
  it('has one budget an axle, in the order of the plan', () => {
    const plan = wholePlan()
    const { setups } = planBudget(plan)
    expect(setups.map(({ id, axles }) => [id, axles.map(axle => axle.id)])).toEqual([
      ['found', ['front', 'rear']],
      ['proposed', ['rear']],
    ])
    const axle = plan.setups[1]!.axles[0]!
    expect(setups[1]!.axles[0]).toEqual(axleBudget(axle, plan))
    expect(JSON.parse(JSON.stringify(setups))).toEqual(setups)
    close(setups[0]!.axles[0]!.static.sprungWeight, 300 * GRAVITY, EXACT)
  })
})
