import { describe, expect, it } from 'vitest'
import { axleBudget } from '../../core/budget/budget.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import { restingPosition } from '../../core/corner/static-position.ts'
import type { Corner, HydraulicStop } from '../../core/plan/schema.ts'
import { INCH, POUND_FORCE } from '../../core/units/constants.ts'
import { close } from '../close.ts'
import { LB_IN, plainCorner, plainStop } from '../core/plain-corner.ts'

/** What any builder of such a car knows to be so; no single source has it: common practice. */

const EXACT = { rel: 1e-11 }
/** 12 in of shaft showing, so that nothing but the stop ends the travel. */
const longShock = {
  stroke: 14 * INCH,
  showing: 13 * INCH,
  shaftDiameter: 0.02,
  gas: null,
  compression: [],
  rebound: [],
}

const withStop = (stop: HydraulicStop, ratio = 1) =>
  cornerModel(plainCorner({ shock: longShock, stop, linkage: { kind: 'ratio', shock: ratio, stop: ratio } }))

/** Touch and closing in inches of wheel travel. */
const touchAndClosing = (stop: HydraulicStop, ratio = 1) => {
  const { engagement, bump, bumpLimitedBy } = withStop(stop, ratio)
  expect(bumpLimitedBy).toBe('stop closed')
  return [(engagement ?? Number.NaN) / INCH, bump / INCH] as const
}

describe('a bump stop (common practice)', () => {
  it('with 4 in of stroke, 2 in off its pad, is met after 2 in and closed after 6', () => {
    const [touch, closed] = touchAndClosing(plainStop())
    close(touch, 2, EXACT)
    close(closed, 6, EXACT)
  })

  it('with 2 in taken out of its stroke from the inside is met after 4 and still closed after 6', () => {
    const [touch, closed] = touchAndClosing(
      plainStop({ stroke: 2 * INCH, gap: 4 * INCH, gasVolume: Math.PI * 3 * INCH ** 3 }),
    )
    close(touch, 4, EXACT)
    close(closed, 6, EXACT)
  })

  it('with half an inch of shim on its pad is met and closed half an inch sooner', () => {
    const [touch, closed] = touchAndClosing(plainStop({ gap: 1.5 * INCH }))
    close(touch, 1.5, EXACT)
    close(closed, 5.5, EXACT)
  })

  it('at half the motion ratio is met and closed after twice the wheel travel', () => {
    const [touch, closed] = touchAndClosing(plainStop(), 0.5)
    close(touch, 4, EXACT)
    close(closed, 12, EXACT)
  })

  it('of 2 in diameter at 200 psi pushes back with 628 lb at the first touch', () => {
    const model = withStop(plainStop())
    const touch = model.engagement ?? Number.NaN
    expect(model.forces(touch, 'slow', 'below').stop).toBe(0)
    close(model.forces(touch, 'slow', 'above').stop / POUND_FORCE, 200 * Math.PI, EXACT)
    close(model.stopForce(touch, 'fast') / POUND_FORCE, 628, { abs: 0.5 })
  })

  it('takes a third of 6 in of bump for the coilover when met after 2, whatever the springs', () => {
    const corner = plainCorner({ shock: longShock, stop: plainStop() })
    const { engagement, zones } = axleBudget(
      { id: 'rear', suspension: 'independent', track: 1.5, antiRollRate: 0, corner },
      { units: 'inch' },
    )
    close(engagement?.share ?? Number.NaN, 1 / 3, EXACT)
    close(zones[1]!.length / INCH, 2, EXACT)
    close(zones[2]!.length / INCH, 4, EXACT)
  })
})

describe('a motion ratio (common practice)', () => {
  const at = (ratio: number) => cornerModel(plainCorner({ linkage: { kind: 'ratio', shock: ratio, stop: ratio } }))

  it('halved leaves a quarter of the wheel rate', () => {
    close(at(1).wheelRate(0, 'slow') / LB_IN, 200, EXACT)
    close(at(0.5).wheelRate(0, 'slow') / LB_IN, 50, EXACT)
  })

  it('halved leaves half the force at the wheel for the same shaft travel, over twice the wheel travel', () => {
    const [whole, half] = [at(1), at(0.5)]
    close(half.forces(4 * INCH, 'slow').total, whole.forces(2 * INCH, 'slow').total / 2, EXACT)
    close(half.bump, 2 * whole.bump, EXACT)
    close(half.droop, 2 * whole.droop, EXACT)
  })
})

describe('preload (common practice)', () => {
  const resting = (preload: number): number => {
    const corner: Corner = plainCorner({
      linkage: { kind: 'ratio', shock: 0.5, stop: 0.5 },
      springs: { ...plainCorner().springs, preload },
    })
    return restingPosition(cornerModel(corner), 700 * POUND_FORCE)
  }

  it('of one more inch on the collar lifts a car on half a motion ratio by two inches at the wheel', () => {
    close((resting(2 * INCH) - resting(3 * INCH)) / INCH, 2, { rel: 1e-9 })
  })

  it('does not change the wheel rate', () => {
    const rate = (preload: number) =>
      cornerModel(plainCorner({ springs: { ...plainCorner().springs, preload } })).wheelRate(0, 'slow')
    close(rate(3 * INCH), rate(0), EXACT)
  })
})
