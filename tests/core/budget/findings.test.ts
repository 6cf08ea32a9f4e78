import { describe, expect, it } from 'vitest'
import type { Finding } from '../../../core/budget/results.ts'
import type { Axle, Corner } from '../../../core/plan/schema.ts'
import { INCH, POUND, PSI } from '../../../core/units/constants.ts'
import { LB_IN, plainCorner, plainStop } from '../plain-corner.ts'
import { found } from './found.ts'

const ids = (corner: Partial<Corner>, axle?: Partial<Axle>): string[] => found(corner, axle).map(({ id }) => id)
const one = (id: string, corner: Partial<Corner>, axle?: Partial<Axle>): Finding | undefined =>
  found(corner, axle).find(finding => finding.id === id)

const shock = (showing: number, stroke = 12) => ({
  ...plainCorner().shock,
  stroke: stroke * INCH,
  showing: showing * INCH,
})
const stop = (gap: number, stroke: number, other = {}) =>
  plainStop({ gap: gap * INCH, stroke: stroke * INCH, ...other })
const springs = (freeLength: number, preload = 0) => ({
  ...plainCorner().springs,
  springs: [{ name: 'main', rate: 200 * LB_IN, freeLength: freeLength * INCH, solidLength: 4 * INCH }],
  preload: preload * INCH,
})
const clearance = (bump: number | null) => ({ bump: bump === null ? null : bump * INCH, droop: null })

/** Each rule on both sides of where it begins: quiet first, then what it says. */
const RULES: readonly {
  id: string
  severity: Finding['severity']
  quiet: Partial<Corner>
  speaks: Partial<Corner>
  value: string
  is: number
}[] = [
  {
    id: 'shock-closes-first',
    severity: 'danger',
    quiet: { stop: stop(3, 2.4) },
    speaks: { stop: stop(3, 3.5) },
    value: 'bump',
    is: 6 * INCH,
  },
  {
    id: 'shock-nearly-closes',
    severity: 'caution',
    quiet: { stop: stop(3, 2.45) },
    speaks: { stop: stop(3, 2.6) },
    value: 'shockLeft',
    is: 0.4 * INCH,
  },
  {
    id: 'coil-binds-first',
    severity: 'danger',
    quiet: { springs: springs(16) },
    speaks: { springs: springs(15.5), clearance: clearance(5.8) },
    value: 'bump',
    is: 5.5 * INCH,
  },
  {
    id: 'coil-nearly-binds',
    severity: 'caution',
    quiet: { springs: springs(15.5), clearance: clearance(5) },
    speaks: { springs: springs(15.2), clearance: clearance(5) },
    value: 'mainLeft',
    is: 0.2 * INCH,
  },
  {
    id: 'stop-open-at-contact',
    severity: 'danger',
    quiet: { stop: stop(3, 2), clearance: clearance(5) },
    speaks: { stop: stop(3, 2), clearance: clearance(4.5) },
    value: 'stopLeft',
    is: 0.5 * INCH,
  },
  {
    id: 'stop-never-met',
    severity: 'danger',
    quiet: { stop: stop(4.9, 1), clearance: clearance(5) },
    speaks: { stop: stop(5.5, 1), clearance: clearance(5) },
    value: 'gapLeft',
    is: 0.5 * INCH,
  },
  {
    id: 'little-coilover-travel',
    severity: 'caution',
    quiet: { stop: stop(2, 3) },
    speaks: { stop: stop(1, 4) },
    value: 'share',
    is: 0.2,
  },
  {
    id: 'rides-on-stop',
    severity: 'caution',
    quiet: { stop: stop(0.1, 4) },
    speaks: { stop: stop(-0.1, 4) },
    value: 'engagement',
    is: -0.1 * INCH,
  },
  {
    id: 'springs-loose-at-droop',
    severity: 'caution',
    quiet: { springs: springs(20, 0) },
    speaks: { springs: springs(20, -1) },
    value: 'slack',
    is: INCH,
  },
  {
    id: 'off-ride-height',
    severity: 'note',
    quiet: {},
    speaks: { cornerMass: 1340 * POUND },
    value: 'position',
    is: 0.2 * INCH,
  },
  {
    id: 'no-bump-travel',
    severity: 'danger',
    quiet: { shock: shock(5) },
    speaks: { clearance: clearance(0) },
    value: 'bump',
    is: 0,
  },
]

describe('findings', () => {
  for (const { id, severity, quiet, speaks, value, is } of RULES)
    it(`${id}: nothing on this side of its threshold, the number on the other`, () => {
      expect(ids(quiet)).not.toContain(id)
      const finding = one(id, speaks)
      expect(finding?.severity).toBe(severity)
      expect(finding?.values[value]).toBeCloseTo(is, 9)
      expect(finding?.message).toMatch(/\.$/)
      expect(finding?.remedy).toMatch(/\.$/)
    })

  it('a stop closed in a hit is held against its rating, and the charge it names just meets it', () => {
    const rated = (ratedPressure: number, charge = 200 * PSI) =>
      one('stop-over-rated-pressure', { stop: stop(2, 3, { charge, body: { bore: 0.06, ratedPressure } }) })
    const over = rated(400 * PSI)
    expect(over?.severity).toBe('danger')
    const { chargeAtRating } = over!.values
    expect(rated(400 * PSI, chargeAtRating! * 1.001)).toBeDefined()
    expect(rated(400 * PSI, chargeAtRating! * 0.999)).toBeUndefined()
  })

  it('two rate changes together: crossover past the touch, or within half an inch before it', () => {
    const dual = (gap: number) => ({
      springs: {
        springs: [
          { name: 'tender', rate: 400 * LB_IN, freeLength: 10 * INCH, solidLength: 2 * INCH },
          { name: 'main', rate: 400 * LB_IN, freeLength: 20 * INCH, solidLength: 4 * INCH },
        ],
        preload: 0,
        // Half of every inch of shaft is the tender's: 6 in are in at ride height.
        crossover: { gap: (3 + gap / 2) * INCH },
      },
      stop: stop(2, 3),
    })
    expect(ids(dual(1.4))).not.toContain('crossover-at-engagement')
    expect(one('crossover-at-engagement', dual(1.6))?.values.crossover).toBeCloseTo(1.6 * INCH, 9)
    expect(one('crossover-at-engagement', dual(2.5))?.message).toContain('1/2 in later')
  })

  it('a motion ratio is a note when it falls by more than a fiftieth toward bump', () => {
    const table = (last: number): Partial<Corner> => ({
      linkage: {
        kind: 'table',
        rows: [-6, 0, 3, 6].map(wheel => {
          const moved = wheel < 6 ? wheel : last
          return { wheel: wheel * INCH, shock: moved * INCH, stop: moved * INCH }
        }),
      },
      clearance: clearance(5.9),
    })
    expect(ids(table(6))).not.toContain('motion-ratio-falls')
    expect(one('motion-ratio-falls', table(5))?.severity).toBe('note')
  })

  it('gas volumes taken on trust are notes until somebody measures them', () => {
    const gas = { charge: 150 * PSI, volume: 5e-4 }
    const corner = { stop: stop(2, 3), shock: { ...plainCorner().shock, gas } }
    expect(ids(corner)).not.toContain('gas-volume-assumed')
    expect(ids(corner, { assumed: ['corner.stop.gasVolume'] })).toContain('gas-volume-assumed')
    expect(ids(corner, { assumed: ['corner.shock.gas.volume'] })).toContain('shock-gas-volume-assumed')
  })

  it('a pad that moves away as the wheel rises is said, not budgeted in silence', () => {
    const axle = (up: 1 | -1): Partial<Corner> => ({
      linkage: {
        kind: 'axle',
        shockLower: [0, 0.5, 0.4],
        shockUpper: [0, 0.4, 1],
        stopPad: [0, 0.4, 0.45],
        stopAxis: [0, 0, up],
      },
      stop: stop(2, 3),
    })
    expect(ids(axle(1))).not.toContain('works-backwards')
    expect(one('works-backwards', axle(-1))?.severity).toBe('danger')
  })

  it('each cause named for a wrong ride height, put right alone, settles it', () => {
    const corner = { cornerMass: 1480 * POUND, springs: springs(18, 0.5) }
    const { message, remedy, values } = one('off-ride-height', corner)!
    const main = corner.springs.springs[0]!
    expect(`${message} ${remedy}`).toContain('lb less weight')
    expect(ids({ ...corner, cornerMass: corner.cornerMass + values.forceOver! / 9.80665 })).not.toContain(
      'off-ride-height',
    )
    const preload = corner.springs.preload + values.preloadOff!
    expect(ids({ ...corner, springs: { ...corner.springs, preload } })).not.toContain('off-ride-height')
    const rate = main.rate * (1 + values.springsOff!)
    expect(ids({ ...corner, springs: { ...corner.springs, springs: [{ ...main, rate }] } })).not.toContain(
      'off-ride-height',
    )
  })

  it('a pad whose path turns over and leaves its stop before bump ends is said', () => {
    // On an arm about x, 0.2 m long and leaning 60°, the pad is highest after another 30°, and back where it began after 60°.
    const arm = (bump: number): Partial<Corner> => ({
      linkage: {
        kind: 'arm',
        pivot: [
          [-0.2, 0, 0.4],
          [0.2, 0, 0.4],
        ],
        wheel: [0, 0.4, 0.4],
        shockLower: [0, 0.35, 0.4],
        shockUpper: [0, 0.3, 1],
        stopPad: [0, 0.1, 0.4 + Math.sqrt(0.03)],
        stopAxis: [0, 0, 1],
      },
      stop: stop(0, 3, { gap: 0.02 }),
      shock: shock(14, 20),
      clearance: { bump, droop: 0.1 },
    })
    const met = Math.asin((Math.sqrt(0.03) + 0.02) / 0.2) - Math.PI / 3
    const leaves = 0.4 * Math.sin(Math.PI / 3 - met)
    expect(ids(arm(leaves - 0.002))).not.toContain('pad-leaves-stop')
    const finding = one('pad-leaves-stop', arm(leaves + 0.002))
    expect(finding?.severity).toBe('danger')
    expect(finding?.values.wheel).toBeCloseTo(leaves, 9)
  })

  it('stand worst first', () => {
    const rank = { danger: 0, caution: 1, note: 2 }
    const list = found({ stop: stop(-0.5, 8), cornerMass: 1500 * POUND }, { assumed: ['corner.stop.gasVolume'] })
    expect(list.length).toBeGreaterThan(2)
    expect(list.map(({ severity }) => rank[severity])).toEqual(list.map(({ severity }) => rank[severity]).sort())
  })
})
