import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../core/corner/corner.ts'
import { springPack } from '../../core/forces/spring-pack.ts'
import { stopModel } from '../../core/forces/stop.ts'
import type { Corner } from '../../core/plan/schema.ts'
import { close } from '../close.ts'
import { arbitraryCorner } from './arbitrary-corner.ts'

const runs = { numRuns: 300, seed: 31 }
/** A position is known to 1e-12 m; motion ratios here stay below 20 wherever one is asked for. */
const PLACE = { abs: 2e-11 }

const shaftIn = ({ shock }: Corner): number => shock.stroke - shock.showing

describe('limits', () => {
  it('the nearest is the one named, and the travel lies on both sides of ride height', () => {
    fc.assert(
      fc.property(arbitraryCorner(), corner => {
        const { bump, bumpLimits, bumpLimitedBy, droop } = cornerModel(corner)
        expect(bumpLimits[bumpLimitedBy]).toBe(bump)
        expect(Math.min(...Object.values(bumpLimits))).toBe(bump)
        expect(bump).toBeGreaterThanOrEqual(0)
        expect(droop).toBeLessThanOrEqual(0)
      }),
      runs,
    )
  })

  it('each is where its part is used up, and not before', () => {
    fc.assert(
      fc.property(arbitraryCorner('ratio', 'table', 'axle'), corner => {
        const { bumpLimits, linkage } = cornerModel(corner)
        const shock = (wheel: number) => shaftIn(corner) + linkage.at(wheel).shock
        const used = {
          'shock closed': [shock, corner.shock.stroke],
          'coil bind': [(wheel: number) => corner.springs.preload + shock(wheel), springPack(corner.springs).bind],
          'stop closed': [
            (wheel: number) => linkage.at(wheel).stop,
            corner.stop === null ? Infinity : corner.stop.gap + stopModel(corner.stop).stroke,
          ],
        } as const
        for (const [name, [now, end]] of Object.entries(used)) {
          const at = bumpLimits[name as keyof typeof used]
          if (at === undefined) {
            expect(now(Math.min(1, linkage.highest))).toBeLessThan(end)
          } else if (at === 0) {
            expect(now(0)).toBeGreaterThanOrEqual(end)
          } else {
            close(now(at), end, PLACE, name)
            for (let i = 0; i < 50; i += 1) expect(now((at * i) / 50)).toBeLessThan(end)
          }
        }
      }),
      runs,
    )
  })

  it('a stop is closed its gap and stroke away, along its own axis', () => {
    fc.assert(
      fc.property(arbitraryCorner(), corner => {
        const model = cornerModel(corner)
        const closed = model.bumpLimits['stop closed']
        fc.pre(corner.stop !== null && closed !== undefined && closed > 0)
        const wanted = corner.stop!.gap + stopModel(corner.stop!).stroke
        close(model.linkage.at(closed!).stop, wanted, PLACE)
      }),
      { ...runs, numRuns: 150 },
    )
  })
})

describe('engagement', () => {
  it('is where the pad has moved by the gap', () => {
    fc.assert(
      fc.property(arbitraryCorner('ratio', 'table', 'axle'), corner => {
        const { engagement, linkage, bump } = cornerModel(corner)
        if (corner.stop === null) expect(engagement).toBe(null)
        else if (engagement === null) expect(linkage.at(bump).stop).toBeLessThan(corner.stop.gap)
        else if (engagement === Math.max(-1, linkage.lowest))
          expect(linkage.at(engagement).stop).toBeGreaterThanOrEqual(corner.stop.gap)
        else close(linkage.at(engagement).stop, corner.stop.gap, { abs: 2e-12 })
      }),
      runs,
    )
  })

  it('is met with the stop at its first force, and not a hair before', () => {
    fc.assert(
      fc.property(arbitraryCorner(), corner => {
        const model = cornerModel(corner)
        const { engagement, droop, bump } = model
        fc.pre(engagement !== null && engagement > droop && engagement < bump)
        const first = stopModel(corner.stop!).force(0, 'slow').value
        close(model.stopForce(engagement!, 'slow'), first, { rel: 1e-9, abs: 1e-6 })
        expect(model.forces(engagement!, 'slow', 'below').stop).toBe(0)
        expect(model.parts(engagement!).stopCompression).toBeLessThan(1e-10)
      }),
      { ...runs, numRuns: 150 },
    )
  })
})
