import { expect, test } from 'vitest'
import { setupLoads } from '../../../../core/loads/ledger.ts'
import type { Load } from '../../../../core/plan/schema.ts'
import { demandsView } from '../../../../renderer/charts/plate/demands.ts'
import { demandsGeometry } from '../../../../renderer/charts/plate/demands-geometry.ts'
import { plateFrame } from '../../../../renderer/charts/plate/frame.ts'
import { wheelAxis } from '../../../../renderer/charts/plate/wheel-axis.ts'
import { plainAxle, plainPlan } from '../../../core/loads/plain-car.ts'
import { evenFont } from './arbitrary-view.ts'

const crew: Load = { id: 'crew', name: 'Two people', kind: 'payload', masses: { front: 100 } }
const water: Load = { id: 'water', name: 'Water', kind: 'payload', masses: { front: 40 } }
const brake: Load = { id: 'brake', name: '', kind: 'braking', deceleration: 5 }
const spin: Load = { id: 'spin', name: 'Too hard', kind: 'cornering', lateral: 60 }

const view = (...loads: Load[]) => {
  const plan = plainPlan([plainAxle({ rate: 20_000, weight: 4000 })], {}, loads)
  const [ledger] = setupLoads(plan, plan.setups[0]!).ledger
  return demandsView(ledger!, ledger!)
}

test('nothing to carry, nothing to draw', () => {
  expect(view()).toBeNull()
})

test('a single load stands for all; two have a bar together and what is left', () => {
  expect(view(crew)?.together).toBeNull()
  const two = view(crew, water)
  expect(two?.spans.map(({ id, label, short }) => [id, label, short])).toEqual([
    ['crew', 'Two people', 'Two people'],
    ['water', 'Water', 'Water'],
  ])
  expect(two?.together?.short).toBe('Both')
  expect(two?.together?.to).toBeCloseTo((140 * 9.80665) / 2 / 20_000, 6)
  expect(two?.balance?.beforeBump).toBeGreaterThan(0)
  expect(two?.otherBalance).toEqual(two?.balance)
})

test('a load that needs another axle is not drawn, one that rolls the car has no end', () => {
  const shown = view(crew, brake, spin)
  expect(shown?.spans.map(({ id, to }) => [id, to === null])).toEqual([
    ['crew', false],
    ['spin', true],
  ])
  expect(shown?.balance).toBeNull()
})

test('loads that find no room for their names are counted, the largest stay', () => {
  const span = (id: string, to: number) => ({ id, label: 'A load of some length', short: 'Loaded', from: 0, to })
  const many = Array.from({ length: 14 }, (_, index) => span(`load-${index}`, index % 2 === 0 ? 0.2 : 0.01 * index))
  const frame = plateFrame(804, 513, many.length)
  const axis = wheelAxis(frame, { bump: 0.25, droop: -0.2, reserve: 0.25 })
  const shown = { spans: many, together: null, balance: null, otherBalance: null }
  const drawn = demandsGeometry(frame, axis, shown, evenFont(0.55))
  expect(drawn?.hidden).toBeGreaterThan(0)
  expect((drawn?.bars.length ?? 0) + (drawn?.hidden ?? 0)).toBe(14)
  expect(drawn?.bars.every(bar => bar.name === 'Loaded')).toBe(true)
  expect(drawn?.bars.filter(bar => bar.span.to === 0.2)).not.toHaveLength(0)
  expect(Math.min(...(drawn?.bars ?? []).map(bar => bar.span.to ?? 0))).toBeGreaterThan(0.05)
})
