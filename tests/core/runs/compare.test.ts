import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import { compareFigures, rideAsRun } from '../../../core/runs/compare.ts'
import { demandOfRun } from '../../../core/runs/demand.ts'
import type { EvenRun } from '../../../core/runs/evenly.ts'
import { runFigures } from '../../../core/runs/figures.ts'
import { close } from '../../close.ts'
import { plainAxle } from '../../electron/cli/plain-plan.ts'

const model = cornerModel(plainAxle.corner)
const run: EvenRun = {
  step: 0.5,
  stretches: [
    { start: 1, values: Float64Array.of(0, 0.1, -0.1, 0.02, 0) },
    { start: 8, values: Float64Array.of(0.03, 0.05) },
  ],
  gaps: 1,
  lost: 5,
}

describe('what a run asked for', () => {
  const standing = (wheel: number, share: number): EvenRun => ({
    ...run,
    stretches: [{ start: 0, values: Float64Array.from({ length: 1000 }, (_, i) => (i < share * 1000 ? wheel : 0)) }],
  })
  it('is the travel above static but for a hundredth of the time, and at least that where the stop was in', () => {
    close(demandOfRun(model, 0, standing(0.05, 0.02))!.amplitude, 0.05, { abs: 5e-4 })
    expect(demandOfRun(model, 0, standing(0.05, 0.02))!.atLeast).toBe(false)
    expect(demandOfRun(model, 0, standing(0.15, 0.02))!.atLeast).toBe(true)
    expect(demandOfRun(model, 0, standing(0.15, 0.005))).toBeNull()
  })
})

describe('two runs side by side', () => {
  const figures = (values: readonly number[], places: Parameters<typeof runFigures>[2]) =>
    runFigures(
      model,
      { step: 0.5, stretches: [{ start: 0, values: Float64Array.from(values) }], gaps: 0, lost: 0 },
      places,
    )
  it('are told apart figure by figure, counts by the minute, loads by their id', () => {
    const place = { id: 'cargo', label: 'Cargo', wheel: 0.05 }
    const before = figures([0, 0.15, 0, 0.15, 0], [place])
    const after = figures([0, 0.15, 0, 0, 0], [place, { id: 'new', label: 'New', wheel: 0.1 }])
    const rows = compareFigures(before, after)
    const row = (id: string) => rows.find(each => each.id === id)
    expect(row('hits')).toMatchObject({ before: 60, after: 30, change: -30, quantity: null })
    expect(row('wheel-max')).toMatchObject({ before: 0.15, after: 0.15, change: 0, quantity: 'length' })
    expect(row('still')).toMatchObject({ before: null, after: 0, change: null })
    expect(row('beyond-cargo')!.change).toBeLessThan(0)
    expect(row('beyond-new')).toBeUndefined()
  })

  it('one of which is a ride has its even samples, without a last one that came early', () => {
    const time = Float64Array.of(0, 0.5, 1, 1.2)
    const { step, stretches } = rideAsRun({ trace: { time, wheel: Float64Array.of(1, 2, 3, 4) } as never })
    expect([step, stretches.map(({ start, values }) => [start, ...values])]).toEqual([0.5, [[0, 1, 2, 3]]])
  })
})
