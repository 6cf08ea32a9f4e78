import { describe, expect, it } from 'vitest'
import type { AxleBudget } from '../../core/budget/results.ts'
import { circleArea, gasPressure } from '../../core/forces/gas.ts'
import { setupLoads } from '../../core/loads/ledger.ts'
import type { HydraulicStop, Plan } from '../../core/plan/schema.ts'
import { ATMOSPHERE, INCH, PSI } from '../../core/units/constants.ts'
import { seed, seedBudget } from './seed.ts'

const rearStop = (plan: Plan, setup: string): HydraulicStop => {
  const stop = plan.setups.find(({ id }) => id === setup)?.axles.find(({ id }) => id === 'rear')?.corner.stop
  if (stop?.kind !== 'hydraulic') throw new Error(`no hydraulic stop at the rear of ${setup}`)
  return stop
}

const ids = ({ findings }: AxleBudget) => findings.map(({ id }) => id)
const energyToBump = ({ zones }: AxleBudget) =>
  zones.filter(({ id }) => id !== 'droop').reduce((sum, { energy }) => sum + energy, 0)

describe('before-and-after', () => {
  const plan = seed('before-and-after.stopgap')
  const [found, proposed] = [seedBudget(plan, 'as-found', 'rear'), seedBudget(plan, 'proposed', 'rear')]
  const [before, after] = [rearStop(plan, 'as-found'), rearStop(plan, 'proposed')]

  it('begins with the setup as found and ends with the one proposed', () =>
    expect(plan.setups.map(({ id, name }) => [id, name])).toEqual([
      ['as-found', 'As found'],
      ['proposed', 'Proposed'],
    ]))

  it('changes nothing but the rear stop', () => {
    const without = ({ axles }: Plan['setups'][number]) =>
      axles.map(axle => (axle.id === 'rear' ? { ...axle, corner: { ...axle.corner, stop: null } } : axle))
    expect(without(plan.setups[1]!)).toEqual(without(plan.setups[0]!))
  })

  it('changes it by a 1 in spacer inside, with 0.4 cu in of oil left out, exactly', () => {
    const { length, outerDiameter, wall } = after.spacer!
    const metal = (circleArea(outerDiameter) - circleArea(outerDiameter - 2 * wall)) * length
    const oil = 0.4 * INCH ** 3
    const volume = before.gasVolume - circleArea(before.shaftDiameter) * length - metal + oil
    expect(length / INCH).toBeCloseTo(1, 9)
    expect(after.stroke).toBeCloseTo(before.stroke - length, 12)
    expect(after.gap).toBeCloseTo(before.gap + length, 12)
    expect(Math.abs(after.gasVolume - volume) / volume).toBeLessThan(1e-9)
    const { spacer: _, stroke, gap, gasVolume, charge, ...rest } = after
    expect({ ...before, ...rest }).toEqual(before)
    expect(charge).toBeGreaterThan(before.charge)
  })

  it('fits the spacer over the shaft and inside the body', () => {
    const { outerDiameter, wall } = after.spacer!
    expect(outerDiameter - 2 * wall).toBeGreaterThan(after.shaftDiameter)
    expect(outerDiameter).toBeLessThan(after.body!.bore)
  })

  it('moves engagement from a quarter of the bump travel to nearly half, and the closed position not at all', () => {
    expect(found.engagement!.share).toBeGreaterThan(0.2)
    expect(found.engagement!.share).toBeLessThan(0.3)
    expect(proposed.engagement!.share).toBeGreaterThan(0.45)
    expect(proposed.engagement!.share).toBeLessThan(0.5)
    expect(proposed.travel.bump).toBeCloseTo(found.travel.bump, 9)
  })

  it('brings the pressure of a hit from above the rating to below it', () => {
    const closed = (stop: HydraulicStop) =>
      gasPressure(
        { area: circleArea(stop.shaftDiameter), charge: stop.charge, volume: stop.gasVolume },
        stop.stroke,
        'fast',
      ) - ATMOSPHERE
    expect(closed(before)).toBeGreaterThan(before.body!.ratedPressure!)
    expect(closed(after)).toBeLessThan(after.body!.ratedPressure!)
    expect(ids(found)).toEqual(expect.arrayContaining(['stop-over-rated-pressure', 'little-coilover-travel']))
    expect(proposed.findings.filter(({ severity }) => severity !== 'note')).toEqual([])
  })

  it('keeps the loads together off the rear stop, which took more than an inch and a half of it before', () => {
    const [left, leftAfter] = plan.setups.map(
      setup => setupLoads(plan, setup).ledger.find(({ id }) => id === 'rear')!.balance.beforeStop!,
    )
    expect(left! / INCH).toBeLessThan(-1.5)
    expect(leftAfter!).toBeGreaterThan(0)
  })

  it('costs a little energy on the way', () => {
    const lost = 1 - energyToBump(proposed) / energyToBump(found)
    expect(lost).toBeGreaterThan(0)
    expect(lost).toBeLessThan(0.05)
  })
})

describe('new-chassis', () => {
  const plan = seed('new-chassis.stopgap')
  const fronts = ['two-inch', 'three-inch', 'four-inch'].map(setup => seedBudget(plan, setup, 'front'))

  it('differs in the front stop alone', () => {
    const without = ({ axles }: Plan['setups'][number]) =>
      axles.map(axle => (axle.id === 'front' ? { ...axle, corner: { ...axle.corner, stop: null } } : axle))
    for (const setup of plan.setups) expect(without(setup)).toEqual(without(plan.setups[0]!))
    expect(plan.setups.map(({ axles }) => axles.map(({ corner }) => corner.linkage.kind))).toEqual(
      Array(3).fill(['arm', 'table']),
    )
  })

  it('closes every stop at the same wheel position', () => {
    for (const { travel } of fronts) {
      expect(travel.bumpLimitedBy).toBe('stop closed')
      expect(travel.bump).toBeCloseTo(fronts[0]!.travel.bump, 9)
    }
  })

  it('engages earlier and ends softer the longer the stop is', () => {
    const shares = fronts.map(({ engagement }) => engagement!.share)
    const forces = fronts.map(({ bump }) => bump.stopForceFast)
    expect(shares).toEqual([...shares].sort((a, b) => b - a))
    expect(forces).toEqual([...forces].sort((a, b) => b - a))
    expect(new Set(shares).size).toBe(3)
    expect(new Set(forces).size).toBe(3)
  })

  it('misses the target share with the four-inch stop alone', () =>
    expect(fronts.map(front => ids(front).includes('little-coilover-travel'))).toEqual([false, false, true]))
})

describe('on-its-stops', () => {
  const plan = seed('on-its-stops.stopgap')
  const [front, rear] = [seedBudget(plan, 'as-found', 'front'), seedBudget(plan, 'as-found', 'rear')]

  it('has two solid axles', () =>
    expect(
      plan.setups[0]!.axles.map(({ suspension, corner }) => [suspension, corner.linkage.kind, corner.stop?.kind]),
    ).toEqual([
      ['solid', 'axle', 'hydraulic'],
      ['solid', 'axle', 'hydraulic'],
    ]))

  it('rides on its rear stops, which carry more than a quarter of the weight', () => {
    expect(rear.engagement!.wheel / INCH).toBeCloseTo(-0.5, 9)
    expect(rear.zones.find(({ id }) => id === 'coilover')!.length).toBe(0)
    expect(rear.static.stopForce / rear.static.sprungWeight).toBeGreaterThan(0.25)
    const finding = rear.findings.find(({ id }) => id === 'rides-on-stop')!
    expect(finding.values.share).toBeCloseTo(rear.static.stopForce / rear.static.sprungWeight, 9)
    expect(rearStop(plan, 'as-found').charge / PSI).toBeCloseTo(150, 6)
  })

  it('has nothing to warn of at the front', () => {
    expect(front.static.stopForce).toBe(0)
    expect(front.findings.filter(({ severity }) => severity !== 'note')).toEqual([])
  })
})
