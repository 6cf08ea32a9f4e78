import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import type { Axle, Corner, Setup, Terrain } from '../../../core/plan/schema.ts'
import { ride } from '../../../core/ride/ride.ts'
import { landingLimit, nextDrop } from '../../../renderer/state/landing-limit.ts'
import { RideCache } from '../../../renderer/state/terrain-cache.ts'
import { cornerAlone, cornerOfCar } from '../../../renderer/state/terrain-driven.ts'
import type { RideRequest } from '../../../renderer/state/terrain-request.ts'
import { TerrainRuns } from '../../../renderer/state/terrain-runs.ts'
import { coarseFirst, sweepOf } from '../../../renderer/state/terrain-sweep.ts'
import { answerTo } from '../../../renderer/workers/answer.ts'
import type { Answer, Ask } from '../../../renderer/workers/messages.ts'
import { WorkerPool } from '../../../renderer/workers/pool.ts'
import { sampleAxle, sampleCorner, withCorner } from '../charts/sample-axles.ts'
import { someHands } from '../workers/some-hands.ts'
import { terrains } from './rode.ts'
import { someRider } from './some-runs.ts'

const stiffer = withCorner({ unsprungMass: 80 }).corner

const axles = new Map<Corner, Axle>()

const axleWith = (corner: Corner): Axle => {
  const axle = axles.get(corner) ?? { ...sampleAxle, corner }
  axles.set(corner, axle)
  return axle
}

const asking = (corners: readonly Corner[], terrain: Terrain = terrains.ledge, subject = 'rear'): RideRequest => ({
  subject,
  terrain,
  axle: axleWith(corners[0]!),
  units: 'inch',
  corners: corners.map(cornerAlone),
  sweep: sweepOf(terrain, 0.45),
})

const wheelMax = (corner: Corner, terrain: Terrain): number => {
  const outcome = ride(cornerModel(corner), terrain)
  if (!outcome.ok) throw new Error('The sample could not be ridden.')
  return outcome.wheelMax
}

const seen = (runs: TerrainRuns) => runs.read().rides.map(each => (each?.ok ? each.wheelMax : null))

describe('rides of the terrain page', () => {
  beforeEach(() => vi.useFakeTimers())
  afterEach(() => vi.useRealTimers())

  it('are those asked for, the setup shown and the one compared', () => {
    const { rider, answerAll } = someRider()
    const runs = new TerrainRuns(rider)
    runs.ask(asking([sampleCorner, stiffer]))
    expect([seen(runs), runs.read().settled]).toEqual([[null, null], false])
    answerAll()
    expect(seen(runs)).toEqual([wheelMax(sampleCorner, terrains.ledge), wheelMax(stiffer, terrains.ledge)])
    expect(runs.read().settled).toBe(true)
  })

  it('call off what was asked before', () => {
    const { rider, asked, answer } = someRider()
    const runs = new TerrainRuns(rider)
    runs.ask(asking([sampleCorner]))
    runs.ask(asking([stiffer]))
    expect(asked.map(({ off }) => off)).toEqual([true, false])
    answer(asked[1]!)
    expect(seen(runs)).toEqual([wheelMax(stiffer, terrains.ledge)])
  })

  it('show the latest question alone, however late a worker comes with the answer to an older one', () => {
    const { hands, hire } = someHands<Ask, Answer>()
    const runs = new TerrainRuns(new WorkerPool<Ask, Answer>(hire, 2))
    runs.ask(asking([sampleCorner]))
    runs.ask(asking([stiffer]))
    const [old, fresh] = hands.map(({ asked }) => asked[0]!)
    hands[1]!.answer(fresh!.id, answerTo(fresh!.ask))
    hands[0]!.answer(old!.id, answerTo(old!.ask))
    expect(seen(runs)).toEqual([wheelMax(stiffer, terrains.ledge)])
    runs.ask(asking([sampleCorner]))
    expect(runs.read().settled).toBe(false)
  })

  it('keep the ride before in sight while the same thing is worked out anew, and not that of another subject', () => {
    const { rider, answerAll } = someRider()
    const runs = new TerrainRuns(rider)
    runs.ask(asking([sampleCorner]))
    answerAll()
    const before = seen(runs)
    runs.ask(asking([stiffer]))
    expect([seen(runs), runs.read().settled]).toEqual([before, false])
    runs.ask(asking([stiffer], terrains.whoops, 'front'))
    expect(seen(runs)).toEqual([null])
  })

  it('change before and after together', () => {
    const { rider, waiting, answer, answerAll } = someRider()
    const runs = new TerrainRuns(rider)
    runs.ask(asking([sampleCorner, stiffer]))
    answerAll()
    const before = seen(runs)
    const [softer, heavier] = [withCorner({ unsprungMass: 70 }).corner, withCorner({ unsprungMass: 110 }).corner]
    runs.ask(asking([softer, heavier]))
    answer(waiting()[0]!)
    expect(seen(runs)).toEqual(before)
    answer(waiting()[0]!)
    expect(seen(runs)).toEqual([wheelMax(softer, terrains.ledge), wheelMax(heavier, terrains.ledge)])
  })

  it('are remembered: what was ridden before is there at once, under whatever name', () => {
    const { rider, asked, answerAll } = someRider()
    const runs = new TerrainRuns(rider)
    runs.ask(asking([sampleCorner]))
    answerAll()
    runs.ask(asking([stiffer]))
    answerAll()
    const before = asked.length
    runs.ask(asking([sampleCorner], { ...terrains.ledge, name: 'Another name' }))
    expect([seen(runs), runs.read().settled]).toEqual([[wheelMax(sampleCorner, terrains.ledge)], true])
    expect(asked.length).toBe(before)
  })

  it('are asked for anew when the terrain differs', () => {
    const { rider, waiting } = someRider()
    const runs = new TerrainRuns(rider)
    runs.ask(asking([sampleCorner]))
    runs.ask(asking([sampleCorner], { ...terrains.ledge, speed: 5 }))
    expect(waiting().map(({ ask }) => ask.terrain)).toEqual([{ ...terrains.ledge, speed: 5 }])
  })

  it('are there before they are asked for, where somebody rode them ahead', () => {
    const cache = new RideCache()
    const early = someRider()
    new TerrainRuns(early.rider, cache).ask(asking([sampleCorner, stiffer]))
    early.answerAll()
    const { rider, asked } = someRider()
    const runs = new TerrainRuns(rider, cache)
    const request = asking([sampleCorner, stiffer])
    const ahead = runs.readOf(request)
    expect(ahead.settled).toBe(true)
    expect(ahead.rides.map(each => each?.ok && each.wheelMax)).toEqual(
      [sampleCorner, stiffer].map(corner => wheelMax(corner, terrains.ledge)),
    )
    expect([runs.read().rides, asked]).toEqual([[], []])
    runs.ask(request)
    expect([runs.readOf(request) === ahead, runs.read() === ahead, asked]).toEqual([true, true, []])
    expect(runs.readOf(asking([withCorner({ unsprungMass: 71 }).corner]))).toBe(ahead)
  })

  it('of before and after are drawn once, when both are there', () => {
    const { rider, waiting, answer } = someRider()
    const runs = new TerrainRuns(rider)
    runs.ask(asking([sampleCorner, stiffer]))
    answer(waiting()[0]!)
    expect(seen(runs)).toEqual([null, null])
    answer(waiting()[0]!)
    expect(seen(runs)).not.toContain(null)
  })

  it('ask nothing twice for the same question, and nothing at all for none', () => {
    const { rider, asked } = someRider()
    const runs = new TerrainRuns(rider)
    runs.ask(asking([sampleCorner]))
    runs.ask(asking([sampleCorner]))
    expect(asked.map(({ off }) => off)).toEqual([false])
    runs.ask(null)
    expect(asked.map(({ off }) => off)).toEqual([true])
    expect(runs.read().rides).toEqual([])
  })

  it('ride a setup once that is compared with itself', () => {
    const { rider, asked } = someRider()
    new TerrainRuns(rider).ask(asking([sampleCorner, sampleCorner]))
    expect(asked.length).toBe(1)
  })

  it('say how far they are once it takes longer than 0.3 s, can be stopped, and go on from there', () => {
    const { rider, waiting, answer, answerAll } = someRider()
    const runs = new TerrainRuns(rider)
    runs.ask(asking([sampleCorner]))
    answer(waiting()[0]!)
    expect(runs.read().work).toBeNull()
    vi.advanceTimersByTime(300)
    const total = waiting().length + 1
    expect(runs.read().work).toEqual({ done: 1, total })
    answer(waiting()[0]!)
    expect(runs.read().work).toEqual({ done: 2, total })
    runs.stop()
    expect([runs.read().work, runs.read().stopped, waiting().length]).toEqual([null, true, 0])
    const done = runs.read().swept[0]!.length
    runs.resume()
    vi.advanceTimersByTime(300)
    expect([runs.read().stopped, waiting().length]).toEqual([false, total - 2])
    answerAll()
    expect(runs.read().swept[0]!.length).toBe(done + total - 2)
    expect(runs.read().work).toBeNull()
  })

  it('say why nothing can be worked out, and try again when asked to', () => {
    const { rider, waiting, fail, answerAll } = someRider()
    const runs = new TerrainRuns(rider)
    runs.ask(asking([sampleCorner, stiffer]))
    fail(waiting()[0]!, 'out of memory')
    expect([runs.read().fault, waiting().length]).toEqual(['out of memory', 0])
    runs.resume()
    answerAll()
    expect([runs.read().fault, runs.read().settled]).toEqual([null, true])
  })

  it('begin the sweep when the hands rest, after the ride itself', () => {
    const { rider, waiting } = someRider()
    const runs = new TerrainRuns(rider)
    runs.ask(asking([sampleCorner]))
    expect(waiting().length).toBe(1)
    vi.advanceTimersByTime(250)
    const [first, second, ...rest] = waiting()
    expect(first!.ask).toMatchObject({ kind: 'ride', trace: true, terrain: terrains.ledge })
    expect(second!.ask).toMatchObject({ kind: 'findings', terrain: terrains.ledge })
    expect(rest.length).toBeGreaterThan(8)
    expect(rest.every(({ ask, rank }) => ask.kind === 'ride' && !ask.trace && rank > second!.rank)).toBe(true)
  })

  it('say what is worth saying, remember it, and say it in other units when asked to', () => {
    const { rider, asked, answerAll } = someRider()
    const runs = new TerrainRuns(rider)
    const hard = { ...terrains.landing, drop: 2 }
    runs.ask(asking([sampleCorner], hard))
    expect(runs.read().findings).toBeNull()
    vi.advanceTimersByTime(250)
    answerAll()
    expect(runs.read().findings?.[0]).toMatchObject({ id: 'ride-bottoms', severity: 'danger' })
    runs.ask(asking([stiffer]))
    runs.ask(asking([sampleCorner], hard))
    expect(runs.read().findings?.[0]?.id).toBe('ride-bottoms')
    const findings = () => asked.filter(({ ask, off }) => ask.kind === 'findings' && !off).length
    const before = findings()
    runs.ask({ ...asking([sampleCorner], hard), units: 'metric' })
    vi.advanceTimersByTime(250)
    expect(findings()).toBe(before + 1)
  })

  it('are not taken for those of the whole car, nor those of one axle for the other', () => {
    const { rider, answerAll } = someRider()
    const runs = new TerrainRuns(rider)
    const rear = axleWith(sampleCorner)
    const setup: Setup = { id: 'found', name: 'As found', axles: [{ ...rear, id: 'front', corner: stiffer }, rear] }
    const car = (id: 'front' | 'rear'): RideRequest => ({
      ...asking([sampleCorner], terrains.ledge, `car ${id}`),
      corners: [cornerOfCar(setup, id, 2.8)!],
    })
    const rode = [asking([sampleCorner]), car('rear'), car('front')].map(request => {
      runs.ask(request)
      answerAll()
      return seen(runs)[0]
    })
    expect(new Set(rode).size).toBe(3)
    expect(cornerOfCar({ ...setup, axles: [rear] }, 'rear', 2.8)).toBeNull()
  })

  it('sweep to the figures of rides at those speeds', () => {
    const { rider, answerAll } = someRider()
    const runs = new TerrainRuns(rider)
    runs.ask(asking([sampleCorner]))
    vi.advanceTimersByTime(250)
    answerAll()
    const points = runs.read().swept[0]!
    expect(points.every(({ value }, i) => i === 0 || value > points[i - 1]!.value)).toBe(true)
    const fast = points.at(-1)!
    expect(fast.wheelMax).toBe(wheelMax(sampleCorner, { ...terrains.ledge, speed: fast.value }))
    expect(points.find(({ value }) => value === terrains.ledge.speed)?.wheelMax).toBe(
      wheelMax(sampleCorner, terrains.ledge),
    )
  })

  it('narrow down the drop at which a landing begins to bottom', () => {
    const { rider, answerAll } = someRider()
    const runs = new TerrainRuns(rider)
    const landing = { ...terrains.landing, drop: 1 }
    runs.ask(asking([sampleCorner], landing))
    vi.advanceTimersByTime(250)
    answerAll()
    const { takes, fails } = landingLimit(runs.read().swept[0]!)
    expect(fails! - takes!).toBeLessThanOrEqual(0.0064)
    const bottoms = (drop: number): number => {
      const outcome = ride(cornerModel(sampleCorner), { ...landing, drop })
      return outcome.ok ? outcome.bottoms : Number.NaN
    }
    expect([bottoms(takes!) === 0, bottoms(fails!) > 0]).toEqual([true, true])
  })
})

describe('a sweep', () => {
  it.each([terrains.whoops, terrains.ledge, terrains.rough])('of $kind varies the speed alone', terrain => {
    const sweep = sweepOf(terrain, 0.4)!
    expect([sweep.by, sweep.present]).toEqual(['speed', terrain.speed])
    expect(sweep.values.length).toBeGreaterThan(6)
    expect(sweep.values.length).toBeLessThan(20)
    expect(sweep.values.every((value, i) => value > (sweep.values[i - 1] ?? 0))).toBe(true)
    expect(sweep.values).not.toContain(terrain.speed)
    expect(sweep.at(7)).toEqual({ ...terrain, speed: 7 })
  })

  it('of a landing varies the drop, and has somewhere to go from none at all', () => {
    const sweep = sweepOf({ ...terrains.landing, drop: 0 }, 0.4)!
    expect([sweep.by, sweep.present, sweep.values.at(-1)]).toEqual(['drop', 0, 0.48])
  })

  it('leaves out rides that would go on for minutes', () => {
    const slow = sweepOf({ ...terrains.whoops, speed: 1, count: 8 }, 0.4)!
    const crawling = sweepOf({ ...terrains.whoops, speed: 4, count: 40 }, 0.4)!
    expect(slow.values[0]).toBeGreaterThan(0.5)
    expect(crawling.values[0]).toBeGreaterThan(2)
  })

  it('shows its whole range early', () => {
    const values = Array.from({ length: 13 }, (_, i) => i)
    const order = coarseFirst(values)
    expect([...order].sort((a, b) => a - b)).toEqual(values)
    expect(order.slice(0, 4)).toEqual([12, 6, 0, 9])
    expect([coarseFirst([]), coarseFirst([5])]).toEqual([[], [5]])
  })
})

describe('a landing limit', () => {
  const point = (value: number, bottoms: number) => ({ value, bottoms, onStop: 0, wheelMax: 0 })

  it('lies between the last drop taken and the first that is not', () => {
    expect(landingLimit([point(0.1, 0), point(0.2, 0), point(0.3, 1)])).toEqual({ takes: 0.2, fails: 0.3 })
    expect(landingLimit([point(0.1, 2)])).toEqual({ takes: null, fails: 0.1 })
    expect(landingLimit([point(0.1, 0)])).toEqual({ takes: 0.1, fails: null })
    expect(landingLimit([])).toEqual({ takes: null, fails: null })
  })

  it('is looked for half way between, until it is known', () => {
    expect(nextDrop({ takes: 0.2, fails: 0.3 }, 0.01)).toBeCloseTo(0.25, 12)
    expect(nextDrop({ takes: null, fails: 0.1 }, 0.01)).toBeCloseTo(0.05, 12)
    expect(nextDrop({ takes: 0.295, fails: 0.3 }, 0.01)).toBeNull()
    expect(nextDrop({ takes: 0.3, fails: null }, 0.01)).toBeNull()
  })
})
