import { describe, expect, it } from 'vitest'
import { applyChange } from '../../core/changes/apply.ts'
import { landingHeight } from '../../core/changes/landing.ts'
import { GENERIC_SHELF } from '../../core/changes/shelf.ts'
import { usualRanges } from '../../core/changes/usual-ranges.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import type { Corner } from '../../core/plan/schema.ts'
import { ride } from '../../core/ride/ride.ts'
import { fitOf } from '../../core/spacer/fit.ts'
import { tubeSection } from '../../core/spacer/tube.ts'
import { INCH, PSI } from '../../core/units/constants.ts'
import { sayIn } from '../../core/units/saying.ts'
import { close } from '../close.ts'
import { plainCorner, plainStop } from '../core/plain-corner.ts'
import { dampedCorner, straight } from '../core/ride/corners.ts'

const tube = (outer: number, wall: number) => ({ outerDiameter: outer * INCH, wall: wall * INCH })

describe('a spacer inside a stop (common practice)', () => {
  const withSpacer = (corner: Corner, inches: number): Corner => {
    const made = applyChange(corner, { kind: 'spacer', length: inches * INCH, ...tube(2.25, 0.12) }, sayIn('inch'))
    if (!made.ok) throw new Error(made.reason)
    return made.corner
  }

  it('of 1 1/4 in makes a stop that shows 3 1/4 in show 2', () => {
    const { stop } = withSpacer(plainCorner({ stop: plainStop({ stroke: 3.25 * INCH }) }), 1.25)
    close((stop?.kind === 'hydraulic' ? stop.stroke : Number.NaN) / INCH, 2, { rel: 1e-14 })
  })

  it('of 2 in makes a stop 2 in off its pad, at a motion ratio of 1/2, engage after 8 in of wheel instead of 4', () => {
    const longShock = { ...plainCorner().shock, stroke: 14 * INCH, showing: 13 * INCH }
    const corner = plainCorner({ shock: longShock, stop: plainStop(), linkage: { kind: 'ratio', shock: 1, stop: 0.5 } })
    close((cornerModel(corner).engagement ?? Number.NaN) / INCH, 4, { rel: 1e-10 })
    close((cornerModel(withSpacer(corner, 2)).engagement ?? Number.NaN) / INCH, 8, { rel: 1e-10 })
  })
})

describe('1 1/2 in tube of 0.120 in wall (common practice)', () => {
  it('has a bore of 1.260 in', () => close(tubeSection(tube(1.5, 0.12)).bore / INCH, 1.26, { abs: 1e-12 }))

  it('on the shaft of that bore, 32 mm, slides when six or seven thousandths are taken out', () => {
    const { verdict, boring } = fitOf(tube(1.5, 0.12), 0.032, 2 * INCH)
    expect(verdict).toBe('bore it')
    const out = (boring?.nominal ?? Number.NaN) / INCH
    expect(out).toBeGreaterThan(0.0055)
    expect(out).toBeLessThan(0.0075)
  })

  it('on a shaft of 1 1/4 in slides as it is, at either end of its tolerance', () => {
    const { verdict, onShaft, boring } = fitOf(tube(1.5, 0.12), 1.25 * INCH, 2 * INCH)
    expect([verdict, boring]).toEqual(['fits', null])
    close((onShaft?.least ?? Number.NaN) / INCH, 0.005, { abs: 1e-9 })
    close((onShaft?.most ?? Number.NaN) / INCH, 0.023, { abs: 1e-9 })
  })
})

describe('a stop is charged near 200 psi, more for hard landings (common practice)', () => {
  const landing = (charge: number): number => {
    const shock = { ...plainCorner().shock, stroke: 14 * INCH, showing: 10 * INCH }
    return landingHeight(cornerModel(plainCorner({ shock, stop: plainStop({ charge: charge * PSI }) }))).drop
  }

  it('so proposals look on both sides of that, and the generic ones begin there', () => {
    const { charges } = usualRanges(plainCorner({ stop: plainStop() }), GENERIC_SHELF, 'inch')
    expect([charges[0]! / PSI, charges.at(-1)! / PSI].map(Math.round)).toEqual([100, 300])
    expect(charges.some(charge => Math.abs(charge / PSI - 200) < 1e-6)).toBe(true)
    for (const { part } of GENERIC_SHELF.stops) expect(part.kind === 'hydraulic' && part.charge).toBe(200 * PSI)
  })

  it('and more of it takes a higher drop', () => {
    expect(landing(300)).toBeGreaterThan(landing(200))
    expect(landing(200)).toBeGreaterThan(landing(100))
  })
})

describe('a stop that throws the car wants more rebound damping (common practice)', () => {
  /** Share of what the stop took in its first hit that it gave back, and how high the chassis is thrown after it, m. */
  function thrown(rebound: number): { share: number; high: number } {
    const stop = plainStop({ compression: straight(500), rebound: straight(rebound) })
    const outcome = ride(cornerModel(dampedCorner({ stop })), { id: 'lip', name: '', kind: 'landing', drop: 0.5 })
    if (!outcome.ok) throw new Error(outcome.reason)
    const [hit] = outcome.events
    const { time, chassis } = outcome.trace
    const after = chassis.filter((_, i) => time[i]! >= hit!.until)
    return { share: hit!.returned / hit!.taken, high: Math.max(...after) }
  }

  it('so each doubling of it gives back less, and throws it less high', () => {
    const found = [500, 1000, 2000, 4000, 8000].map(thrown)
    found.slice(1).forEach(({ share, high }, i) => {
      expect(share).toBeLessThan(found[i]!.share)
      expect(high).toBeLessThanOrEqual(found[i]!.high)
    })
    expect(found[0]!.share).toBeGreaterThan(2 * found.at(-1)!.share)
    expect(found[0]!.high - found.at(-1)!.high).toBeGreaterThan(0.01)
  })
})
