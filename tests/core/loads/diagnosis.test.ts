import { describe, expect, it } from 'vitest'
import { changesHead, changeWords, type Diagnosis, diagnose } from '../../../core/loads/diagnosis.ts'
import { setupLoads } from '../../../core/loads/ledger.ts'
import type { Axle, Corner, Load, Plan } from '../../../core/plan/schema.ts'
import { sayIn } from '../../../core/units/saying.ts'
import { close } from '../../close.ts'
import { carry, plainAxle, plainPlan, stopHard, turn } from './plain-car.ts'

const GRAVITY = 9.80665

const elastomer = (gap: number): Corner['stop'] => ({
  kind: 'elastomer',
  gap,
  curve: [
    { deflection: 0, force: 0 },
    { deflection: 0.4, force: 160_000 },
  ],
})

/** Bump ends 0.2 m up, so that shares are round. */
const ends = { bump: 0.2, droop: 0.2 }

function diagnosed(axle: Axle, loads: Load[] = [], share?: number): { found: Diagnosis | null; plan: Plan } {
  const plan = plainPlan([axle], {}, loads)
  return { found: diagnose(plan, setupLoads(plan, plan.setups[0]!), axle.id, share), plan }
}

describe('the diagnosis', () => {
  it('has nothing to say of a car well clear of its stop', () => {
    expect(diagnosed(plainAxle({ rate: 30_000, weight: 3000, stop: elastomer(0.1), clearance: ends })).found).toBeNull()
  })

  it('lists what put it there, the largest first, each in wheel travel', () => {
    const axle = plainAxle({ rate: 30_000, weight: 3000, stop: elastomer(0.06), clearance: ends })
    // 1000 N heavier than the springs were set for: 33.3 mm of sag.
    const heavy: Axle = { ...axle, corner: { ...axle.corner, cornerMass: 4000 / GRAVITY } }
    const { found } = diagnosed(heavy, [carry({ front: 40 }), turn(2)], 0.5)
    expect(found!.causes.map(({ id }) => id)).toEqual(['why-gap', 'why-sag', 'why-cornering-turn', 'why-payload-carry'])
    const [gap, sag, corner, payload] = found!.causes.map(({ size }) => size)
    close(gap!, 0.5 * 0.2 - 0.06, { rel: 1e-9 })
    close(sag!, 1000 / 30_000, { rel: 1e-9 })
    expect(corner!).toBeGreaterThan(0.01)
    close(payload!, (20 * GRAVITY) / 30_000, { rel: 1e-9 })
    expect(found!.causes[1]!.message).toBe(
      'It sags 33.3 mm below the taped ride height, where the springs hold 1,000 N too little.',
    )
  })

  it('finds springs too weak behind a stop that holds the car up, and says how it rides', () => {
    const axle = plainAxle({ rate: 30_000, weight: 3000, stop: elastomer(-0.01), clearance: ends })
    const heavy: Axle = { ...axle, corner: { ...axle.corner, cornerMass: 9000 / GRAVITY } }
    const { found } = diagnosed(heavy)
    const weak = found!.causes.find(({ id }) => id === 'why-springs')!
    // Without the stop it would sink 6000 N / 30 kN/m from ride height: full bump. At the touch, 10 mm lower, they lack 6300 N.
    close(weak.size, 0.2 + 0.01, { rel: 1e-9 })
    expect(weak.message).toContain('the springs carry 6,300 N too little, and nothing but the stop holds it up')
    expect(found!.feel[0]).toContain('Small bumps are as harsh as large ones')
  })

  it('says what shock gas carries, and how far the car drops without it', () => {
    const axle = plainAxle({ rate: 30_000, weight: 3000, stop: elastomer(0.02), clearance: ends })
    const area = (Math.PI / 4) * 0.02 ** 2
    const gas = { charge: 300 / area, volume: 1 }
    const gassed: Axle = { ...axle, corner: { ...axle.corner, shock: { ...axle.corner.shock, gas } } }
    const { found } = diagnosed({ ...gassed, corner: { ...gassed.corner, cornerMass: 3300 / GRAVITY } })
    const cause = found!.causes.find(({ id }) => id === 'why-gas')!
    close(cause.size, 300 / 30_000, { rel: 0.02 })
    expect(cause.message).toContain('9 % of the weight')
  })

  it('says what the driver feels: a knock at the touch, and what each load that reaches the stop does', () => {
    const area = (Math.PI / 4) * 0.04 ** 2
    // At the touch it gives 600 N at once, a fifth of the weight.
    const stop = {
      kind: 'hydraulic' as const,
      stroke: 0.07,
      gap: 0.02,
      shaftDiameter: 0.04,
      charge: 600 / area,
      gasVolume: area * 0.2,
    }
    const both = (['front', 'rear'] as const).map(id =>
      plainAxle({ id, rate: 30_000, weight: 3000, stop, clearance: ends }),
    )
    const felt = (id: Axle['id'], ...loads: Load[]): string => {
      const plan = plainPlan(both, { cgHeight: 0.9, rollAxisHeight: 0.1 }, loads)
      return diagnose(plan, setupLoads(plan, plan.setups[0]!), id)!.feel.join(' ')
    }
    const calm = felt('front')
    expect(calm).toMatch(
      /^Every bump over 20\.0 mm meets the stop \(30\.0 N\/mm against \d\d\.\d N\/mm\): soft at first, then suddenly hard\./,
    )
    expect(calm).toContain('It meets the stop with a knock: 600 N at once, 20 % of the weight.')
    const [turned, braked, loaded] = [/In a turn/, /Under braking/, /rides on its stops all day/]
    for (const wording of [turned, braked, loaded]) expect(calm).not.toMatch(wording)
    expect(felt('front', turn(4))).toContain('the front pushes wide')
    expect(felt('rear', turn(4))).toContain('the rear steps out')
    expect(felt('front', stopHard(7))).toMatch(braked)
    expect(felt('rear', stopHard(7))).not.toMatch(braked)
    expect(felt('rear', carry({ rear: 200 }))).toMatch(loaded)
    expect(felt('front', carry({ rear: 200 }))).not.toMatch(loaded)
  })

  it('gives changes by hand: a gap of half the travel, the preload that makes up for the sag', () => {
    const axle = plainAxle({ rate: 30_000, weight: 3000, stop: elastomer(0.05), clearance: ends })
    const { found, plan } = diagnosed(axle, [carry({ front: 300 })], 0.5)
    const change = (kind: string) => found!.changes.find(each => each.kind === kind)!
    close(change('gap').to!, 0.1, { rel: 1e-6 })
    // Half of what is left from a rest r is on the coilover when 0.05 − r = (0.2 − r)/2: r = −0.1, and 0.1 m of preload does it.
    close(change('preload').to! - axle.corner.springs.preload, 0.1, { rel: 1e-6 })
    close(change('preload').after.rest, -0.1, { rel: 1e-6 })
    const say = sayIn(plan.units)
    expect(changesHead(found!, say)).toContain('puts 50 % of the travel on the coilover')
    expect(changeWords(change('gap'), found!.now.rest, say)).toBe('50.0 mm to 100.0 mm.')
    expect(changeWords(change('preload'), found!.now.rest, say)).toContain(', then sits 100.0 mm higher.')
  })

  it('says when no change of a kind is enough', () => {
    const axle = plainAxle({
      rate: 30_000,
      weight: 3000,
      stop: elastomer(0.01),
      clearance: { bump: 0.2, droop: 0.005 },
    })
    const { found, plan } = diagnosed(axle, [], 0.9)
    const preload = found!.changes.find(({ kind }) => kind === 'preload')!
    expect(preload.to).toBeNull()
    expect(changeWords(preload, found!.now.rest, sayIn(plan.units))).toBe('alone cannot.')
  })
})
