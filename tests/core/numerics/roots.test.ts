import { describe, expect, it } from 'vitest'
import { findRoot } from '../../../core/numerics/roots.ts'
import { close } from '../../close.ts'

/** Functions with roots known in closed form. */
const KNOWN: readonly [string, (x: number) => number, number, number, number][] = [
  ['x² − 2', x => x ** 2 - 2, 0, 2, Math.SQRT2],
  ['cos x', Math.cos, 0, 3, Math.PI / 2],
  ['eˣ − 10', x => Math.exp(x) - 10, 0, 5, Math.LN10],
  ['x³, flat at its root', x => x ** 3, -1, 1.7, 0],
  ['x⁹ − 1e-9, flat next to it', x => x ** 9 - 1e-9, 0, 1, 0.1],
  ['a line', x => 3 * x - 1, -100, 100, 1 / 3],
  ['arctan of a steep line', x => Math.atan(1e6 * (x - 0.3)), -10, 10, 0.3],
  ['1/x − 4', x => 1 / x - 4, 0.01, 1, 0.25],
]

describe('findRoot', () => {
  it.each(KNOWN)('finds the root of %s, from either end', (_name, f, a, b, root) => {
    for (const found of [findRoot(f, a, b, 1e-12), findRoot(f, b, a, 1e-12)]) {
      if (!found.found) throw new Error(found.reason)
      expect(f(found.at) === 0 || found.width <= 1e-12 + 8 * Number.EPSILON * Math.abs(root)).toBe(true)
      // x³ is below rounding of its own terms long before its root.
      close(found.at, root, { abs: 1e-12 + 8 * Number.EPSILON * Math.abs(root) })
    }
  })

  it('asks a smooth function a dozen times, not a bracket halved forty times', () => {
    let asked = 0
    findRoot(
      x => {
        asked += 1
        return Math.exp(x) - 10
      },
      0,
      5,
      1e-12,
    )
    expect(asked).toBeLessThan(15)
  })

  it('finds where a function jumps past zero', () => {
    const found = findRoot(x => (x < 0.7 ? -1 : 5), 0, 1, 1e-12)
    if (!found.found) throw new Error(found.reason)
    close(found.at, 0.7, { abs: 2e-12 })
  })

  it('takes an end that is the root', () => {
    expect(findRoot(x => x - 1, 1, 5, 1e-12)).toEqual({ found: true, at: 1, width: 0 })
    expect(findRoot(x => x - 5, 1, 5, 1e-12)).toEqual({ found: true, at: 5, width: 0 })
  })

  it('says so when both ends are on one side, also where a root lies between unseen', () => {
    const none = { found: false, reason: 'same sign at both ends' }
    expect(findRoot(x => x ** 2 + 1, -1, 1, 1e-12)).toEqual(none)
    expect(findRoot(x => x ** 2 - 0.25, -1, 1, 1e-12)).toEqual(none)
  })

  it('says so when it does not converge: a jump at 0, to be placed finer than 200 halvings can', () => {
    const jump = (x: number): number => (x < 0 ? -1 : 1)
    expect(findRoot(jump, -1, 1.7, 1e-300)).toEqual({ found: false, reason: 'not converged' })
    expect(findRoot(jump, -1, 1.7, 1e-12).found).toBe(true)
  })
})
