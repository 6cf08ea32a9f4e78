import { describe, expect, it } from 'vitest'
import { combinations, rangesOf } from '../../../core/changes/ranges.ts'
import { GENERIC_SHELF, type Shelf, toHand, tubeOf } from '../../../core/changes/shelf.ts'
import { firstChosen, usualChosen, usualRanges, widerRanges } from '../../../core/changes/usual-ranges.ts'
import type { Axle, Corner, Plan } from '../../../core/plan/schema.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'
import { toUnit } from '../../../core/units/quantity.ts'
import { chargeBelow, nearestCharge } from '../../../core/units/steps.ts'
import { allClose, close } from '../../close.ts'
import { seed } from '../../seeds/seed.ts'

const axleOf = (from: Plan, id: Axle['id']): Axle => from.setups[0]!.axles.find(each => each.id === id)!
const { corner } = axleOf(seed('before-and-after.stopgap'), 'rear')
const foam = axleOf(seed('new-chassis.stopgap'), 'rear').corner
const EMPTY: Shelf = { stops: [], springs: [], tubes: [] }

/** Two stops, three springs and a tube somebody owns, before the generic ones. */
const own: Shelf = {
  stops: [
    ...GENERIC_SHELF.stops.slice(0, 2).map((each, i) => ({ ...each, id: `mine-${i}`, generic: false })),
    ...GENERIC_SHELF.stops,
  ],
  springs: [
    ...GENERIC_SHELF.springs.slice(0, 3).map((each, i) => ({ ...each, id: `mine-${i}`, generic: false })),
    ...GENERIC_SHELF.springs,
  ],
  tubes: [
    { id: 'mine', name: 'the rack', generic: false, part: { outerDiameter: 1.5 * INCH, wall: 0.12 * INCH } },
    ...GENERIC_SHELF.tubes,
  ],
}

/** Values in the unit people read. */
const read = (values: readonly number[], quantity: 'length' | 'pressure', system: 'inch' | 'metric'): number[] =>
  values.map(value => toUnit(value, quantity, system))

describe('usual ranges in the plan’s own units', () => {
  it('metric: spacers by 3 mm that leave 25 of stroke, charges from 7 to 21 bar by a half', () => {
    const { spacers, charges } = usualRanges(corner, GENERIC_SHELF, 'metric')
    const [mm, bar] = [read(spacers, 'length', 'metric'), read(charges, 'pressure', 'metric')]
    allClose(
      mm,
      mm.map((_, i) => 3 * (i + 1)),
      { abs: 1e-9 },
    )
    expect(mm.at(-1)).toBeCloseTo(63, 9)
    allClose(
      bar,
      bar.map((_, i) => 7 + i / 2),
      { abs: 1e-9 },
    )
    expect([bar[0], bar.at(-1)].map(each => each!.toFixed(6))).toEqual(['7.000000', '21.000000'])
  })

  it.each(['inch', 'metric'] as const)('%s: never a charge above what the body is rated for', units => {
    if (corner.stop?.kind !== 'hydraulic') throw new Error('no hydraulic stop')
    const rated = 171 * PSI
    const weak: Corner = { ...corner, stop: { ...corner.stop, body: { bore: 2 * INCH, ratedPressure: rated } } }
    const { charges } = usualRanges(weak, GENERIC_SHELF, units)
    expect(charges.length).toBeGreaterThan(5)
    expect(Math.max(...charges)).toBeLessThanOrEqual(rated)
  })

  it('wider by oil: a quarter of a cubic inch at a time, 5 cm³ in metric', () => {
    const inch = widerRanges(corner, GENERIC_SHELF, 'inch').oils.map(oil => oil / INCH ** 3)
    allClose(inch, [0.25, 0.5, 0.75, 1], { abs: 1e-9 })
    const metric = widerRanges(corner, GENERIC_SHELF, 'metric').oils.map(oil => oil * 1e6)
    allClose(metric, [5, 10, 15, 20], { abs: 1e-9 })
    expect(widerRanges(foam, GENERIC_SHELF, 'inch').oils).toEqual([])
  })
})

describe('a charge as it is set', () => {
  it('is a whole number of tens of psi, or of half bars', () => {
    close(nearestCharge(213 * PSI, 'inch'), 210 * PSI, { rel: 1e-12 })
    close(nearestCharge(14.69e5, 'metric'), 14.5e5, { rel: 1e-12 })
    close(chargeBelow(219.9 * PSI, 'inch'), 210 * PSI, { rel: 1e-12 })
    close(chargeBelow(220 * PSI, 'inch'), 220 * PSI, { rel: 1e-12 })
    close(chargeBelow(14.49e5, 'metric'), 14e5, { rel: 1e-12 })
  })

  it('below one step is left as it is', () => expect(chargeBelow(3 * PSI, 'inch')).toBe(3 * PSI))
})

describe('a shelf', () => {
  it('gives what somebody put there, and the generic sizes of a kind they have none of', () => {
    const { stops, springs, tubes } = toHand({ ...own, tubes: GENERIC_SHELF.tubes })
    expect(stops.map(({ id }) => id)).toEqual(['mine-0', 'mine-1'])
    expect(springs.map(({ id }) => id)).toEqual(['mine-0', 'mine-1', 'mine-2'])
    expect(tubes).toEqual(GENERIC_SHELF.tubes)
  })

  it('cuts a spacer from the user’s own tube where that goes over the shaft, else from the best on it', () => {
    close(tubeOf(corner, own)!.outerDiameter, 1.5 * INCH, { rel: 1e-12 })
    const tight = { ...own.tubes[0]!, part: { outerDiameter: 0.5 * INCH, wall: 0.06 * INCH } }
    const generic = tubeOf(corner, GENERIC_SHELF)
    expect(generic).not.toBeNull()
    expect(tubeOf(corner, { ...own, tubes: [tight, ...GENERIC_SHELF.tubes] })).toEqual(generic)
    expect(tubeOf(corner, { ...own, tubes: [tight] })).toBeNull()
    expect(tubeOf(foam, own)).toBeNull()
  })
})

describe('ranges to begin with', () => {
  it('are the usual ones while nobody has filled the shelf', () => {
    expect(firstChosen(corner, GENERIC_SHELF, 'inch')).toEqual(usualChosen(corner, GENERIC_SHELF, 'inch'))
  })

  it('take the stops and springs somebody owns, and go by larger steps so that all can be looked at', () => {
    const chosen = firstChosen(corner, own, 'inch')
    expect(chosen.stops).toEqual(['mine-0', 'mine-1'])
    expect(chosen.springs).toEqual(['mine-0', 'mine-1', 'mine-2'])
    const times = chosen.charges!.step / (10 * PSI)
    close(times, Math.round(times), { abs: 1e-9 })
    expect(Math.round(times)).toBeGreaterThan(1)
    const list = combinations(corner, rangesOf(corner, chosen, own))
    expect(list.length).toBeGreaterThan(500)
    expect(list.length).toBeLessThanOrEqual(2000)
    expect(new Set(list.flat().map(({ kind }) => kind))).toEqual(new Set(['stop', 'spacer', 'charge', 'spring']))
  })

  it('end, however many parts there are', () => {
    const many = Array.from({ length: 300 }, (_, i) => ({ ...own.springs[0]!, id: `many-${i}` }))
    expect(firstChosen(corner, { ...own, springs: many }, 'metric').springs).toHaveLength(300)
  })

  it('change nothing a corner has not', () => {
    const all = { ...firstChosen(corner, own, 'inch'), oils: { from: 1e-6, to: 3e-6, step: 1e-6 } }
    const bare = rangesOf({ ...corner, stop: null }, { ...all, shims: { from: 0, to: 0.01, step: 0.005 } }, own)
    expect([bare.spacers, bare.charges, bare.oils, bare.shims, bare.stops].map(list => list.length)).toEqual([
      0, 0, 0, 0, 0,
    ])
    expect(bare.springs).toHaveLength(3)
    const soft = rangesOf(foam, { ...all, stops: [] }, own)
    expect([soft.spacers, soft.charges, soft.oils].map(list => list.length)).toEqual([0, 0, 0])
    expect(rangesOf(foam, all, own).charges.length).toBeGreaterThan(0)
    expect(usualRanges(corner, EMPTY, 'inch').spacers).toEqual([])
  })

  it('pass over parts that are not on the shelf any more, and values beyond two hundred', () => {
    const fine = { from: 0, to: 1e6, step: 1 }
    const ranges = rangesOf(corner, { ...usualChosen(corner, own, 'inch'), stops: ['gone'], charges: fine }, own)
    expect([ranges.stops.length, ranges.charges.length]).toEqual([0, 200])
  })
})
