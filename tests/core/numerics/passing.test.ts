import { describe, expect, it } from 'vitest'
import { passingZero } from '../../../core/numerics/passing.ts'

function pass(f: (x: number) => number, a: number, b: number, tolerance = 1e-13) {
  let asked = 0
  const ask = (x: number) => {
    asked += 1
    return { value: f(x), state: x }
  }
  const found = passingZero(ask, [a, ask(a)], [b, ask(b)], tolerance)
  return { ...found, asked, at: found.a + (found.b - found.a) * found.share }
}

describe('where a value passes zero', () => {
  it('finds smooth roots in few looks, from either side', () => {
    for (const [a, b] of [
      [0, 2],
      [2, 0],
    ] as const) {
      const { at, asked } = pass(x => x ** 3 - 2, a, b)
      expect(Math.abs(at - Math.cbrt(2))).toBeLessThan(1e-13)
      expect(asked).toBeLessThan(16)
    }
  })

  it('closes in on a jump from both sides and says how far across it zero lies', () => {
    const { a, b, share } = pass(x => (x < 0.3 ? -1 : 3), 0, 1)
    expect(Math.min(a, b)).toBeLessThan(0.3)
    expect(Math.max(a, b)).toBeGreaterThanOrEqual(0.3)
    expect(Math.abs(a - b)).toBeLessThan(2e-13)
    expect(a < b ? share : 1 - share).toBe(0.25)
  })

  it('takes a root at an end as it stands', () => {
    expect(pass(x => x, 0, 1)).toMatchObject({ a: 0, b: 0, asked: 2 })
    expect(pass(x => x - 1, 0, 1)).toMatchObject({ a: 1, b: 1, asked: 2 })
  })

  it('refuses ends of one sign', () => {
    expect(() => pass(x => x + 1, 0, 1)).toThrow('no zero between 0 and 1')
  })
})
