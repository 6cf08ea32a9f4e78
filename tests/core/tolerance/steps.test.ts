import { describe, expect, it } from 'vitest'
import type { Axle, Linkage } from '../../../core/plan/schema.ts'
import { measuredOf } from '../../../core/tolerance/measured.ts'
import { measurementName } from '../../../core/tolerance/measurement-names.ts'
import { setupSureness, setupSurenessSteps } from '../../../core/tolerance/steps.ts'
import { kindOf } from '../../../core/tolerance/usual.ts'
import { plainAxle, plainPlan } from '../loads/plain-car.ts'

const stop = {
  kind: 'hydraulic',
  stroke: 0.06,
  gap: 0.08,
  shaftDiameter: 0.035,
  charge: 8e5,
  gasVolume: 1.2e-4,
} as const
const axles = (['front', 'rear'] as const).map(id => plainAxle({ id, rate: 30_000, weight: 3000, stop }))
const plan = plainPlan(axles, {})
const [setup] = plan.setups

describe('trials a step at a time', () => {
  it('say how far they have come, and end with what all at once gives', () => {
    const steps = setupSurenessSteps(plan, setup!, { trials: 500 })
    const seen: number[] = []
    let next = steps.next()
    while (!next.done) {
      expect(next.value.of).toBe(1000)
      seen.push(next.value.done)
      next = steps.next()
    }
    expect(seen).toEqual([250, 500, 750, 1000])
    expect(next.value).toEqual(setupSureness(plan, setup!, { trials: 500 }))
    expect(next.value.axles.map(({ axle, trials }) => [axle, trials])).toEqual([
      ['front', 500],
      ['rear', 500],
    ])
  })

  it('do one axle alone when asked, the same as among others', () => {
    const [rear] = setupSureness(plan, setup!, { trials: 250, axle: 'rear' }).axles
    expect(rear).toEqual(setupSureness(plan, setup!, { trials: 250 }).axles[1])
  })

  it('fall otherwise with another seed', () => {
    const of = (seed: number) => setupSureness(plan, setup!, { trials: 250, axle: 'front', seed }).axles[0]!.figures
    expect(of(2)).not.toEqual(of(1))
  })
})

describe('measurements', () => {
  it('all have a name', () => {
    const point: [number, number, number] = [0, 0, 0]
    const arm: Linkage = {
      kind: 'arm',
      pivot: [point, [1, 0, 0]],
      wheel: [0, 1, 0],
      shockLower: point,
      shockUpper: [0, 0, 1],
      stopPad: point,
      stopAxis: [0, 0, 1],
    }
    const table: Linkage = { kind: 'table', rows: [-0.1, 0, 0.1].map(at => ({ wheel: at, shock: at, stop: at })) }
    const elastomer: Axle['corner']['stop'] = { kind: 'elastomer', gap: 0, curve: [{ deflection: 0, force: 0 }] }
    const corner = axles[0]!.corner
    const full = { ...corner, clearance: { bump: 0.1, droop: 0.1 } }
    const shock = { ...corner.shock, gas: { charge: 1, volume: 1 } }
    const springs = { ...corner.springs, crossover: { gap: 0 } }
    const all = [
      corner,
      { ...full, linkage: arm, shock, springs },
      { ...full, linkage: table, stop: elastomer },
    ].flatMap(each => measuredOf({ ...axles[0]!, corner: each }).map(({ path }) => path))
    for (const path of all) expect(measurementName(path, ['main']), path).not.toContain('corner.')
    expect(measurementName('corner.springs.springs.0.rate', ['tender', 'main'])).toBe('rate of the tender')
    expect(measurementName('corner.springs.springs.1.freeLength', ['tender', ' '])).toBe('free length of spring 2')
    expect(kindOf('corner.shock.compression')).toBeNull()
  })
})
