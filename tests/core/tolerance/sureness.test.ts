import { describe, expect, it } from 'vitest'
import type { Axle, Corner, Plan } from '../../../core/plan/schema.ts'
import { measuredOf, unusedTolerances } from '../../../core/tolerance/measured.ts'
import { rankingOf } from '../../../core/tolerance/ranking.ts'
import { noEndText } from '../../../core/tolerance/saying.ts'
import { surenessOf } from '../../../core/tolerance/sureness.ts'
import { trialsOf, tryBlock } from '../../../core/tolerance/trials.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'
import { close } from '../../close.ts'
import { plainAxle, plainPlan } from '../loads/plain-car.ts'

const stop = {
  kind: 'hydraulic' as const,
  stroke: 0.06,
  gap: 0.08,
  shaftDiameter: 0.035,
  charge: 800_000,
  gasVolume: 1.2e-4,
} satisfies Corner['stop']

const axle = plainAxle({ rate: 30_000, weight: 3000, stop, clearance: { bump: null, droop: 0.1 } })
const plan = (changed: Axle = axle, tolerances: Record<string, number> = {}): Plan => ({
  ...plainPlan([changed], {}),
  tolerances: { version: 1, values: tolerances },
})

/** Every measurement taken for exact but those named. */
const only = (wanted: Record<string, number>, changed: Axle = axle): Plan =>
  plan(changed, {
    ...Object.fromEntries(measuredOf(changed).map(({ path }) => [`front.${path}`, 0])),
    ...wanted,
  })

function sure(of: Plan, blocks = 8) {
  const trials = trialsOf(of, of.setups[0]!.axles[0]!)
  const done = Array.from({ length: blocks }, (_, block) => tryBlock(trials, block))
  const found = surenessOf(trials, done)
  return {
    ...found,
    figure: (id: string) => found.figures.find(each => each.id === id)!,
    ranking: (id: string) => rankingOf(trials, done, id),
  }
}

describe('tolerances', () => {
  it('are what is usual for the kind of measurement, in its unit', () => {
    const of = (path: string) => measuredOf(axle).find(each => each.path === path)!
    expect(of('corner.stop.gap')).toMatchObject({ halfWidth: INCH / 16, source: 'usual', quantity: 'length' })
    expect(of('corner.stop.charge').halfWidth).toBe(5 * PSI)
    close(of('corner.cornerMass').halfWidth, 0.01 * axle.corner.cornerMass, { rel: 1e-12 })
    close(of('corner.springs.springs.0.rate').halfWidth, 900, { rel: 1e-12 })
  })

  it('are wide for what is assumed, and the plan’s own before either', () => {
    const doubtful: Axle = { ...axle, assumed: ['corner.stop.gasVolume', 'corner.stop.gap'] }
    const given = { version: 1 as const, values: { 'front.corner.stop.gap': 0.004 } }
    const of = (path: string) => measuredOf(doubtful, given).find(each => each.path === path)!
    expect(of('corner.stop.gasVolume')).toMatchObject({ halfWidth: 0.3 * 1.2e-4, source: 'assumed' })
    expect(of('corner.stop.gap')).toMatchObject({ halfWidth: 0.004, source: 'plan' })
  })

  it('leave out what the travel budget does not rest on', () => {
    const paths = measuredOf(axle).map(({ path }) => path)
    expect(paths).not.toContain('track')
    expect(paths).not.toContain('corner.tire.radius')
    expect(paths).toContain('corner.shock.showing')
  })

  it('of measurements that are nowhere in the plan are named', () => {
    const values = { 'front.corner.stop.gap': 0.001, 'front.corner.stop.gapp': 0.001, 'rear.corner.stop.gap': 0.001 }
    expect(unusedTolerances([axle], { version: 1, values })).toEqual(['front.corner.stop.gapp', 'rear.corner.stop.gap'])
  })
})

describe('how sure', () => {
  it('gives a single reading’s band by hand: 5 to 95 of a rectangle is nine tenths of it', () => {
    const found = sure(only({ 'front.corner.stop.gap': 0.002 }), 40)
    const { low, high, value, firstOrder, why } = found.figure('engagement.wheel')
    close(value, 0.08, { rel: 1e-12 })
    close(low, 0.08 - 0.9 * 0.002, { abs: 3e-5 })
    close(high, 0.08 + 0.9 * 0.002, { abs: 3e-5 })
    // Slopes take it for a normal distribution of the same spread.
    close(firstOrder!.high - 0.08, (1.6448536 * 0.002) / Math.sqrt(3), { rel: 1e-6 })
    expect(why).toBeNull()
    expect(found.figure('static.position')).toMatchObject({ low: 0, high: 0 })
  })

  it('ranks what to repeat by its part of the variance, and says what that buys', () => {
    // Left before the stop: gap − static position. The mass moves the static position by g/30 000 a kilogram, so 4 mm here.
    const mass = (0.004 * 30_000) / 9.80665
    const found = sure(only({ 'front.corner.stop.gap': 0.002, 'front.corner.cornerMass': mass }), 40)
    const ranking = found.ranking('beforeStop')
    expect(ranking.map(({ measured }) => measured.path)).toEqual(['corner.cornerMass', 'corner.stop.gap'])
    close(ranking[0]!.share, 16 / 20, { abs: 0.02 })
    close(ranking[1]!.share, 4 / 20, { abs: 0.02 })
    // Half the tolerance leaves a quarter of that part of the variance.
    close(ranking[0]!.narrowed / ranking[0]!.width, Math.sqrt(4 / 20 + 16 / 20 / 4), { rel: 0.02 })
  })

  it('says why slopes fail where full bump is ended by one thing or another', () => {
    // The chassis would touch just where the stop closes.
    const both: Axle = { ...axle, corner: { ...axle.corner, clearance: { bump: 0.14, droop: 0.1 } } }
    const found = sure(only({ 'front.corner.clearance.bump': 0.004, 'front.corner.stop.gap': 0.004 }, both))
    const { why, firstOrder, low, high } = found.figure('travel.bump')
    expect(why).toBe('what ends bump is not always the same')
    // The smaller of two rectangles of half-width a: P(below x) = 1 − ((a − x)/2a)². Slopes give it no bias.
    close(low, 0.14 + 0.004 * (1 - 2 * Math.sqrt(0.95)), { abs: 1e-4 })
    close(high, 0.14 + 0.004 * (1 - 2 * Math.sqrt(0.05)), { abs: 1e-4 })
    close(firstOrder!.high - 0.14, 0.14 - firstOrder!.low, { rel: 1e-6 })
    const [ends] = found.regimes
    expect(ends!.chances.map(({ name }) => name).sort()).toEqual(['chassis contact', 'stop closed'])
    for (const { chance } of ends!.chances) close(chance, 0.5, { abs: 0.05 })
  })

  it('says why slopes fail where the car may rest on the step of its stop', () => {
    const parked: Axle = {
      ...axle,
      corner: { ...axle.corner, cornerMass: (3000 + 0.08 * 30_000) / 9.80665 },
    }
    const found = sure(only({ 'front.corner.cornerMass': 10 }, parked))
    expect(found.figure('static.stopForce').why).toBe('it sometimes rests on its stop and sometimes clear of it')
    const chance = found.findings.find(({ id }) => id === 'rides-on-stop')!.chance
    close(chance, 0.5, { abs: 0.05 })
  })

  it('says why slopes fail where the springs cross over about ride height', () => {
    const springs = {
      springs: [
        { name: 'tender', rate: 40_000, freeLength: 1, solidLength: 0.1 },
        { name: 'main', rate: 60_000, freeLength: 1, solidLength: 0.1 },
      ],
      preload: 0,
      crossover: { gap: 0 },
    }
    const shaftIn = axle.corner.shock.stroke - axle.corner.shock.showing
    // Both carry one force: the tender takes 60 of every 100 mm of shaft, so its ring meets the divider at ride height.
    const crossing: Axle = {
      ...axle,
      corner: { ...axle.corner, stop: null, springs: { ...springs, crossover: { gap: 0.6 * shaftIn } } },
    }
    const found = sure(only({ 'front.corner.springs.crossover.gap': 0.002 }, crossing))
    expect(found.figure('ride.wheelRate').why).toBe('crossover falls on either side of where this is taken')
  })

  it('says that a figure bends where no kind of trial has a line of its own', () => {
    const doubtful: Axle = { ...axle, assumed: ['corner.stop.gasVolume'] }
    const found = sure(only({ 'front.corner.stop.gasVolume': 0.45 * stop.gasVolume }, doubtful))
    expect(found.figure('bump.stopForceFast').why).toBe('it bends within the tolerances')
  })

  it('gives the figures of both setups the same luck with the same measurement', () => {
    const shorter: Axle = { ...axle, corner: { ...axle.corner, stop: { ...stop, gap: 0.06 } } }
    const [a, b] = [axle, shorter].map(each => sure(only({ 'front.corner.stop.gap': 0.002 }, each)))
    const reach = (found: ReturnType<typeof sure>) => {
      const { low, high, value } = found.figure('engagement.wheel')
      return [low - value, high - value]
    }
    for (const [i, end] of reach(a!).entries()) close(end, reach(b!)[i]!, { abs: 1e-9 })
  })

  it('gives no end to what the gas would hold where it runs out, and says how often and what measuring would leave', () => {
    // π/4·35²·60 mm³ is pushed aside; the volume is drawn from 0.7 to 1.3 times what is assumed.
    const [aside, volume] = [(Math.PI / 4) * 0.035 ** 2 * 0.06, 7.5e-5]
    const tight: Axle = {
      ...axle,
      corner: { ...axle.corner, stop: { ...stop, gasVolume: volume } },
      assumed: ['corner.stop.gasVolume'],
    }
    const found = sure(only({ 'front.corner.stop.gasVolume': 0.3 * volume }, tight), 40)
    // Solid is less than a tenth left: V − aside < V/10.
    const out = (aside / 0.9 - 0.7 * volume) / (0.6 * volume)
    const chances = found.regimes.find(({ id }) => id === 'gas')!.chances
    close(chances.find(({ name }) => name === 'runs out before full bump')!.chance, out, { abs: 0.02 })
    for (const id of ['bump.forceSlow', 'bump.forceFast', 'bump.stopForceFast', 'zones.engagement.energy']) {
      const { present, why, low, high } = found.figure(id)
      expect([present, high]).toEqual([1, Infinity])
      expect(Number.isFinite(low)).toBe(true)
      expect(why).toContain('gas runs out')
    }
    expect(noEndText(found)).toContain(`in ${Math.round(100 * chances[1]!.chance)} % of the trials`)
    expect(Number.isFinite(found.figure('travel.bump').high)).toBe(true)
    expect(found.figure('engagement.wheel').present).toBe(1)
    // One measurement alone is varied: all the doubt is its own, and once it is measured to 5 % of its size the force has an end, by hand.
    const [first] = found.ranking('bump.stopForceFast')
    expect([first!.share > 0.9, first!.width]).toEqual([true, Infinity])
    const area = (Math.PI / 4) * 0.035 ** 2
    const force = (drawn: number) => area * ((stop.charge + 101_325) * (drawn / (drawn - aside)) ** 1.4 - 101_325)
    const [low, high] = [force(volume * (1 + 0.05 * 0.9)), force(volume * (1 - 0.05 * 0.9))]
    close(first!.narrowed, high - low, { rel: 0.05 })
  })

  it('keeps an end where the gas all but always lasts', () => {
    const doubtful: Axle = { ...axle, assumed: ['corner.stop.gasVolume'] }
    const found = sure(only({ 'front.corner.stop.gasVolume': 0.3 * stop.gasVolume }, doubtful))
    expect(Number.isFinite(found.figure('bump.forceFast').high)).toBe(true)
    expect(noEndText(found)).toBeNull()
  })

  it('says in how many trials there is such a figure at all', () => {
    // The stop is only just met before the chassis touches.
    const late: Axle = { ...axle, corner: { ...axle.corner, clearance: { bump: 0.081, droop: 0.1 } } }
    const found = sure(only({ 'front.corner.stop.gap': 0.002 }, late))
    close(found.figure('engagement.wheel').present, 0.75, { abs: 0.05 })
  })
})
