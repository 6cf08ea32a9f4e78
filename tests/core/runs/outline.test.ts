import { describe, expect, it } from 'vitest'
import type { EvenRun } from '../../../core/runs/evenly.ts'
import { outline, wheelAt } from '../../../core/runs/outline.ts'

const run: EvenRun = {
  step: 0.5,
  stretches: [
    { start: 1, values: Float64Array.of(0, 2, -1, 4) },
    { start: 10, values: Float64Array.of(7, 5) },
  ],
  gaps: 1,
  lost: 7.5,
}

describe('the outline of a run', () => {
  it('has the least and the most of every part, and no part where nothing was recorded', () => {
    expect(outline(run, 1, 11, 10)).toEqual([
      { time: 1, low: 0, high: 2 },
      { time: 2, low: -1, high: 4 },
      { time: 10, low: 5, high: 7 },
    ])
    expect(outline(run, 1.4, 2.2, 1)).toEqual([{ time: 1.4, low: -1, high: 2 }])
    expect(outline(run, 3, 9, 4)).toEqual([])
  })

  it('is straight between two values, and says nothing in a gap', () => {
    expect([1, 1.25, 2.5, 10.5].map(time => wheelAt(run, time))).toEqual([0, 1, 4, 5])
    expect([0.9, 2.6, 9.9, 10.6].map(time => wheelAt(run, time))).toEqual([null, null, null, null])
  })
})
