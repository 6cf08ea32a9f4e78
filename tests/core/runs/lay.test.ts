import { describe, expect, it } from 'vitest'
import { setupLoads } from '../../../core/loads/ledger.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { ride } from '../../../core/ride/ride.ts'
import { twoPoint } from '../../../core/runs/calibration.ts'
import type { EvenRun } from '../../../core/runs/evenly.ts'
import { evenly } from '../../../core/runs/evenly.ts'
import { runFigures } from '../../../core/runs/figures.ts'
import { PAST_END, RIDES_ON_STOP, runFindings, SATURATED, STATIC_OFF } from '../../../core/runs/findings.ts'
import { layRun } from '../../../core/runs/lay.ts'
import { saturatedShare } from '../../../core/runs/saturation.ts'
import { INCH, POUND } from '../../../core/units/constants.ts'
import { sayIn } from '../../../core/units/saying.ts'
import { close } from '../../close.ts'
import { plainPlan, withCorner } from '../../electron/cli/plain-plan.ts'

const curve = [0, 1, 2].map(velocity => ({ velocity, force: 1500 * velocity }))
/** Heavier than its springs were set for, so that it does not rest on the edge of two zones. */
const damped = withCorner({
  cornerMass: 620 * POUND,
  shock: { stroke: 10 * INCH, showing: 6 * INCH, shaftDiameter: 0.022, gas: null, compression: curve, rebound: curve },
})
const plan: Plan = {
  ...plainPlan,
  setups: [{ id: 'as-found', name: '', axles: [damped] }],
  loads: [{ id: 'washboard', name: 'Washboard', kind: 'terrain', amplitude: 0.03 }],
}
const loads = setupLoads(plan, plan.setups[0]!)
const axle = loads.model.axles[0]!
const ledger = loads.ledger[0]!
const { model, rest } = axle
const say = sayIn('inch')

/** A sensor on the shaft, in volts, mounted upside down, its zero anywhere. */
const volts = (wheel: number) => 2.2 - 11 * model.linkage.at(wheel).shock

describe('a run made by the ride simulation', () => {
  const course = { id: 'whoops', name: '', kind: 'whoops', spacing: 6, height: 0.1, speed: 8, count: 6 } as const
  const driven = ride(model, course, { sample: 1e-3 })
  if (!driven.ok) throw new Error(driven.reason)
  const { trace } = driven
  const lowest = trace.wheel.indexOf(trace.wheel.reduce((low, wheel) => Math.min(low, wheel), 0))
  const recorded = { time: trace.time, readings: trace.wheel.map(volts), longestPause: null }
  const channel = { measures: 'shaft', rideHeightAt: null, fullDroopAt: null, lowPass: null } as const
  const points = [0.05, -0.02].map(travel => ({ reading: 2.2 - 11 * travel, travel }))

  it('has its zero from the moment at ride height, its sign from the one at full droop', () => {
    const unset = { ...channel, calibration: { scale: 1 / 11, offset: 3 }, rideHeightAt: 0.5 }
    const mirrored = layRun(axle, ledger, recorded, unset, say)
    const right = layRun(axle, ledger, recorded, { ...unset, fullDroopAt: trace.time[lowest]! }, say)
    if (!mirrored.ok || !right.ok) throw new Error('not laid')
    // Ride height is where it stood, so positions are from there.
    close(right.figures.wheelMax, driven.wheelMax - rest, { abs: 1e-4 })
    close(mirrored.figures.wheelMin, rest - driven.wheelMax, { abs: 1e-4 })
    expect(right.calibration.scale).toBe(-1 / 11)
  })

  it('comes back as what it was', () => {
    const calibration = twoPoint(points[0]!, points[1]!)!
    const right = layRun(axle, ledger, recorded, { ...channel, calibration }, say)
    if (!right.ok) throw new Error(right.why)
    const { figures } = right
    expect(driven.hits).toBeGreaterThan(3)
    expect({ hits: figures.hits, bottoms: figures.bottoms }).toEqual({ hits: driven.hits, bottoms: driven.bottoms })
    close(figures.duration, driven.duration, { abs: 2e-3 })
    // Rows lie a millisecond apart: a zone left or entered is known to that, some dozen times in the run; so are peaks and speeds.
    for (const zone of ['droop', 'coilover', 'engagement'] as const)
      close(figures.share[zone], driven.share[zone], { abs: 2e-3 }, zone)
    for (const [i, share] of figures.histogram.entries()) close(share, driven.histogram[i]!, { abs: 2e-3 }, `bar ${i}`)
    close(figures.wheelMax, driven.wheelMax, { abs: 1e-3 })
    close(figures.wheelMin, driven.wheelMin, { abs: 1e-3 })
    close(figures.stopSpeedMax, driven.stopSpeedMax, { rel: 0.03 })
    expect(figures.beyond.map(({ id }) => id)).toEqual(['washboard'])
    expect(figures.beyond[0]!.share).toBeGreaterThan(figures.share.engagement)
  })

  it('is not laid where a moment was not recorded, or a cutoff leaves nothing', () => {
    const asked = (more: { rideHeightAt: number | null; lowPass: number | null }) =>
      layRun(axle, ledger, recorded, { ...channel, calibration: { scale: 1, offset: 0 }, ...more }, say)
    expect(asked({ rideHeightAt: 99, lowPass: null })).toEqual({ ok: false, why: 'nothing at ride height' })
    expect(asked({ rideHeightAt: null, lowPass: 500 })).toMatchObject({ ok: false, why: 'cutoff too high' })
    expect(asked({ rideHeightAt: null, lowPass: 60 }).ok).toBe(true)
  })
})

describe('rows', () => {
  it('are joined straight over a missing value, and not across a gap', () => {
    const time = Float64Array.of(0, 1, 2, 3, 4, 14, 15, 16)
    const run = evenly(time, Float64Array.of(0, 1, Number.NaN, 3, 4, 20, 21, 22), null)!
    expect(run.stretches.map(({ start, values }) => [start, ...values])).toEqual([
      [0, 0, 1, 2, 3, 4],
      [14, 20, 21, 22],
    ])
    expect([run.step, run.gaps, run.lost]).toEqual([1, 1, 10])
  })

  it('need two that follow each other', () => {
    expect(evenly(Float64Array.of(0), Float64Array.of(1), null)).toBeNull()
    expect(evenly(Float64Array.of(0, 1), Float64Array.of(1, Number.NaN), null)).toBeNull()
  })
})

/** A run whose wheel stands at each place for its share of ten seconds. */
function standing(...places: readonly (readonly [number, number])[]): EvenRun {
  const step = 1e-3
  const values = Float64Array.from(places.flatMap(([wheel, share]) => Array(Math.round(share * 10_000)).fill(wheel)))
  return { step, stretches: [{ start: 0, values }], gaps: 0, lost: 0 }
}
const findingsOf = (run: EvenRun, saturated = { droop: 0, bump: 0 }) =>
  runFindings({ model, rest, figures: runFigures(model, run, []), saturated, hung: null, say }).map(({ id }) => id)

describe('findings of a run', () => {
  const [a, b] = [0.9, 1.1]
  const touching = model.engagement! + 5e-3

  it('the car stands elsewhere than the plan says', () => {
    expect(findingsOf(standing([rest - a * STATIC_OFF, 1]))).toEqual([])
    expect(findingsOf(standing([rest - b * STATIC_OFF, 1]))).toEqual(['run-static-off'])
    expect(findingsOf(standing([rest + b * STATIC_OFF, 1]))).toEqual(['run-static-off'])
  })

  it('it rides on its stop', () => {
    expect(findingsOf(standing([rest, 1 - a * RIDES_ON_STOP], [touching, a * RIDES_ON_STOP]))).toEqual([])
    expect(findingsOf(standing([rest, 1 - b * RIDES_ON_STOP], [touching, b * RIDES_ON_STOP]))).toEqual(['run-on-stop'])
  })

  it('the sensor saturates', () => {
    expect(findingsOf(standing([rest, 1]), { droop: 0, bump: a * SATURATED })).toEqual([])
    expect(findingsOf(standing([rest, 1]), { droop: b * SATURATED, bump: 0 })).toEqual(['run-sensor-saturates'])
  })

  it('no sensor saturates where the travel itself ends', () => {
    const hung = (wheel: number) => findingsOf(standing([rest, 0.9], [wheel, 0.1]), { droop: 0.1, bump: 0 })
    expect(hung(model.droop + b * PAST_END)).toEqual(['run-sensor-saturates'])
    expect(hung(model.droop + a * PAST_END)).toEqual([])
  })

  it('calibration and stroke do not agree', () => {
    const { bump, droop } = model
    expect(findingsOf(standing([rest, 0.99], [bump + a * PAST_END, 0.01]))).toEqual([])
    expect(findingsOf(standing([rest, 0.99], [bump + b * PAST_END, 0.01]))).toEqual(['run-past-travel'])
    expect(findingsOf(standing([rest, 0.99], [droop - a * PAST_END, 0.01]))).toEqual([])
    expect(findingsOf(standing([rest, 0.99], [droop - b * PAST_END, 0.01]))).toEqual(['run-past-travel'])
  })

  it('it did not hang where the plan has full droop', () => {
    const { droop } = model
    const hungAt = (hung: number) =>
      runFindings({
        model,
        rest,
        figures: runFigures(model, standing([rest, 1]), []),
        saturated: { droop: 0, bump: 0 },
        hung,
        say,
      }).map(({ id }) => id)
    expect([hungAt(droop + a * PAST_END), hungAt(droop - a * PAST_END)]).toEqual([[], []])
    expect([hungAt(droop + b * PAST_END), hungAt(droop - b * PAST_END)]).toEqual([['run-droop-off'], ['run-droop-off']])
  })

  it('a reading is stuck when it stays at its end for five rows, not for four', () => {
    const rows = (ends: number) => Float64Array.from({ length: 100 }, (_, i) => (i < ends ? 5 : 1 + i / 100))
    expect(saturatedShare(rows(5)).high).toBe(0.05)
    expect(saturatedShare(rows(4))).toEqual({ low: 0, high: 0 })
    expect(saturatedShare(new Float64Array(100).fill(2))).toEqual({ low: 0, high: 0 })
  })
})
