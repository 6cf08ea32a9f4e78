import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'
import { setupLoads } from '../../../core/loads/ledger.ts'
import { parsePlan } from '../../../core/plan/parse.ts'
import type { Load, Plan } from '../../../core/plan/schema.ts'
import { rollFrame } from '../../../renderer/charts/roll/roll-frame.ts'
import {
  type RollGeometry,
  rollGeometry,
  type SideInRoll,
  type Spot,
} from '../../../renderer/charts/roll/roll-geometry.ts'
import { bumpOf, carry, type PlainAxle, plainAxle, plainPlan, turn } from '../../core/loads/plain-car.ts'

const drawn = (plan: Plan): RollGeometry => {
  const found = rollGeometry(setupLoads(plan, plan.setups[0]!), plan.setups[0]!.axles[0]!.id)
  if (found === null) throw new Error('The axle has no place under these loads.')
  return found
}

const car = (given: Partial<PlainAxle>, loads: Load[], vehicle: Partial<Plan['vehicle']> = {}): Plan =>
  plainPlan([plainAxle({ rate: 40_000, weight: 4000, unsprungMass: 30, ...given })], vehicle, loads)

const spots = ({ outer, inner, chassis, axis, low, high }: RollGeometry): Spot[] => [
  ...[outer, inner].flatMap(({ wheel, stop }: SideInRoll) => [
    wheel,
    ...(stop === null ? [] : [stop.root, stop.foot, stop.pad]),
  ]),
  ...chassis,
  axis,
  low,
  high,
]

const finite = (geometry: RollGeometry) => {
  for (const { x, y } of spots(geometry)) expect([Number.isFinite(x), Number.isFinite(y)]).toEqual([true, true])
  const frame = rollFrame(geometry, 640, 250)
  expect(frame.height).toBeGreaterThan(100)
  expect(frame.height).toBeLessThan(400)
  for (const spot of spots(geometry)) {
    const { x, y } = frame.to(spot)
    expect(x).toBeGreaterThanOrEqual(0)
    expect(x).toBeLessThanOrEqual(640)
    expect(y).toBeLessThanOrEqual(frame.height)
  }
}

const seeds = path.join(import.meta.dirname, '../../../seeds')

describe.each(readdirSync(seeds).filter(name => name.endsWith('.stopgap')))('%s', name => {
  const parsed = parsePlan(JSON.parse(readFileSync(path.join(seeds, name), 'utf8')))
  if (!parsed.ok) throw new Error(`${name} cannot be read.`)
  const { plan } = parsed
  test.each(plan.setups.flatMap(setup => setup.axles.map(({ id }) => [setup, id] as const)))(
    'is drawn within its frame',
    (setup, id) => {
      const geometry = rollGeometry(setupLoads(plan, setup), id)
      expect(geometry).not.toBeNull()
      finite(geometry!)
    },
  )
})

describe.each(['independent', 'solid'] as const)('%s', suspension => {
  test('wheels stand on the ground and on the line the chassis is drawn from', () => {
    const geometry = drawn(car({ suspension }, [turn(4)]))
    const { outer, inner, chassis, roll, tire } = geometry
    finite(geometry)
    expect([outer.wheel.y, inner.wheel.y]).toEqual([tire.radius, tire.radius])
    expect(outer.travel - inner.travel).toBeCloseTo(1.5 * roll, 9)
    const [left, right] = chassis
    expect((left.y - right.y) / (right.x - left.x)).toBeCloseTo(roll, 9)
    expect(outer.carries + inner.carries).toBeCloseTo(8000, 3)
    // From the turn: m·h·a is all that the springs resist, with the weight that the lean moves outward.
    const mass = 8000 / 9.80665
    expect((outer.carries - inner.carries) * 0.75).toBeCloseTo(mass * 0.5 * (4 + 9.80665 * roll), 0)
  })
})

test('the gap that is drawn is the gap that is left, before and after they meet', () => {
  for (const name of readdirSync(seeds).filter(each => each.endsWith('.stopgap'))) {
    const parsed = parsePlan(JSON.parse(readFileSync(path.join(seeds, name), 'utf8')))
    if (!parsed.ok) throw new Error(`${name} cannot be read.`)
    const setup = parsed.plan.setups[0]!
    for (const { id } of setup.axles) {
      const { outer, inner } = rollGeometry(setupLoads(parsed.plan, setup), id)!
      for (const { stop } of [outer, inner]) {
        expect(stop!.foot.y - stop!.pad.y).toBeCloseTo(stop!.left, 9)
        expect(stop!.root.y).toBeGreaterThan(stop!.foot.y)
      }
    }
  }
})

test('without a stop none is drawn', () => {
  const { outer, inner } = drawn(car({}, [turn(4)]))
  expect([outer.stop, inner.stop]).toEqual([null, null])
})

test('without a turn it is level, and ground lifts neither side', () => {
  const { roll, outer, inner, off, chassis } = drawn(car({}, [carry({ front: 100 }), bumpOf(0.05)]))
  expect([roll, off]).toEqual([0, 0])
  expect(chassis[0].y).toBe(chassis[1].y)
  expect(outer.carries).toBe(inner.carries)
})

test('the wheel it leans away from leaves the ground by what the chassis leans further', () => {
  // One of two axles stiff enough to lift its inner wheel, the other to keep the car up.
  const axles = [
    plainAxle({ id: 'front', rate: 40_000, weight: 4000, antiRollRate: 300_000 }),
    plainAxle({ id: 'rear', rate: 40_000, weight: 4000 }),
  ]
  const geometry = drawn(plainPlan(axles, {}, [turn(9)]))
  const { outer, inner, off, roll, tire } = geometry
  finite(geometry)
  expect(off).toBeGreaterThan(0)
  expect(outer.wheel.y).toBe(tire.radius)
  expect(inner.wheel.y).toBe(tire.radius + off)
  expect(off + outer.travel - inner.travel).toBeCloseTo(1.5 * roll, 9)
})

test('a chassis below its roll axis leans into the turn: the inner side goes up', () => {
  const { outer, inner, roll } = drawn(car({}, [turn(4)], { cgHeight: 0.3, rollAxisHeight: 0.6 }))
  expect(roll).toBeGreaterThan(0)
  expect(inner.travel).toBeGreaterThan(outer.travel)
})

test('what rolls over is not drawn, nor an axle that is not there', () => {
  const plan = car({ rate: 4000 }, [turn(12)])
  const loads = setupLoads(plan, plan.setups[0]!)
  expect(loads.together.outcome).toBe('rolls over')
  expect(rollGeometry(loads, 'front')).toBeNull()
  const level = car({}, [])
  expect(rollGeometry(setupLoads(level, level.setups[0]!), 'rear')).toBeNull()
})
