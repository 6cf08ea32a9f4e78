import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { evaluator } from '../../core/changes/evaluate.ts'
import { HIGHEST, landingHeight } from '../../core/changes/landing.ts'
import { combinations } from '../../core/changes/ranges.ts'
import { GENERIC_SHELF } from '../../core/changes/shelf.ts'
import { usualRanges } from '../../core/changes/usual-ranges.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import { arbitraryCorner } from './arbitrary-corner.ts'

const runs = { numRuns: 40, seed: 43 }

describe('the landing height of any corner', () => {
  it('is a height, known one way or the other, and the same again', () => {
    fc.assert(
      fc.property(arbitraryCorner(), corner => {
        const found = landingHeight(cornerModel(corner))
        expect(found.drop).toBeGreaterThanOrEqual(0)
        expect(found.drop).toBeLessThanOrEqual(HIGHEST)
        expect(landingHeight(cornerModel(corner))).toEqual(found)
      }),
      runs,
    )
  })
})

describe('a candidate of any corner', () => {
  it('worked out alone is what it is among others, and every figure is a number', () => {
    fc.assert(
      fc.property(arbitraryCorner(), fc.nat(), (corner, pick) => {
        const axle = { id: 'rear', suspension: 'independent', track: 1.5, antiRollRate: 0, corner } as const
        const question = { axle, units: 'inch', targets: { coiloverShare: 0.5, landingDrop: 0.3 } } as const
        const list = combinations(corner, usualRanges(corner, GENERIC_SHELF, 'inch'))
        const changes = list[pick % list.length]!
        const among = evaluator(question)
        for (const other of list.slice(0, 3)) among(other)
        const one = among(changes)
        expect(evaluator(question)(changes)).toEqual(one)
        if (!one.ok) return
        const { landing, stopPressure, ...figures } = one.figures
        for (const [key, value] of Object.entries({ ...figures, drop: landing.drop, pressure: stopPressure ?? 0 }))
          expect(Number.isFinite(value), key).toBe(true)
      }),
      runs,
    )
  })
})
