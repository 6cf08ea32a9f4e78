import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatPlan } from '../../core/plan/file-text.ts'
import { parsePlan, readPlan } from '../../core/plan/parse.ts'
import { arbitraryPlan } from './arbitrary-plan.ts'
import { mutated } from './mutated.ts'

const runs = { numRuns: 120, seed: 11 }
/** A stock of plans to break, drawn once. */
const stock = fc.constantFrom(...fc.sample(arbitraryPlan(), { numRuns: 30, seed: 13 }))

describe('the plan file', () => {
  it('takes every plan drawn for these laws, and gives it back as it was', () => {
    fc.assert(
      fc.property(arbitraryPlan(), plan => {
        expect(parsePlan(plan)).toEqual({ ok: true, plan })
      }),
      runs,
    )
  })

  it('says in text what the plan says: reading what was written is the plan', () => {
    fc.assert(
      fc.property(arbitraryPlan(), plan => {
        const text = formatPlan(plan)
        expect(readPlan(text)).toEqual({ ok: true, plan })
        expect(readPlan(`\ufeff${text.replaceAll('\n', '\r\n')}`)).toEqual({ ok: true, plan })
      }),
      runs,
    )
  })

  it('is written the same, letter for letter, once it has been read', () => {
    fc.assert(
      fc.property(arbitraryPlan(), plan => {
        const read = parsePlan(plan)
        const text = read.ok ? formatPlan(read.plan) : ''
        const again = readPlan(text)
        expect(again.ok && formatPlan(again.plan)).toBe(text)
      }),
      { ...runs, numRuns: 100 },
    )
  })

  it('never throws at 2000 plans with something wrong in them: each is taken, or refused with what was found and what is wanted', () => {
    let refused = 0
    fc.assert(
      fc.property(mutated(stock), value => {
        const read = parsePlan(value)
        if (read.ok) return
        refused += 1
        expect(read.problems.length).toBeGreaterThan(0)
        for (const { path, found, wanted } of read.problems) {
          expect(typeof path).toBe('string')
          expect(found).toMatch(/\S/)
          expect(wanted).toMatch(/\S/)
          expect(`${found} ${wanted}`).not.toMatch(/\[object|Invalid input|expected /)
        }
      }),
      { numRuns: 2000, seed: 12 },
    )
    expect(refused).toBeGreaterThan(1000)
  }, 20_000)

  it('never throws at text cut short or stirred', () => {
    fc.assert(
      fc.property(
        arbitraryPlan(),
        fc.double({ min: 0, max: 0.999, noNaN: true }),
        fc.string(),
        (plan, share, noise) => {
          const text = formatPlan(plan)
          const cut = Math.floor(share * (text.length - 2))
          const short = readPlan(text.slice(0, cut))
          expect(short.ok ? 'taken' : short.problems[0]!.wanted).toBe('a plan saved by Stopgap')
          const stirred = readPlan(text.slice(0, cut) + noise + text.slice(cut + noise.length))
          expect(stirred.ok || stirred.problems.length > 0).toBe(true)
        },
      ),
      { ...runs, numRuns: 150 },
    )
  })
})
