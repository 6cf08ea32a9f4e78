import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { heldExtent, type PlateExtent } from '../../../../renderer/charts/plate/extent.ts'

const extent: PlateExtent = { bump: 0.24, droop: -0.12, reserve: 0.26, force: 9000 }

const extents = fc
  .record({
    bump: fc.double({ min: 0, max: 2, noNaN: true }),
    droop: fc.double({ min: -2, max: 0, noNaN: true }),
    more: fc.double({ min: 0, max: 1, noNaN: true }),
    force: fc.double({ min: 1, max: 1e6, noNaN: true }),
  })
  .map(({ more, ...rest }) => ({ ...rest, reserve: rest.bump + more }))

describe('what the axes reach', () => {
  it('is what is drawn, when nothing was drawn before', () => expect(heldExtent(null, extent)).toBe(extent))

  it('stays while a step makes the travel a little shorter', () =>
    expect(heldExtent(extent, { bump: 0.238, droop: -0.12, reserve: 0.25, force: 8800 })).toBe(extent))

  it('grows with something to spare, so that the next step still fits', () => {
    const grown = heldExtent(extent, { ...extent, bump: 0.242 })
    expect(grown.bump).toBeGreaterThan(0.242)
    expect(heldExtent(grown, { ...extent, bump: 0.244 })).toBe(grown)
  })

  it('closes in on travel that has become much shorter', () => {
    const short = { bump: 0.15, droop: -0.12, reserve: 0.16, force: 9000 }
    expect(heldExtent(extent, short)).toEqual(short)
  })

  it('lets forces go their own way', () => {
    expect(heldExtent(extent, { ...extent, force: 3000 })).toEqual({ ...extent, force: 3000 })
    expect(heldExtent(extent, { ...extent, force: 9100 }).force).toBeGreaterThan(9100)
  })

  it('always has room for what is drawn, and settles at once', () =>
    fc.assert(
      fc.property(extents, extents, (before, now) => {
        const held = heldExtent(before, now)
        expect(held.bump).toBeGreaterThanOrEqual(now.bump)
        expect(held.droop).toBeLessThanOrEqual(now.droop)
        expect(held.reserve).toBeGreaterThanOrEqual(now.reserve)
        expect(held.reserve).toBeGreaterThanOrEqual(held.bump)
        expect(held.force).toBeGreaterThanOrEqual(now.force)
        expect(heldExtent(held, now)).toEqual(held)
      }),
    ))
})
