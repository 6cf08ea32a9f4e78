import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../core/corner/corner.ts'
import type { CornerModel, GasLaw } from '../../core/corner/corner-model.ts'
import { springPack } from '../../core/forces/spring-pack.ts'
import { stopModel } from '../../core/forces/stop.ts'
import type { Corner } from '../../core/plan/schema.ts'
import { close } from '../close.ts'
import { arbitraryCorner } from './arbitrary-corner.ts'

const runs = { numRuns: 300, seed: 31 }

const travel = (model: CornerModel, count: number): number[] =>
  Array.from({ length: count + 1 }, (_, i) => model.droop + ((model.bump - model.droop) * i) / count)

const shaftIn = ({ shock }: Corner): number => shock.stroke - shock.showing

describe('force at the wheel', () => {
  it('never falls as the wheel rises, as long as no motion ratio falls', () => {
    let looked = 0
    fc.assert(
      fc.property(arbitraryCorner(), corner => {
        const model = cornerModel(corner)
        const places = travel(model, 80)
        for (const [i, wheel] of places.slice(1).entries()) {
          const [before, after] = [model.linkage.at(places[i]!), model.linkage.at(wheel)]
          const rising = (ratio: 'shockRatio' | 'stopRatio') => before[ratio] >= 0 && after[ratio] >= before[ratio]
          if (!rising('shockRatio') || !rising('stopRatio') || after.shock < before.shock) continue
          looked += 1
          for (const law of ['slow', 'fast'] as const) {
            const [low, high] = [model.forces(places[i]!, law).total, model.forces(wheel, law).total]
            expect(high - low).toBeGreaterThanOrEqual(-1e-9 * Math.max(1, Math.abs(low)))
          }
        }
      }),
      { ...runs, numRuns: 150 },
    )
    expect(looked).toBeGreaterThan(3000)
  })

  it('has the wheel rate as its slope, springs, gas, stop and the turn of both motion ratios together', () => {
    let looked = 0
    fc.assert(
      fc.property(arbitraryCorner(), fc.constantFrom<GasLaw>('slow', 'fast'), (corner, law) => {
        const model = cornerModel(corner)
        const { linkage, droop, bump, kinks } = model
        const h = (bump - droop) * 1e-5
        for (const wheel of travel(model, 12)) {
          const ratio = linkage.at(wheel)
          const steep = Math.max(Math.abs(ratio.shockRatio), Math.abs(ratio.stopRatio)) > 3
          const broken = [droop, bump, ...kinks].some(kink => Math.abs(kink - wheel) < 3 * h)
          if (steep || broken) continue
          looked += 1
          const force = (at: number) => model.forces(at, law).total
          const slope =
            (8 * (force(wheel + h) - force(wheel - h)) - force(wheel + 2 * h) + force(wheel - 2 * h)) / (12 * h)
          // Rounding of forces near 1e4 N over steps near 3 micrometres.
          close(model.wheelRate(wheel, law), slope, { rel: 1e-6, abs: 0.05 })
        }
      }),
      { ...runs, numRuns: 150 },
    )
    expect(looked).toBeGreaterThan(1000)
  })

  it('slow gas never pushes more than fast, nor stiffens more', () => {
    fc.assert(
      fc.property(arbitraryCorner('ratio'), corner => {
        const model = cornerModel(corner)
        for (const wheel of travel(model, 10)) {
          expect(model.forces(wheel, 'fast').total).toBeGreaterThanOrEqual(
            model.forces(wheel, 'slow').total * (1 - 1e-12),
          )
          expect(model.wheelRate(wheel, 'fast')).toBeGreaterThanOrEqual(model.wheelRate(wheel, 'slow') * (1 - 1e-12))
        }
      }),
      { ...runs, numRuns: 150 },
    )
  })
})

describe('kinks', () => {
  it('are hit exactly: each is where something breaks, and where springs do, the rate differs by just their step', () => {
    fc.assert(
      fc.property(arbitraryCorner('ratio', 'table'), corner => {
        const model = cornerModel(corner)
        const pack = springPack(corner.springs)
        const rows = corner.stop === null ? [] : [0, ...stopModel(corner.stop).corners]
        for (const kink of model.kinks) {
          const { shock, stop, shockRatio } = model.linkage.at(kink)
          const compression = corner.springs.preload + shaftIn(corner) + shock
          const corners = pack.corners.filter(place => Math.abs(place - compression) < 1e-11)
          const touching = rows.some(row => Math.abs(corner.stop!.gap + row - stop) < 1e-11)
          const [first, last] = [corners[0], corners.at(-1)]
          const broken = touching || model.linkage.knots.includes(kink)
          expect(first !== undefined || broken).toBe(true)
          if (first === undefined || last === undefined || broken) continue
          const step = (pack.rate(last, 'above') - pack.rate(first, 'below')) * shockRatio ** 2
          // A hair to either side, so that rounding of the place itself does not matter; the rest of the slope changes little over it.
          const rated = (side: 1 | -1) => model.wheelRate(kink + side * 1e-8, 'slow')
          close(rated(1) - rated(-1), step, { rel: 1e-3, abs: 1 })
        }
      }),
      runs,
    )
  })

  it('are all there: between two of them no spring locks, binds or comes loose, and no stop is met', () => {
    fc.assert(
      fc.property(arbitraryCorner(), corner => {
        const model = cornerModel(corner)
        const corners = springPack(corner.springs).corners
        const ends = [model.droop, ...model.kinks, model.bump]
        for (const [i, to] of ends.slice(1).entries()) {
          const at = (wheel: number) => corner.springs.preload + shaftIn(corner) + model.linkage.at(wheel).shock
          const [low, high] = [at(ends[i]!), at(to)].sort((a, b) => a - b) as [number, number]
          expect(corners.filter(place => place > low + 1e-8 && place < high - 1e-8)).toEqual([])
          const gaps = [ends[i]!, to].map(wheel => model.parts(wheel).stopGap ?? 1)
          expect(gaps[0]! * gaps[1]!).toBeGreaterThan(-1e-8)
        }
      }),
      runs,
    )
  })
})
