import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { planBudget } from '../../core/budget/budget.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import { formatPlan } from '../../core/plan/file-text.ts'
import { measurementPaths } from '../../core/plan/measurements.ts'
import { INCH } from '../../core/units/constants.ts'
import { seed, seedFolder, seedNames, seedText } from './seed.ts'

const axles = seedNames.flatMap(name =>
  seed(name).setups.flatMap(setup =>
    setup.axles.map(axle => ({ title: `${name}, ${setup.name}, ${axle.id}`, name, setup, axle })),
  ),
)

describe('the demo plans', () => {
  it('are three, and each is told of in the README beside them', () => {
    const told = [...readFileSync(path.join(seedFolder, 'README.md'), 'utf8').matchAll(/`([^`]+\.stopgap)`/g)]
    expect(told.map(([, name]) => name)).toEqual(seedNames)
    expect(seedNames).toHaveLength(3)
  })

  it.each(seedNames)('%s is written as Stopgap writes it, so that saving changes nothing', name =>
    expect(formatPlan(seed(name))).toBe(seedText(name)),
  )

  it.each(seedNames)('%s has every kind of load, every kind of terrain, and targets', name => {
    const plan = seed(name)
    expect(plan.loads.map(({ kind }) => kind).sort()).toEqual(['braking', 'cornering', 'payload', 'terrain'])
    expect(plan.terrains.map(({ kind }) => kind).sort()).toEqual(['landing', 'ledge', 'rough', 'whoops'])
    expect(Object.keys(plan.targets ?? {}).sort()).toEqual([
      'coiloverShare',
      'coiloverTravel',
      'landingDrop',
      'shockLeft',
      'stopPressure',
    ])
  })

  it('show every kind of stop and every linkage that has points or rows', () => {
    expect(new Set(axles.map(({ axle }) => axle.corner.stop?.kind))).toEqual(new Set(['hydraulic', 'elastomer']))
    expect(new Set(axles.map(({ axle }) => axle.corner.linkage.kind))).toEqual(new Set(['arm', 'table', 'axle']))
    expect(axles.some(({ axle }) => axle.corner.clearance.droop !== null)).toBe(true)
    expect(axles.every(({ axle }) => axle.corner.springs.crossover !== null)).toBe(true)
  })

  it('mark as assumed only what an axle has', () => {
    const unknown = axles.flatMap(({ title, axle }) =>
      (axle.assumed ?? []).filter(given => !measurementPaths(axle).includes(given)).map(given => `${title}: ${given}`),
    )
    expect(unknown).toEqual([])
    expect(axles.every(({ axle }) => (axle.assumed ?? []).length > 0)).toBe(true)
  })
})

describe('each axle of the demo plans', () => {
  const found = axles.map(({ title, name, setup, axle }) => ({
    title,
    axle,
    budget: planBudget(seed(name))
      .setups.find(({ id }) => id === setup.id)!
      .axles.find(({ id }) => id === axle.id)!,
  }))

  it.each(found)('$title: rests within a millimetre of its measured ride height', ({ budget }) =>
    expect(Math.abs(budget.static.position)).toBeLessThan(1e-3),
  )

  it.each(found)('$title: has travel, rates and forces a builder would take for real', ({ axle, budget }) => {
    const { stop, shock, cornerMass, unsprungMass } = axle.corner
    const sprungMass = cornerMass - unsprungMass
    const inInches = (value: number) => value / INCH
    const onSprings = cornerModel({ ...axle.corner, stop: null })
    const figures = {
      bump: inInches(budget.travel.bump),
      droop: inInches(budget.travel.droop),
      stroke: inInches(shock.stroke),
      ratio: budget.ride.motionRatio,
      rideFrequency: Math.sqrt(onSprings.wheelRate(0, 'slow') / sprungMass) / (2 * Math.PI),
      shockLeft: inInches(budget.shockLeftAtBump),
      mainLeft: inInches(budget.mainSpring.leftAtBump),
    }
    const between = (value: number, [least, most]: readonly [number, number]) => value >= least && value <= most
    const bounds = {
      bump: [3, 11],
      droop: [6, 10],
      stroke: [8, 18],
      ratio: [0.5, 0.91],
      rideFrequency: [0.8, 1.5],
      shockLeft: [0.5, 4],
      mainLeft: [0.5, 4],
    } as const
    const outside = Object.entries(figures).filter(
      ([key, value]) => !between(value, bounds[key as keyof typeof bounds]),
    )
    expect(outside).toEqual([])
    expect(stop).not.toBeNull()
  })
})
