import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import type { Terrain } from '../../../core/plan/schema.ts'
import type { MeasuredCourse } from '../../../core/ride/measured-road.ts'
import type { CarOutcome, CarRide, CornerRide, Ride, RideOutcome } from '../../../core/ride/results.ts'
import { ride } from '../../../core/ride/ride.ts'
import { bodyAnswers, rideCar } from '../../../core/ride/whole-car.ts'
import { allClose, close } from '../../close.ts'
import { plainStop } from '../plain-corner.ts'
import { dampedCorner, straight } from './corners.ts'

const held = plainStop({ compression: straight(500), rebound: straight(6000) })
const front = cornerModel(dampedCorner({ stop: held }))
const rear = cornerModel(dampedCorner({ stop: held, cornerMass: 300, unsprungMass: 60 }, 1200, 2000))
const car = [
  { id: 'front', model: front },
  { id: 'rear', model: rear },
] as const
const twins = [car[0], { id: 'rear', model: front }] as const

const head = { id: '', name: '' }
const whoops: Terrain = { ...head, kind: 'whoops', spacing: 6, height: 0.15, speed: 8, count: 4 }
const landing: Terrain = { ...head, kind: 'landing', drop: 0.5 }
const bump: MeasuredCourse = {
  id: '',
  kind: 'measured',
  profile: { distance: [0, 1, 1.5, 2, 6], height: [0, 0, 0.1, 0, 0] },
  speed: 6,
}

const arrived = (outcome: CarOutcome): CarRide => {
  if (!outcome.ok) throw new Error(outcome.reason)
  return outcome
}
const alone = (outcome: RideOutcome): Ride => {
  if (!outcome.ok) throw new Error(outcome.reason)
  return outcome
}

/** Wheel positions from a time on, so many. */
const wheels = ({ trace }: CornerRide, from: number, count: number): number[] => {
  const start = trace.time.findIndex(time => time >= from - 1e-9)
  return [...trace.wheel.subarray(start, start + count)]
}

describe('the whole car', () => {
  it('that lands on both axles alike lands as a quarter car does, whatever its radius of gyration', () => {
    for (const dynamicIndex of [0.6, 0.85, 1.3]) {
      const { axles, pitch } = arrived(rideCar(twins, 2.5, landing, { dynamicIndex }))
      const quarter = alone(ride(front, landing))
      for (const axle of axles) allClose([...axle.trace.wheel], [...quarter.trace.wheel], { abs: 5e-5 })
      close(Math.max(...pitch.map(Math.abs)), 0, { abs: 1e-6 })
    }
  })

  it('with a dynamic index of 1 is two quarter cars, the rear one a wheelbase later: front and rear do not feel each other', () => {
    const wheelbase = 2.4
    const { axles } = arrived(rideCar(car, wheelbase, whoops, { dynamicIndex: 1 }))
    const [f, r] = [alone(ride(front, whoops)), alone(ride(rear, whoops))]
    const count = Math.floor(f.trace.time.length) - 5
    allClose(wheels(axles[0]!, 0, count), wheels(f, 0, count), { abs: 5e-5 })
    // A wheelbase later is 0.3 s: a whole number of samples.
    allClose(wheels(axles[1]!, wheelbase / 8, count), wheels(r, 0, count), { abs: 5e-5 })
    expect([axles[0]!.hits, axles[1]!.hits]).toEqual([f.hits, r.hits])
  })

  it('with a smaller one feels the front bump at the rear before the rear wheel gets there, and pitches nose up', () => {
    const { axles, pitch } = arrived(rideCar(car, 3, bump, { dynamicIndex: 0.85 }))
    const { time, chassis } = axles[1]!.trace
    const met = time.findIndex(at => at >= 1 + 1.1 / 6)
    const before = time.findIndex(at => at >= 1 + 3 / 6)
    // Pushed up in front, a body that turns easily goes down behind.
    expect(Math.min(...chassis.subarray(met, before))).toBeLessThan(chassis[0]! - 2e-4)
    // Nose down is positive (ISO 8855): up first at the front, down when the rear rides over.
    expect(Math.min(...pitch.subarray(met, before))).toBeLessThan(-0.005)
    const after = pitch.subarray(before)
    expect(Math.max(...after)).toBeGreaterThan(0.005)
    close(pitch.at(-1)!, 0, { abs: 2e-3 })
  })

  it('with a larger one feels it the other way', () => {
    const { axles } = arrived(rideCar(car, 3, bump, { dynamicIndex: 1.3 }))
    const { time, chassis } = axles[1]!.trace
    const before = time.findIndex(at => at >= 1 + 3 / 6)
    expect(Math.max(...chassis.subarray(0, before))).toBeGreaterThan(chassis[0]! + 2e-4)
  })

  it('has balanced books as a whole', () => {
    const { axles, broughtAlong } = arrived(rideCar(car, 2.6, whoops))
    const sum = axles.reduce(
      (total, { work }) => total + work.road - work.tire - work.damper - work.springs - work.stop - work.ends,
      0,
    )
    const through = axles.reduce((total, { work }) => total + work.road + work.damper, 0)
    close(sum + broughtAlong, 0, { abs: 1e-3 * through })
    expect(through).toBeGreaterThan(100)
  })

  it('whose axles share one model rides as one with two models alike', () => {
    const springs = {
      springs: [
        { name: 'tender', rate: 40_000, freeLength: 0.3, solidLength: 0.05 },
        { name: 'main', rate: 60_000, freeLength: 0.4, solidLength: 0.1 },
      ],
      preload: 0,
      crossover: { gap: 0.1 },
    }
    const corner = dampedCorner({ stop: held, springs })
    const [one, other] = [cornerModel(corner), cornerModel(corner)]
    const crossover = one.crossover!
    expect(crossover > one.droop && crossover < one.bump).toBe(true)
    const [shared, apart] = [one, other].map(model => {
      const axles = [
        { id: 'front', model: one },
        { id: 'rear', model },
      ] as const
      return arrived(rideCar(axles, 2.5, whoops))
    })
    for (const [i, { trace }] of apart!.axles.entries()) {
      expect(Math.min(...trace.wheel) < crossover && Math.max(...trace.wheel) > crossover).toBe(true)
      expect([...shared!.axles[i]!.trace.wheel]).toEqual([...trace.wheel])
    }
  })

  it('comes out the same in whatever order its axles are listed', () => {
    const [one, other] = [arrived(rideCar(car, 2.6, whoops)), arrived(rideCar([car[1], car[0]], 2.6, whoops))]
    allClose([...other.axles[1]!.trace.wheel], [...one.axles[0]!.trace.wheel], { abs: 1e-5 })
    allClose([...other.pitch], [...one.pitch], { abs: 1e-5 })
  })

  it('parked with both axles on the steps of their stops stays there', () => {
    const parkedCorner = dampedCorner({ stop: plainStop({ gap: 0 }) })
    const parked = cornerModel({
      ...parkedCorner,
      springs: { ...parkedCorner.springs, preload: 2600 / (200 * 175.126836) - 6 * 0.0254 },
    })
    const both = [
      { id: 'front', model: parked },
      { id: 'rear', model: parked },
    ] as const
    const { axles } = arrived(rideCar(both, 2.6, { ...whoops, height: 0.004, speed: 3 }))
    for (const { trace, share } of axles) {
      expect(Math.max(...trace.wheel.map(Math.abs))).toBeLessThan(1e-6)
      close(share.onStop, 1, { rel: 1e-9 })
    }
  })

  it('needs two axles', () =>
    expect(rideCar([car[0]], 2.6, whoops)).toEqual({ ok: false, reason: 'needs two axles', time: 0 }))
})

describe('a body on two axles', () => {
  it('answers between them as one of its mass and radius of gyration does', () => {
    const [front, rear] = [300, 200]
    const index = 0.9
    const wheelbase = 2.5
    const a = (wheelbase * rear) / (front + rear)
    const b = wheelbase - a
    const inertia = (front + rear) * index * a * b
    const [ff, fr, rf, rr] = bodyAnswers([front, rear], index)
    close(ff, 1 / 500 + a ** 2 / inertia, { rel: 1e-12 })
    close(rr, 1 / 500 + b ** 2 / inertia, { rel: 1e-12 })
    close(fr, 1 / 500 - (a * b) / inertia, { rel: 1e-9 })
    expect(rf).toBe(fr)
    const [alone, none] = bodyAnswers([front, rear], 1)
    close(alone, 1 / front, { rel: 1e-12 })
    close(none, 0, { abs: 1e-18 })
  })
})
