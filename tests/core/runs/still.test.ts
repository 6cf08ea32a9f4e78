import { describe, expect, it } from 'vitest'
import { Stillness } from '../../../core/runs/still.ts'

const step = 0.01
const droop = -0.15

/** Held at each place for so many seconds. */
function stood(...places: readonly (readonly [wheel: number, seconds: number])[]): number | null {
  const still = new Stillness(step, droop)
  for (const [wheel, seconds] of places) for (let i = 0; i <= seconds / step; i += 1) still.take(wheel)
  return still.wheel
}

describe('where a wheel stands', () => {
  it('is where it stood longest, not where it hung, however long that was', () => {
    expect(stood([0.002, 2], [-0.1, 0.5], [droop, 60])).toBeCloseTo(0.002, 9)
    expect(stood([0.002, 2], [-0.1, 3])).toBeCloseTo(-0.1, 9)
  })
  it('is not known of one that only hung, or that was never a second in one place', () => {
    expect(stood([droop, 30])).toBeNull()
    expect(stood([droop - 0.03, 30])).toBeNull()
    expect(stood([0, 0.6], [0.05, 0.6])).toBeNull()
  })
})
