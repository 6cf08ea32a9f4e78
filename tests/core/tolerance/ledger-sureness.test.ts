import { describe, expect, it } from 'vitest'
import type { Axle, Corner, Load, Plan } from '../../../core/plan/schema.ts'
import { carMeasuredOf } from '../../../core/tolerance/car-measured.ts'
import { ledgerSureness, ledgerSurenessSteps } from '../../../core/tolerance/ledger-sureness.ts'
import { measuredOf } from '../../../core/tolerance/measured.ts'
import { planMeasurementName } from '../../../core/tolerance/measurement-names.ts'
import { BLOCK } from '../../../core/tolerance/monte-carlo.ts'
import { close } from '../../close.ts'
import { bumpOf, carry, plainAxle, plainPlan, stopHard, turn } from '../loads/plain-car.ts'

const elastomer: Corner['stop'] = {
  kind: 'elastomer',
  gap: 0.1,
  curve: [
    { deflection: 0, force: 0 },
    { deflection: 0.4, force: 160_000 },
  ],
}
const ends = { bump: 0.2, droop: 0.2 }
const front = plainAxle({ rate: 30_000, weight: 3000, stop: elastomer, clearance: ends })

/** Every measurement taken for exact but those named. */
function only(wanted: Record<string, number>, axles: Axle[], loads: Load[]): Plan {
  const exact = axles.flatMap(axle => measuredOf(axle).map(({ path }) => [`${axle.id}.${path}`, 0]))
  const plan = plainPlan(axles, {}, loads)
  const car = carMeasuredOf(plan, plan.setups[0]!).map(({ path }) => [path, 0])
  return {
    ...plan,
    tolerances: { version: 1, values: { ...Object.fromEntries([...exact, ...car]), ...wanted } },
  }
}

const sure = (plan: Plan, trials = 4000) => {
  const found = ledgerSureness(plan, plan.setups[0]!, undefined, { trials })
  const of = (axle: string) => found.find(each => each.axle === axle)!
  return { found, of, band: (axle: string, id: string) => of(axle).bands.find(each => each.id === id)! }
}

describe('how sure the ledger is', () => {
  it('gives the balance the band of the gap, by hand: nine tenths of a rectangle either side', () => {
    const plan = only({ 'front.corner.stop.gap': 0.002 }, [front], [carry({ front: 60 })])
    const { band, of } = sure(plan)
    const takes = (30 * 9.80665) / 30_000
    const left = band('front', 'beforeStop')
    close(left.value, 0.1 - takes, { rel: 1e-9 })
    close(left.low, left.value - 0.0018, { abs: 6e-5 })
    close(left.high, left.value + 0.0018, { abs: 6e-5 })
    // The gap has no say in what the load takes, nor in what is left before full bump.
    for (const id of ['rows.carry', 'together', 'place', 'beforeBump']) {
      const { low, high, value } = band('front', id)
      close(high - low, 0, { abs: 1e-12 })
      close(low, value, { abs: 1e-12 })
    }
    expect(of('front')).toMatchObject({ trials: 4000, reachStop: 0, reachBump: 0 })
  })

  it('gives what a payload takes the band of the spring, by hand', () => {
    const plan = only({ 'front.corner.springs.springs.0.rate': 900 }, [front], [carry({ front: 60 })])
    // As the rate moves, so does where it rests: from there the load takes m·g/2 over whatever the rate is.
    const { low, high } = sure(plan).band('front', 'rows.carry')
    close(low, (30 * 9.80665) / (30_000 + 810), { rel: 2e-3 })
    close(high, (30 * 9.80665) / (30_000 - 810), { rel: 2e-3 })
  })

  it('gives what a payload takes the band of what is carried, by hand', () => {
    const { low, high } = sure(only({ 'loads.carry.masses.front': 10 }, [front], [carry({ front: 60 })])).band(
      'front',
      'rows.carry',
    )
    close(low, (25.5 * 9.80665) / 30_000, { rel: 2e-3 })
    close(high, (34.5 * 9.80665) / 30_000, { rel: 2e-3 })
  })

  it('gives a bump the band of its amplitude, and leaves what does not rest on it alone', () => {
    const plan = only({ 'loads.bump.amplitude': 0.01 }, [front], [bumpOf(0.05), carry({ front: 60 })])
    const { band } = sure(plan)
    const { low, high } = band('front', 'rows.bump')
    close(low, 0.041, { abs: 3e-4 })
    close(high, 0.059, { abs: 3e-4 })
    const other = band('front', 'rows.carry')
    expect([other.low, other.high]).toEqual([other.value, other.value])
  })

  it('feels the track, the roll axis, the center of gravity and the turn in roll, the wheelbase and the brakes in pitch', () => {
    const rear = plainAxle({ id: 'rear', rate: 30_000, weight: 3000, stop: elastomer, clearance: ends })
    for (const [path, row] of [
      ['front.track', 'rows.turn'],
      ['rear.track', 'rows.turn'],
      ['vehicle.rollAxisHeight', 'rows.turn'],
      ['vehicle.cgHeight', 'rows.turn'],
      ['loads.turn.lateral', 'rows.turn'],
      ['vehicle.cgHeight', 'rows.brake'],
      ['vehicle.wheelbase', 'rows.brake'],
      ['loads.brake.deceleration', 'rows.brake'],
    ] as const) {
      const { band } = sure(only({ [path]: 0.1 }, [front, rear], [turn(3), stopHard(4)]), BLOCK)
      const { low, high } = band('front', row)
      expect([path, high - low > 1e-5]).toEqual([path, true])
    }
  })

  it('is wide by itself for what is assumed, and says which to measure first', () => {
    const loads = [{ ...turn(3), assumed: true as const }]
    const plan = {
      ...plainPlan([front], { assumed: ['cgHeight', 'rollAxisHeight'] }, loads),
    }
    const of = (path: string) => carMeasuredOf(plan, plan.setups[0]!).find(each => each.path === path)!
    close(of('vehicle.cgHeight').halfWidth, 0.14, { rel: 1e-9 })
    expect(of('vehicle.cgHeight').source).toBe('assumed')
    close(of('loads.turn.lateral').halfWidth, 0.9, { rel: 1e-9 })
    close(of('front.track').halfWidth, 0.0254 / 16, { rel: 1e-9 })
    expect(of('front.antiRollRate')).toBeUndefined()
    const { ranking } = sure(plan).of('front')
    expect(ranking[0]!.measured.path).toMatch(/^(vehicle\.cgHeight|loads\.turn\.lateral)$/)
    expect(ranking.map(({ measured }) => measured.path)).toContain('vehicle.rollAxisHeight')
    for (const { width, narrowed } of ranking) expect(narrowed).toBeLessThan(width)
    expect(planMeasurementName('loads.turn.lateral', plan)).toBe('sideways g in “cornering”')
    expect(planMeasurementName('vehicle.cgHeight', plan)).toBe('height of the center of gravity')
    expect(planMeasurementName('front.corner.stop.gap', plan)).toBe('gap, front')
  })

  it('ranks by what is known to matter: all of the doubt to the only value in doubt', () => {
    const plan = only({ 'loads.carry.masses.front': 10 }, [front], [carry({ front: 60 })])
    const { ranking } = sure(plan).of('front')
    expect(ranking.map(({ measured }) => measured.path)).toEqual(['loads.carry.masses.front'])
    close(ranking[0]!.share, 1, { rel: 1e-6 })
    close(ranking[0]!.narrowed, ranking[0]!.width / 2, { rel: 1e-6 })
    const seeded = (seed: number) => ledgerSureness(plan, plan.setups[0]!, undefined, { trials: 500, seed })
    expect(seeded(7)).toEqual(seeded(7))
    expect(seeded(7)).not.toEqual(seeded(8))
  })

  it('counts the chance that the loads reach the stop', () => {
    // They take all of the gap as taped: half of all gaps are shorter.
    const plan = only({ 'front.corner.stop.gap': 0.002 }, [front], [carry({ front: (2 * 0.1 * 30_000) / 9.80665 })])
    const { reachStop, reachBump, findings } = sure(plan).of('front')
    close(reachStop!, 0.5, { abs: 0.05 })
    expect(reachBump).toBe(0)
    // The others leave less than an inch: each trial has one finding or the other.
    const chance = (id: string): number => findings.find(each => each.id === id)?.chance ?? 0
    expect(findings.map(({ id }) => id).sort()).toEqual(['loads-leave-little', 'loads-reach-stop'])
    close(chance('loads-reach-stop'), reachStop!, { abs: 1e-12 })
    close(chance('loads-leave-little') + chance('loads-reach-stop'), 1, { abs: 1e-12 })
  })

  it('gives the chance that it rolls over: of the car, to each of its axles; and none for a load that is not counted', () => {
    // Balance at φ: K·φ = m·h·(a + g·φ); at 20° for an a that is drawn either side of it alike.
    const [track, height] = [1.5, 0.9]
    const stiffness = (2 * 30_000 * track ** 2) / 4
    const mass = 18_000 / 9.80665
    const limit = (stiffness / (mass * height) - 9.80665) * (Math.PI / 9)
    const axle = plainAxle({ rate: 30_000, weight: 9000, track, unsprungMass: 300 })
    const given = only({ 'loads.turn.lateral': 0.3 }, [axle], [turn(limit - 1e-3), bumpOf(0.01)])
    const plan = { ...given, vehicle: { ...given.vehicle, cgHeight: 1.1, rollAxisHeight: 0.2 } }
    const { findings, bands } = sure(plan, 1000).of('front')
    close(findings.find(({ id }) => id === 'rolls-over-turn')!.chance, 0.5, { abs: 0.06 })
    close(bands.find(({ id }) => id === 'together')!.present, 0.5, { abs: 0.06 })
    expect(ledgerSureness(plan, plan.setups[0]!, ['bump'], { trials: BLOCK })[0]!.findings).toEqual([])
  })

  it('is of the whole car: a doubt about one axle is felt in the roll of the other', () => {
    const rear = plainAxle({ id: 'rear', rate: 30_000, weight: 3000, stop: elastomer, clearance: ends })
    const plan = only({ 'rear.corner.springs.springs.0.rate': 900 }, [front, rear], [turn(3)])
    const { low, high } = sure(plan).band('front', 'beforeStop')
    expect(high - low).toBeGreaterThan(1e-4)
  })

  it('has no width with no tolerance, and no bands without loads or a place for the wheels', () => {
    const exact = sure(only({}, [front], [carry({ front: 60 }), turn(2)]))
    expect(exact.of('front').bands.map(({ id }) => id)).toEqual([
      'rows.carry',
      'rows.turn',
      'together',
      'place',
      'beforeStop',
      'beforeBump',
    ])
    for (const { low, high, value, present } of exact.of('front').bands)
      expect([low, high, present]).toEqual([value, value, 1])
    expect(sure(only({}, [front], [])).of('front').bands).toEqual([])
    const over = sure(only({ 'front.corner.stop.gap': 0.002 }, [front], [turn(80)])).of('front')
    expect(over).toMatchObject({ bands: [], reachStop: null, reachBump: null })
  })

  it('says how far it has come, some trials at a time, and answers for one axle when asked', () => {
    const plan = only({ 'front.corner.stop.gap': 0.002 }, [front], [carry({ front: 60 })])
    const steps = ledgerSurenessSteps(plan, plan.setups[0]!, undefined, { trials: 2 * BLOCK, axle: 'rear' })
    const told: number[] = []
    let step = steps.next()
    for (; !step.done; step = steps.next()) {
      expect(step.value.of).toBe(2 * BLOCK)
      told.push(step.value.done)
    }
    expect(step.value).toEqual([])
    expect(told.length).toBeGreaterThan(10)
    expect(told).toEqual(told.toSorted((a, b) => a - b))
    expect(told.at(-1)).toBe(2 * BLOCK)
  })
})
