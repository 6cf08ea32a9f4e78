import { describe, expect, it } from 'vitest'
import { squaresLeft } from '../../../core/numerics/least-squares.ts'

/** F. J. Anscombe, The American Statistician 27 (1973) 17: four sets with one line and one residual sum of squares, 13.75. */
const ANSCOMBE = [
  [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5],
  [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68],
  [9.14, 8.14, 8.74, 8.77, 9.26, 8.1, 6.13, 3.1, 9.13, 7.26, 4.74],
] as const

describe('what a line leaves', () => {
  it.each([1, 2] as const)('of Anscombe’s set %s is 13.75', set => {
    const x = Float64Array.from(ANSCOMBE[0], value => value / 14)
    const left = squaresLeft([...x.keys()], x, 1, Float64Array.from(ANSCOMBE[set]))
    expect(left).toBeGreaterThan(13.74)
    expect(left).toBeLessThan(13.78)
  })

  it('is nothing where there is a line in two columns, whatever does not vary beside them', () => {
    const rows = Array.from({ length: 40 }, (_, i) => [Math.sin(i), Math.cos(3 * i), 0])
    const y = Float64Array.from(rows, ([a, b]) => 700 + 30 * a! - 4 * b!)
    const x = Float64Array.from(rows.flat())
    expect(squaresLeft([...y.keys()], x, 3, y)).toBeLessThan(1e-4)
    expect(squaresLeft([...y.keys()], x, 1, y)).toBeGreaterThan(100)
  })
})
