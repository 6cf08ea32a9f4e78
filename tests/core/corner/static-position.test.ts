import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import { restingPosition } from '../../../core/corner/static-position.ts'
import { INCH, POUND_FORCE } from '../../../core/units/constants.ts'
import { close } from '../../close.ts'
import { plainCorner, plainStop } from '../plain-corner.ts'

const EXACT = { abs: 1e-11 }
const pounds = (value: number) => value * POUND_FORCE
/** 200 lb/in with 6 in of shaft in at ride height: 1200 lb there, 0 at full droop, 2400 at full bump. */
const plain = cornerModel(plainCorner())

describe('restingPosition', () => {
  it.each([
    [1200, 0],
    [1300, 0.5],
    [2200, 5],
    [1000, -1],
    [20, -5.9],
  ])('under %s lb is %s in, from anywhere in the travel', (weight, inch) => {
    for (const from of [0, plain.droop, plain.bump, 0.3 * INCH, inch * INCH])
      close(restingPosition(plain, pounds(weight), from), inch * INCH, EXACT)
  })

  it('stays where it is when it balances there', () => {
    expect(restingPosition(plain, plain.forces(0.7 * INCH, 'slow').total, 0.7 * INCH)).toBe(0.7 * INCH)
  })

  it('is clamped to the travel', () => {
    expect(restingPosition(plain, pounds(5000))).toBe(plain.bump)
    expect(restingPosition(plain, pounds(-5))).toBe(plain.droop)
  })

  describe('with a stop met at 2 in, where the force steps from 1600 to 2228 lb', () => {
    const stopped = cornerModel(plainCorner({ stop: plainStop() }))
    it.each([1600.001, 1700, 2000, 2228.3])('under %s lb is on the step, come from above or below', weight => {
      for (const from of [0, stopped.droop, stopped.bump, stopped.engagement!])
        expect(restingPosition(stopped, pounds(weight), from)).toBe(stopped.engagement)
    })

    it('under less is below it, under more above it', () => {
      close(restingPosition(stopped, pounds(1598), stopped.bump), 1.99 * INCH, EXACT)
      const above = restingPosition(stopped, pounds(2300))
      expect(above).toBeGreaterThan(2 * INCH)
      close(stopped.forces(above, 'slow').total, pounds(2300), { rel: 1e-9 })
    })
  })

  it('at ride height on the step itself does not move', () => {
    const touching = cornerModel(plainCorner({ stop: plainStop({ gap: 0 }) }))
    expect(restingPosition(touching, pounds(1500))).toBe(0)
  })

  it('goes the way the corner would move where the force falls over part of the travel: the first balance met', () => {
    // A solid axle under shocks that lean far over: the motion ratio falls to nothing, and the force with it, before full bump.
    const falling = cornerModel(
      plainCorner({
        linkage: {
          kind: 'axle',
          shockLower: [0, 0.5, 0.3],
          shockUpper: [0, 0.1, 0.6],
          stopPad: [0, 0.5, 0.3],
          stopAxis: [0, 0, 1],
        },
        shock: { ...plainCorner().shock, stroke: 0.2, showing: 0.15 },
        springs: {
          springs: [{ name: 'main', rate: 20_000, freeLength: 0.6, solidLength: 0.1 }],
          preload: 0,
          crossover: null,
        },
        clearance: { bump: 0.29, droop: 0.3 },
      }),
    )
    const force = (wheel: number) => falling.forces(wheel, 'slow').total
    const peak = Math.max(...Array.from({ length: 100 }, (_, i) => force((i / 100) * falling.bump)))
    expect(peak).toBeGreaterThan(1.1 * force(0))
    expect(force(falling.bump)).toBeLessThan(force(0))
    const weight = (force(0) + peak) / 2
    const first = restingPosition(falling, weight)
    close(force(first), weight, { rel: 1e-9 })
    for (let i = 0; i < 100; i += 1) expect(force((first * i) / 100)).toBeLessThan(weight)
    // At full bump the force is below the weight again: from there nothing lifts the car.
    const other = restingPosition(falling, weight, falling.bump)
    expect(force(other)).toBeLessThan(weight)
    expect(other).toBe(falling.bump)
  })
})
