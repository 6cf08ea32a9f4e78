import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyChange } from '../../core/changes/apply.ts'
import { combinations, rangesOf } from '../../core/changes/ranges.ts'
import { GENERIC_SHELF, type Shelf } from '../../core/changes/shelf.ts'
import { stopOf, together, withoutPart, withPart } from '../../core/changes/shelf-parts.ts'
import { closesAt } from '../../core/changes/stop-in-corner.ts'
import { anotherStop } from '../../core/changes/stop-rules.ts'
import { firstChosen } from '../../core/changes/usual-ranges.ts'
import { formatShelf, parseShelf, readShelf } from '../../core/plan/shelf-file.ts'
import { sayIn } from '../../core/units/saying.ts'
import { close } from '../close.ts'
import { arbitraryCorner } from './arbitrary-corner.ts'
import { between } from './arbitrary-linkage.ts'
import { mutated } from './mutated.ts'

const say = sayIn('inch')
const runs = { numRuns: 120, seed: 47 }
const name = fc.string({ unit: 'grapheme', maxLength: 20 })

/** Shelves of parts that are on some car, and tubes. */
const arbitraryShelf: fc.Arbitrary<Shelf> = fc
  .record({
    corners: fc.array(fc.record({ corner: arbitraryCorner(), name, generic: fc.boolean() }), { maxLength: 4 }),
    tubes: fc.array(fc.record({ outer: between(0.01, 0.1), share: between(0.01, 0.49), name }), { maxLength: 3 }),
  })
  .map(({ corners, tubes }) => ({
    stops: corners.flatMap(({ corner, ...rest }, i) => {
      const part = stopOf(corner)
      return part === null ? [] : [{ id: `stop-${i}`, ...rest, part }]
    }),
    springs: corners.map(({ corner, ...rest }, i) => ({
      id: `spring-${i}`,
      ...rest,
      part: corner.springs.springs.at(-1)!,
    })),
    tubes: tubes.map(({ outer, share, name: called }, i) => ({
      id: `tube-${i}`,
      name: called,
      generic: false,
      part: { outerDiameter: outer, wall: outer * share },
    })),
  }))

describe('any shelf', () => {
  it('written is read back as it was, however its lines end', () => {
    fc.assert(
      fc.property(arbitraryShelf, shelf => {
        const text = formatShelf(shelf)
        expect(readShelf(text)).toEqual({ ok: true, shelf })
        expect(readShelf(`\ufeff${text.replaceAll('\n', '\r\n')}`)).toEqual({ ok: true, shelf })
      }),
      runs,
    )
  })

  it('with something wrong in it is taken, or refused with a place, what was found and what is wanted; nothing is thrown', () => {
    let refused = 0
    const stock = fc.constantFrom(...fc.sample(arbitraryShelf, { numRuns: 20, seed: 5 }), GENERIC_SHELF)
    fc.assert(
      fc.property(mutated(stock.map(shelf => JSON.parse(formatShelf(shelf)) as object)), value => {
        const parsed = parseShelf(value)
        if (parsed.ok) {
          expect(readShelf(formatShelf(parsed.shelf)).ok).toBe(true)
          return
        }
        refused += 1
        expect(parsed.problems.length).toBeGreaterThan(0)
        for (const { path, found, wanted } of parsed.problems) {
          expect(typeof path).toBe('string')
          expect(found).not.toBe('')
          expect(wanted).not.toBe('')
        }
      }),
      { ...runs, numRuns: 800 },
    )
    expect(refused).toBeGreaterThan(200)
  })

  it('put together with itself is itself; a part put on and taken off leaves it as it was', () => {
    fc.assert(
      fc.property(arbitraryShelf, arbitraryShelf, (shelf, other) => {
        expect(together(shelf, shelf)).toEqual(shelf)
        const both = together(shelf, other)
        for (const kind of ['stops', 'springs', 'tubes'] as const) {
          const ids = both[kind].map(({ id }) => id)
          expect(new Set(ids).size).toBe(ids.length)
          for (const part of other[kind]) expect(both[kind]).toContainEqual(part)
        }
        const spring = { ...GENERIC_SHELF.springs[0]!, id: 'new' }
        expect(withoutPart(withPart(shelf, 'springs', spring), 'springs', 'new')).toEqual(shelf)
      }),
      runs,
    )
  })
})

describe('a stop taken from a car to the shelf and put in again', () => {
  it('closes where it did, at the gap it had', () => {
    fc.assert(
      fc.property(arbitraryCorner(), corner => {
        const loose = stopOf(corner)
        if (loose === null || corner.stop === null) return
        const back = anotherStop(corner, loose)!
        const made = applyChange(corner, back, say)
        if (!made.ok) throw new Error(made.reason)
        close(made.corner.stop!.gap, corner.stop.gap, { abs: 1e-12 })
        close(closesAt(made.corner.stop!), closesAt(corner.stop), { abs: 1e-12 })
      }),
      runs,
    )
  })
})

describe('what is begun with from any shelf', () => {
  it('ends, and holds every part of the user’s own', () => {
    fc.assert(
      fc.property(arbitraryCorner(), arbitraryShelf, fc.constantFrom('inch', 'metric'), (corner, shelf, units) => {
        const chosen = firstChosen(corner, shelf, units as 'inch' | 'metric')
        const own = (kept: Shelf['springs']) => kept.filter(({ generic }) => !generic).map(({ id }) => id)
        expect(chosen.springs).toEqual(own(shelf.springs))
        const list = combinations(corner, rangesOf(corner, chosen, shelf))
        expect(list[0]).toEqual([])
        expect(list.length).toBeLessThan(3000)
      }),
      runs,
    )
  })
})
