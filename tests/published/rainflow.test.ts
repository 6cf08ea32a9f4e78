import { expect, it } from 'vitest'
import { rainflow, strokesAMinute } from '../../core/runs/strokes.ts'

/** How often each range is counted. */
function counted(values: readonly number[]): Readonly<Record<number, number>> {
  const counts: Record<number, number> = {}
  for (const { range, count } of rainflow(values)) counts[range] = (counts[range] ?? 0) + count
  return counts
}

it('the worked example of ASTM E1049-85, figure 6: a history of −2, 1, −3, 5, −1, 3, −4, 4, −2 (from memory)', () =>
  expect(counted([-2, 1, -3, 5, -1, 3, -4, 4, -2])).toEqual({ 3: 0.5, 4: 1.5, 6: 0.5, 8: 1, 9: 0.5 }))

it('what lies between the turns, and standing still, makes no difference', () =>
  expect(counted([-2, -2, 0, 1, -1, -3, 0, 4, 5, 5, -1, 2, 3, -4, 4, 1, -2])).toEqual({
    3: 0.5,
    4: 1.5,
    6: 0.5,
    8: 1,
    9: 0.5,
  }))

it('a wave of so many periods is so many strokes of its height, half of one at each end', () => {
  const wave = Float64Array.from({ length: 10_001 }, (_, i) => Math.sin((2 * Math.PI * i) / 1000))
  const cycles = rainflow(wave)
  const whole = cycles.filter(({ range }) => Math.abs(range - 2) < 1e-4).reduce((sum, { count }) => sum + count, 0)
  expect([whole, cycles.reduce((sum, { count }) => sum + count, 0)]).toEqual([9.5, 10.5])
  const run = { step: 0.01, stretches: [{ start: 0, values: wave }], gaps: 0, lost: 0 }
  // In 100 s: all are more than a quarter of 3.9 m, those of 2 m more than half, none more than three quarters.
  expect(strokesAMinute({ droop: -2, bump: 1.9 }, run)).toEqual([10.5 * 0.6, 9.5 * 0.6, 0])
})

it('a level has none', () => expect([counted([3, 3, 3]), counted([]), counted([1])]).toEqual([{}, {}, {}]))
