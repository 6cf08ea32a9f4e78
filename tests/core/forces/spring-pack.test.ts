import { describe, expect, it } from 'vitest'
import { springPack } from '../../../core/forces/spring-pack.ts'
import type { Springs } from '../../../core/plan/schema.ts'
import { allClose, close } from '../../close.ts'

const EXACT = { rel: 1e-12, abs: 1e-12 }

/** Springs by rate in N/mm and travel in mm, gap and preload in mm; all answers in mm and N. */
function pack(springs: readonly (readonly [rate: number, travel: number])[], gap: number | null = null, preload = 0) {
  const given: Springs = {
    springs: springs.map(([rate, travel], i) => ({
      name: `spring ${i + 1}`,
      rate: rate * 1000,
      freeLength: (travel + 100) / 1000,
      solidLength: 0.1,
    })),
    preload: preload / 1000,
    crossover: gap === null ? null : { gap: gap / 1000 },
  }
  const model = springPack(given)
  return {
    force: (compression: number) => model.force(compression / 1000),
    rate: (compression: number, side?: 'below' | 'above') => model.rate(compression / 1000, side) / 1000,
    each: (compression: number) => model.each(compression / 1000).map(one => one * 1000),
    corners: model.corners.map(corner => corner * 1000),
    bind: model.bind * 1000,
    crossover: model.crossover === null ? null : model.crossover * 1000,
  }
}

describe('one spring', () => {
  const one = pack([[50, 200]], 30)
  it('is a line from loose to bind, and knows no crossover', () => {
    allClose(one.corners, [0, 200], EXACT)
    expect(one.crossover).toBe(null)
    allClose([-5, 0, 100, 200, 250].map(one.force), [0, 0, 5000, 10_000, 10_000], EXACT)
    allClose(
      [-5, 100, 250].map(place => one.rate(place)),
      [0, 50, 0],
      EXACT,
    )
  })
})

describe('two springs', () => {
  it('share by their rates until the ring, then the main alone until it binds', () => {
    const two = pack(
      [
        [30, 100],
        [60, 120],
      ],
      40,
    )
    // 40 mm of the 30 spring is 1200 N and 20 mm of the 60.
    allClose(two.corners, [0, 60, 160], EXACT)
    close(two.crossover ?? Number.NaN, 60, EXACT)
    allClose(two.each(60), [40, 20], EXACT)
    allClose(two.each(100), [40, 60], EXACT)
    allClose(
      [30, 59.999, 60.001, 120].map(place => two.rate(place)),
      [20, 20, 60, 60],
      EXACT,
    )
    close(two.force(160), 7200, EXACT)
  })

  it('cross over when the one above binds, without a ring or before it', () => {
    for (const gap of [null, 150, 1000]) {
      const two = pack(
        [
          [30, 50],
          [60, 120],
        ],
        gap,
      )
      allClose(two.corners, [0, 75, 170], EXACT)
      close(two.crossover ?? Number.NaN, 75, EXACT)
    }
  })

  it('with no gap at the ring are the main alone from full extension on, what preload did before kept', () => {
    const without = pack(
      [
        [30, 100],
        [60, 120],
      ],
      0,
    )
    close(without.crossover ?? Number.NaN, 0, EXACT)
    allClose([0, 10, 60].map(without.force), [0, 600, 3600], EXACT)
    expect(without.each(60)[0]).toBe(0)
    const preloaded = pack(
      [
        [30, 100],
        [60, 120],
      ],
      0,
      30,
    )
    // 30 mm of both is 600 N: 20 mm above, 10 in the main.
    close(preloaded.crossover ?? Number.NaN, 30, EXACT)
    allClose([30, 31].map(preloaded.force), [600, 660], EXACT)
    allClose(preloaded.each(50), [20, 30], EXACT)
  })

  it('whose main binds first go on with the one above, to its ring or its bind', () => {
    const toRing = pack(
      [
        [60, 120],
        [30, 40],
      ],
      50,
    )
    // The main is solid at 1200 N, with 20 mm gone above; the ring is at 50 mm above.
    allClose(toRing.corners, [0, 60, 90], EXACT)
    allClose([toRing.rate(30), toRing.rate(60.001)], [20, 60], EXACT)
    close(toRing.crossover ?? Number.NaN, 90, EXACT)
    close(toRing.bind, 90, EXACT)
    const toBind = pack([
      [60, 120],
      [30, 40],
    ])
    allClose(toBind.corners, [0, 60, 160], EXACT)
  })

  it('that bind together are one corner, not two', () => {
    allClose(
      pack([
        [30, 100],
        [60, 50],
      ]).corners,
      [0, 150],
      EXACT,
    )
  })

  it('with negative preload begin loose: the ring is counted from nothing', () => {
    const slack = pack(
      [
        [30, 100],
        [60, 120],
      ],
      40,
      -25,
    )
    allClose(slack.corners, [0, 60, 160], EXACT)
    expect([slack.force(-25), slack.rate(-25), slack.force(0)]).toEqual([0, 0, 0])
    expect(slack.each(-25)).toEqual([0, 0])
  })

  it('preloaded to solid are bound from the start', () => {
    const solid = pack(
      [
        [30, 100],
        [60, 120],
      ],
      null,
      220,
    )
    close(solid.bind, 220, EXACT)
    allClose(solid.each(220), [100, 120], EXACT)
  })
})

describe('three springs', () => {
  it('lock those above together, the softest first if it binds first', () => {
    const three = pack(
      [
        [10, 20],
        [30, 100],
        [60, 150],
      ],
      60,
    )
    // 20 mm of the 10 spring is 200 N; then 40 mm of the 30 make up the 60 mm at the ring, 1200 N.
    const atHelper = 20 + 200 / 30 + 200 / 60
    allClose(three.corners, [0, atHelper, 20 + 40 + 20, 20 + 40 + 150], EXACT)
    close(three.crossover ?? Number.NaN, 80, EXACT)
    allClose(three.each(80), [20, 40, 20], EXACT)
    allClose(three.each(110), [20, 40, 50], EXACT)
    allClose([three.rate(1), three.rate(50), three.rate(100)], [1 / (1 / 10 + 1 / 30 + 1 / 60), 20, 60], EXACT)
  })
})
