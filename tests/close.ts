import { expect } from 'vitest'

/** How far off a number may be: by a share of what is expected, by an amount in its own unit, or the larger of both. */
export interface Tolerance {
  readonly rel?: number
  readonly abs?: number
}

const within = (actual: number, expected: number, { rel = 0, abs = 0 }: Tolerance): boolean =>
  actual === expected || Math.abs(actual - expected) <= Math.max(abs, rel * Math.abs(expected))

/** The number is as expected, within the tolerance; NaN never is. Write the reason of the tolerance where it is not rounding. */
export function close(actual: number, expected: number, tolerance: Tolerance, what = 'value'): void {
  const wide = Math.max(tolerance.abs ?? 0, (tolerance.rel ?? 0) * Math.abs(expected))
  expect(within(actual, expected, tolerance), `${what} ${actual} is not within ${wide} of ${expected}`).toBe(true)
}

/** The same for lists, which must be of one length; the first number that is off is named. */
export function allClose(actual: readonly number[], expected: readonly number[], tolerance: Tolerance): void {
  expect(actual.length, 'length of the list').toBe(expected.length)
  for (const [i, value] of actual.entries()) close(value, expected[i]!, tolerance, `value ${i}`)
}
