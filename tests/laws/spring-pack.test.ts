import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { springPack, springTravel } from '../../core/forces/spring-pack.ts'
import { close } from '../close.ts'
import { arbitrarySprings } from './arbitrary-corner.ts'

const runs = { numRuns: 500, seed: 61 }
const share = fc.double({ min: 0, max: 1, noNaN: true })
/** Springs are metres long at most: rounding of their sums. */
const ROUNDING = { abs: 1e-14 }

describe('springs in series', () => {
  it('give way together by just what the pack is pushed in, up to bind', () => {
    fc.assert(
      fc.property(arbitrarySprings, share, (springs, at) => {
        const pack = springPack(springs)
        const compression = at * pack.bind
        const sum = pack.each(compression).reduce((total, one) => total + one, 0)
        close(sum, compression, { rel: 1e-12, ...ROUNDING })
      }),
      runs,
    )
  })

  it('carry one force: each that can still move has it as rate times compression, each that cannot has less', () => {
    fc.assert(
      fc.property(arbitrarySprings, share, (springs, at) => {
        const pack = springPack(springs)
        const compression = at * pack.bind
        const force = pack.force(compression)
        const locked = pack.crossover !== null && compression >= pack.crossover
        pack.each(compression).forEach((one, i) => {
          const { rate } = springs.springs[i]!
          const stands =
            one >= springTravel(springs.springs[i]!) * (1 - 1e-12) || (locked && i < springs.springs.length - 1)
          if (stands) expect(rate * one).toBeLessThanOrEqual(force * (1 + 1e-9) + 1e-6)
          else close(rate * one, force, { rel: 1e-9, abs: 1e-6 })
        })
      }),
      runs,
    )
  })

  it('are loose below nothing: no force, no rate, no energy, nothing compressed', () => {
    fc.assert(
      fc.property(arbitrarySprings, fc.double({ min: 1e-9, max: 0.3, noNaN: true }), (springs, slack) => {
        const pack = springPack(springs)
        expect([pack.force(-slack), pack.rate(-slack), pack.energy(-slack)]).toEqual([0, 0, 0])
        expect(pack.each(-slack)).toEqual(springs.springs.map(() => 0))
      }),
      runs,
    )
  })

  it('get no softer at a lock or a bind of those above, and force never falls', () => {
    fc.assert(
      fc.property(arbitrarySprings, springs => {
        const gap = springs.crossover?.gap ?? 0
        fc.pre(gap === 0 || gap > 1e-9)
        const pack = springPack(springs)
        const rates = pack.corners.slice(0, -1).map(corner => pack.rate(corner, 'above'))
        for (const [i, rate] of rates.entries()) if (i > 0) expect(rate).toBeGreaterThan(rates[i - 1]! * (1 - 1e-9))
        const stiffest = 1 / springs.springs.reduce((sum, spring) => sum + 1 / spring.rate, 0)
        expect(rates[0]).toBeGreaterThanOrEqual(stiffest * (1 - 1e-9))
      }),
      runs,
    )
  })

  it('hold the energy that was put in: the area under the force, straight between the corners', () => {
    fc.assert(
      fc.property(arbitrarySprings, share, (springs, at) => {
        const pack = springPack(springs)
        const compression = at * pack.bind
        const held = pack.each(compression).reduce((sum, one, i) => sum + (springs.springs[i]!.rate * one ** 2) / 2, 0)
        close(pack.energy(compression), held, { rel: 1e-10, abs: 1e-9 })
      }),
      runs,
    )
  })

  it('lock at the ring once those above have gone its gap beyond what they were at full extension, not before', () => {
    fc.assert(
      fc.property(arbitrarySprings, springs => {
        const { crossover, preload } = springs
        const pack = springPack(springs)
        const above = (compression: number) =>
          pack
            .each(compression)
            .slice(0, -1)
            .reduce((sum, one) => sum + one, 0)
        if (springs.springs.length === 1) expect(pack.crossover).toBe(null)
        else {
          const gone = above(pack.crossover!) - above(Math.max(0, preload))
          const left =
            springs.springs.slice(0, -1).reduce((sum, one) => sum + springTravel(one), 0) - above(Math.max(0, preload))
          close(gone, Math.min(left, crossover?.gap ?? Infinity), { rel: 1e-9, abs: 1e-12 })
          expect(above(pack.bind)).toBeLessThanOrEqual(above(pack.crossover!) + 1e-12)
        }
      }),
      runs,
    )
  })
})
