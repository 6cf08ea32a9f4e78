import { expect, test } from 'vitest'
import { setupLoads } from '../../../../core/loads/ledger.ts'
import type { Load } from '../../../../core/plan/schema.ts'
import { inside, overlap } from '../../../../renderer/charts/placement/box.ts'
import { type DemandSpan, demandsView } from '../../../../renderer/charts/plate/demands.ts'
import { demandCount, demandsGeometry } from '../../../../renderer/charts/plate/demands-geometry.ts'
import { plateFrame } from '../../../../renderer/charts/plate/frame.ts'
import { wheelAxis } from '../../../../renderer/charts/plate/wheel-axis.ts'
import { plainAxle, plainPlan } from '../../../core/loads/plain-car.ts'
import { evenFont } from './arbitrary-view.ts'

const crew: Load = { id: 'crew', name: 'Two people', kind: 'payload', masses: { front: 100 } }
const water: Load = { id: 'water', name: 'Water', kind: 'payload', masses: { front: 40 } }
const brake: Load = { id: 'brake', name: '', kind: 'braking', deceleration: 5 }
const spin: Load = { id: 'spin', name: 'Too hard', kind: 'cornering', lateral: 60 }

const counting = (chosen: string[] | undefined, ...loads: Load[]) => {
  const plan = plainPlan([plainAxle({ rate: 20_000, weight: 4000 })], {}, loads)
  const [ledger] = setupLoads(plan, plan.setups[0]!, chosen).ledger
  return demandsView(ledger!, ledger!)
}
const view = (...loads: Load[]) => counting(undefined, ...loads)

test('nothing to carry leaves room for an offer', () => {
  expect(view()).toEqual({ spans: [], together: null, balance: null, otherBalance: null })
  expect(demandCount(view())).toBe(1)
  expect(demandCount(null)).toBe(0)
})

test('a single load stands for all; two have a bar together and what is left', () => {
  expect(view(crew).together).toBeNull()
  expect(view(crew).spans.map(({ short, tight }) => [short, tight])).toEqual([['Payload', 'Load']])
  const two = view(crew, water)
  expect(two.spans.map(({ id, label, short, tight }) => [id, label, short, tight])).toEqual([
    ['crew', 'Two people', 'Two people', 'Two people'],
    ['water', 'Water', 'Water', 'Water'],
  ])
  expect(two.together?.short).toBe('Both')
  expect(two.together?.to).toBeCloseTo((140 * 9.80665) / 2 / 20_000, 6)
  expect(two.balance?.beforeBump).toBeGreaterThan(0)
  expect(two.otherBalance).toEqual(two.balance)
})

test('a load that needs another axle and one that rolls the car have no end, and say which', () => {
  const shown = view(crew, brake, spin)
  expect(shown.spans.map(({ id, to, outcome, counted }) => [id, to === null, outcome, counted])).toEqual([
    ['crew', false, 'settles', true],
    ['brake', true, 'needs two axles', true],
    ['spin', true, 'rolls over', true],
  ])
  expect(shown.balance).toBeNull()
})

test('a load that is not counted stays, and is in nothing that adds up', () => {
  const shown = counting(['crew'], crew, water)
  expect(shown.spans.map(({ id, counted }) => [id, counted])).toEqual([
    ['crew', true],
    ['water', false],
  ])
  expect(shown.spans[1]?.to).toBe(view(crew, water).spans[1]?.to)
  expect(shown.together).toBeNull()
  expect(shown.balance).toEqual(view(crew).balance)
  expect(counting([], crew, water).balance).toBeNull()
})

const frameFor = (count: number) => plateFrame(804, 513, count)
const span = (id: string, to: number): DemandSpan => ({
  id,
  label: 'A load of some length',
  short: 'Loaded up to the roof',
  tight: 'Load',
  from: 0,
  to,
  outcome: 'settles',
  counted: true,
  assumed: false,
})
const drawnOf = (spans: DemandSpan[]) => {
  const frame = frameFor(spans.length)
  const axis = wheelAxis(frame, { bump: 0.25, droop: -0.2, reserve: 0.25 })
  const shown = { spans, together: null, balance: null, otherBalance: null }
  return demandsGeometry(frame, axis, shown, evenFont(0.55))!
}

test('what is pressed lies side by side, is large enough for a finger and covers its bar', () => {
  const { bars, column } = drawnOf([0.1, -0.05, 0, 0.2].map((to, i) => span(`load-${i}`, to)))
  expect(bars).toHaveLength(4)
  bars.forEach(({ nameReach, barReach, nameX, nameWidth, x, width, top, bottom }, i) => {
    for (const { width, height } of [nameReach, barReach]) expect(Math.min(width, height)).toBeGreaterThanOrEqual(24)
    expect(nameReach.x).toBeLessThanOrEqual(nameX - nameWidth / 2)
    expect(nameReach.x + nameReach.width).toBeGreaterThanOrEqual(nameX + nameWidth / 2)
    expect(inside({ x, y: top, width, height: bottom - top }, barReach)).toBe(true)
    const next = bars[i + 1]
    if (next === undefined) return
    expect(overlap(nameReach, next.nameReach)).toBe(false)
    expect(next.barReach.x).toBeCloseTo(barReach.x + barReach.width, 9)
  })
  expect(bars[0]!.nameReach.x).toBeGreaterThan(column.x)
  expect(bars[3]!.nameReach.x + bars[3]!.nameReach.width).toBeLessThan(column.right)
})

test('loads that find no room for their names are counted, the largest stay', () => {
  const many = Array.from({ length: 14 }, (_, index) => span(`load-${index}`, index % 2 === 0 ? 0.2 : 0.01 * index))
  const { bars, hidden } = drawnOf(many)
  expect(hidden).toBeGreaterThan(0)
  expect(bars.length + hidden).toBe(14)
  expect(bars.every(bar => bar.name === 'Load')).toBe(true)
  expect(bars.filter(bar => bar.span.to === 0.2)).not.toHaveLength(0)
  expect(Math.min(...bars.map(bar => bar.span.to ?? 0))).toBeGreaterThan(0.05)
})
