import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import type { Corner } from '../../../core/plan/schema.ts'
import { INCH, POUND_FORCE } from '../../../core/units/constants.ts'
import { allClose, close } from '../../close.ts'
import { LB_IN, plainCorner, plainStop } from '../plain-corner.ts'

const EXACT = { rel: 1e-11, abs: 1e-13 }
const model = (other: Partial<Corner> = {}) => cornerModel(plainCorner(other))
const inches = (...values: readonly number[]) => values.map(value => value * INCH)

const dual: Corner['springs'] = {
  springs: [
    { name: 'tender', rate: 200 * LB_IN, freeLength: 12 * INCH, solidLength: 2 * INCH },
    { name: 'main', rate: 400 * LB_IN, freeLength: 14 * INCH, solidLength: 4 * INCH },
  ],
  preload: 0,
  crossover: { gap: 5 * INCH },
}

describe('limits of a corner', () => {
  const shortShock = { ...plainCorner().shock, stroke: 8 * INCH, showing: 5 * INCH }
  const stiff = {
    springs: [{ name: 'main', rate: LB_IN, freeLength: 12 * INCH, solidLength: 4 * INCH }],
    preload: 0,
    crossover: null,
  }
  it.each([
    ['shock closed', {}, 6],
    ['shock closed', { shock: shortShock }, 5],
    ['coil bind', { springs: stiff }, 2],
    ['stop closed', { stop: plainStop({ gap: INCH }) }, 5],
    ['chassis contact', { clearance: { bump: 4 * INCH, droop: null } }, 4],
    [
      'linkage end',
      {
        linkage: {
          kind: 'table' as const,
          rows: [-3, 0, 3.5].map(at => ({ wheel: at * INCH, shock: at * INCH, stop: at * INCH })),
        },
      },
      3.5,
    ],
  ] as const)('full bump: %s', (name, other, inch) => {
    const { bump, bumpLimitedBy, bumpLimits } = model(other as Partial<Corner>)
    expect(bumpLimitedBy).toBe(name)
    close(bump, inch * INCH, EXACT)
    expect(bumpLimits[name]).toBe(bump)
  })

  it.each([
    ['shock extended', {}, -6],
    ['limit strap', { clearance: { bump: null, droop: 2 * INCH } }, -2],
  ] as const)('full droop: %s', (name, other, inch) => {
    const { droop, droopLimitedBy } = model(other)
    expect(droopLimitedBy).toBe(name)
    close(droop, inch * INCH, EXACT)
  })

  it('lists every one found within a metre, and no other', () => {
    const { bumpLimits } = model({
      springs: dual,
      stop: plainStop(),
      clearance: { bump: 7 * INCH, droop: null },
    })
    expect(Object.keys(bumpLimits).sort()).toEqual(['chassis contact', 'coil bind', 'shock closed', 'stop closed'])
    close(bumpLimits['coil bind'] ?? Number.NaN, (5 + 10 - 6) * INCH, EXACT)
    expect(Object.keys(model({ clearance: { bump: 1.2, droop: null } }).bumpLimits).sort()).toEqual([
      'coil bind',
      'shock closed',
    ])
  })

  it('a corner that stands on one of them at ride height has no bump left', () => {
    const { bump, bumpLimitedBy } = model({ shock: { ...plainCorner().shock, showing: 0 } })
    expect([bump, bumpLimitedBy]).toEqual([0, 'shock closed'])
    const low = model({ shock: { ...plainCorner().shock, showing: 12 * INCH } })
    expect([low.droop, low.droopLimitedBy]).toEqual([0, 'shock extended'])
  })
})

describe('engagement', () => {
  it('is null without a stop, or when full bump comes first', () => {
    expect(model().engagement).toBe(null)
    expect(model({ stop: plainStop({ gap: 6.5 * INCH }) }).engagement).toBe(null)
  })

  it('lies below ride height when the stop is already pushed in, and at it when just touching', () => {
    close(model({ stop: plainStop({ gap: -INCH }) }).engagement ?? Number.NaN, -INCH, EXACT)
    expect(model({ stop: plainStop({ gap: 0 }) }).engagement).toBe(0)
  })

  it('steps the force at the touch and nowhere else', () => {
    const corner = model({ stop: plainStop() })
    const touch = corner.engagement!
    const step = corner.forces(touch, 'slow', 'above').total - corner.forces(touch, 'slow', 'below').total
    close(step / POUND_FORCE, 200 * Math.PI, { rel: 1e-9 })
    expect(corner.forces(touch, 'slow')).toEqual(corner.forces(touch, 'slow', 'above'))
    for (const wheel of inches(1, 1.999, 2.001, 4))
      expect(corner.forces(wheel, 'slow', 'above')).toEqual(corner.forces(wheel, 'slow', 'below'))
  })
})

describe('crossover', () => {
  it('is where the divider meets its ring, in wheel travel', () => {
    // 6 in of shaft in at ride height: 4 of the tender, 2 of the main. The ring is met after 5 and 2.5.
    const corner = model({ springs: dual })
    close(corner.crossover ?? Number.NaN, 1.5 * INCH, EXACT)
    allClose(corner.kinks, inches(1.5), EXACT)
    close(corner.wheelRate(INCH, 'slow') / LB_IN, 400 / 3, EXACT)
    close(corner.wheelRate(2 * INCH, 'slow') / LB_IN, 400, EXACT)
    close(corner.wheelRate(corner.crossover!, 'slow') / LB_IN, (400 / 3 + 400) / 2, { rel: 1e-9 })
  })

  it('is full droop where the springs above are locked all along, null for a single spring or when never met', () => {
    const locked = model({ springs: { ...dual, crossover: { gap: 0 } } })
    close(locked.crossover ?? Number.NaN, locked.droop, EXACT)
    expect(model().crossover).toBe(null)
    expect(model({ springs: dual, clearance: { bump: INCH, droop: null } }).crossover).toBe(null)
  })
})

describe('parts', () => {
  it('say where everything stands', () => {
    const corner = model({ springs: dual, stop: plainStop() })
    const { shockCompression, shockLeft, springs, stopCompression, stopLeft, stopGap } = corner.parts(3 * INCH)
    allClose([shockCompression, shockLeft], inches(9, 3), EXACT)
    allClose(
      springs.flatMap(({ compression, left }) => [compression, left]),
      inches(5, 5, 4, 6),
      EXACT,
    )
    allClose([stopCompression ?? Number.NaN, stopLeft ?? Number.NaN, stopGap ?? Number.NaN], inches(1, 3, -1), EXACT)
    const open = corner.parts(INCH)
    allClose(
      [open.stopCompression ?? Number.NaN, open.stopLeft ?? Number.NaN, open.stopGap ?? Number.NaN],
      inches(0, 4, 1),
      EXACT,
    )
    expect(model().parts(0)).toMatchObject({ stopCompression: null, stopLeft: null, stopGap: null })
  })
})
