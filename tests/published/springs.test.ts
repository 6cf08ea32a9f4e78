import { describe, it } from 'vitest'
import { springPack } from '../../core/forces/spring-pack.ts'
import type { Springs } from '../../core/plan/schema.ts'
import { INCH, POUND_FORCE } from '../../core/units/constants.ts'
import { close } from '../close.ts'
import { LB_IN } from '../core/plain-corner.ts'

const EXACT = { rel: 1e-12 }

/** Springs long enough never to bind here, by their rates in N/m. */
const pack = (rates: readonly number[], gap: number | null = null, preload = 0) =>
  springPack({
    springs: rates.map((rate, i) => ({
      name: `spring ${i + 1}`,
      rate,
      freeLength: 2,
      solidLength: 0.2,
    })) as Springs['springs'],
    preload,
    crossover: gap === null ? null : { gap },
  })

/** Rate of springs in series, 1/k = Σ 1/kᵢ. */
describe('springs in series', () => {
  it('200 and 400 lb/in give 133.333 lb/in (any machine-design text; recomputed)', () =>
    close(pack([200 * LB_IN, 400 * LB_IN]).rate(0.05) / LB_IN, 133.333, { abs: 5e-4 }))

  it('three of 40 000 N/m (the springs of S. S. Rao, Mechanical Vibrations, ex. 1.4, from memory, there side by side) give a third of one', () =>
    close(pack([40_000, 40_000, 40_000]).rate(0.05), 13_333.333333333334, EXACT))

  it('19.3 and 42.3 N/mm (Barton & Fieldhouse, Automotive Chassis Engineering, Springer 2018, p. 213) give 13.253 N/mm', () =>
    close(pack([19_300, 42_300]).rate(0.05) / 1000, 13.253, { abs: 5e-4 }))

  it('two of 75 N/mm (V. B. Bhandari, Design of Machine Elements, ex. 10.3) and one of 4.13 lb/in (Shigley, Mechanical Engineering Design, ex. 10-1, from memory) carry one force', () => {
    const three = pack([75_000, 75_000, 4.13 * LB_IN])
    const soft = 4.13 * LB_IN
    const rate = 1 / (1 / 75_000 + 1 / 75_000 + 1 / soft)
    close(three.rate(0.05), rate, EXACT)
    const [first, second, third] = three.each(0.05)
    close(first! * 75_000, third! * soft, EXACT)
    close(second!, first!, EXACT)
    close(first! + second! + third!, 0.05, EXACT)
  })
})

/**
 * Rate change at a crossover, by hand: k = k₁k₂/(k₁+k₂) until the springs above the main have travelled to the stop ring, then the main alone.
 * (Bhandari's ex. 10.19 has the other kind: two springs one inside the other with 15 mm of gap, whose rates then add. Its springs serve here,
 * its shares of the load do not.)
 */
describe('rate change at the crossover', () => {
  const [soft, stiff, gap] = [28_253.47, 29_430.7, 0.015]
  const two = pack([soft, stiff], gap)
  const lock = soft * gap
  const atLock = gap + lock / stiff

  it('V. B. Bhandari, Design of Machine Elements, ex. 10.19: both springs until the first has gone 15 mm, then the second', () => {
    close(two.crossover ?? Number.NaN, atLock, EXACT)
    close(two.force(atLock), lock, EXACT)
    close(two.rate(atLock, 'below'), (soft * stiff) / (soft + stiff), EXACT)
    close(two.rate(atLock, 'above'), stiff, EXACT)
  })

  it('at 1000 N the first still stands at its 15 mm and the second has gone 33.978 mm', () => {
    const compression = gap + 1000 / stiff
    close(two.force(compression), 1000, EXACT)
    const [first, second] = two.each(compression)
    close(first!, 0.015, EXACT)
    close(second!, 0.033978, { abs: 5e-7 })
  })

  it('is found the same in lb/in: 200 over 400 with 3 in to the ring locks at 600 lb, 4.5 in into the pack (common practice)', () => {
    const dual = pack([200 * LB_IN, 400 * LB_IN], 3 * INCH)
    close((dual.crossover ?? Number.NaN) / INCH, 4.5, EXACT)
    close(dual.force(4.5 * INCH) / POUND_FORCE, 600, EXACT)
    close(dual.force(5.5 * INCH) / POUND_FORCE, 1000, EXACT)
  })

  it('counts the ring from full extension: with 3 in of preload that 200 has done 2 in before, and locks after 5 (common practice)', () => {
    const dual = pack([200 * LB_IN, 400 * LB_IN], 3 * INCH, 3 * INCH)
    close((dual.crossover ?? Number.NaN) / INCH, 5 + 2.5, EXACT)
    close(dual.force(7.5 * INCH) / POUND_FORCE, 1000, EXACT)
  })
})
