import { expect, test } from 'vitest'
import { planUnusedTolerances } from '../../../core/tolerance/steps.ts'
import { addLoad, removeDemand } from '../../../renderer/state/demands.ts'
import { undo } from '../../../renderer/state/edit.ts'
import { putSprings } from '../../../renderer/state/parts.ts'
import { shownAxle } from '../../../renderer/state/selectors.ts'
import { addAxle, addSetup, removeAxle, removeSetup } from '../../../renderer/state/setups.ts'
import { putTolerance, toleranceProblems } from '../../../renderer/state/tolerances.ts'
import { aStore } from '../some-files.ts'

const values = (store: ReturnType<typeof aStore>) => store.read().plan.tolerances?.values

test('a tolerance is put in the plan, taken out again, and each undone as one step', () => {
  const store = aStore()
  expect(putTolerance(store, 'gap', 'front.corner.stop.gap', 0.002)).toEqual([])
  expect(values(store)).toEqual({ 'front.corner.stop.gap': 0.002 })
  expect(undo(store)).toBe('tolerance of gap')
  expect(store.read().plan.tolerances).toBeUndefined()
  putTolerance(store, 'gap', 'front.corner.stop.gap', 0.002)
  putTolerance(store, 'gap', 'front.corner.stop.gap', null)
  expect(store.read().plan.tolerances).toBeUndefined()
})

test('one that makes no sense is told before it is put, and changes nothing', () => {
  const store = aStore()
  const { plan } = store.read()
  expect(toleranceProblems(plan, 'front.corner.stop.gap', 0.002)).toEqual([])
  for (const wrong of [-0.001, 2e9, Number.NaN])
    expect(toleranceProblems(plan, 'front.corner.stop.gap', wrong)).toHaveLength(1)
  expect(putTolerance(store, 'gap', 'front.corner.stop.gap', -1)).toHaveLength(1)
  expect(store.read().plan).toBe(plan)
})

test('those of a load that is removed go with it and come back with it; another load of its name does not get them', () => {
  const store = aStore()
  addLoad(store, 'cornering')
  addLoad(store, 'braking')
  const { loads } = store.read().plan
  const [turn, brakes] = [loads.at(-2)!, loads.at(-1)!]
  putTolerance(store, 'turn', `loads.${turn.id}.lateral`, 0.5)
  putTolerance(store, 'brakes', `loads.${brakes.id}.deceleration`, 0.4)
  const before = store.read().plan
  removeDemand(store, 'loads', loads.length - 2)
  expect(values(store)).toEqual({ [`loads.${brakes.id}.deceleration`]: 0.4 })
  expect(planUnusedTolerances(store.read().plan)).toEqual([])
  addLoad(store, 'cornering')
  expect(store.read().plan.loads.at(-1)!.id).toBe(turn.id)
  expect(values(store)).toEqual({ [`loads.${brakes.id}.deceleration`]: 0.4 })
  undo(store)
  undo(store)
  expect(store.read().plan).toEqual(before)
})

test('a terrain that is removed takes no load’s tolerance along', () => {
  const store = aStore()
  addLoad(store, 'cornering')
  const { loads, terrains } = store.read().plan
  putTolerance(store, 'turn', `loads.${loads.at(-1)!.id}.lateral`, 0.5)
  if (terrains.length > 0) removeDemand(store, 'terrains', 0)
  expect(Object.keys(values(store)!)).toHaveLength(1)
})

test('those of an axle go once no setup has it, and come back with it', () => {
  const store = aStore()
  const mine = shownAxle(store.read()).axle.id
  const other = mine === 'front' ? 'rear' : 'front'
  if (store.read().plan.setups.some(({ axles }) => axles.length === 1)) addAxle(store, other)
  addSetup(store)
  putTolerance(store, 'gap', `${other}.corner.stop.gap`, 0.002)
  putTolerance(store, 'gap', `${mine}.corner.stop.gap`, 0.003)
  removeSetup(store, store.read().plan.setups.at(-1)!.id)
  expect(Object.keys(values(store)!)).toHaveLength(2)
  const before = store.read().plan
  removeAxle(store, other)
  expect(values(store)).toEqual({ [`${mine}.corner.stop.gap`]: 0.003 })
  undo(store)
  expect(store.read().plan).toEqual(before)
})

test('those of springs move with them as one comes in above or goes', () => {
  const store = aStore()
  for (const { id } of store.read().plan.setups.slice(1)) removeSetup(store, id)
  const { axle } = shownAxle(store.read())
  const main = axle.corner.springs.springs.length - 1
  const of = (place: number) => `${axle.id}.corner.springs.springs.${place}.rate`
  putTolerance(store, 'main', of(main), 700)
  putSprings(store, 3)
  expect(values(store)).toEqual({ [of(2)]: 700 })
  putTolerance(store, 'top', of(0), 300)
  putSprings(store, 1)
  expect(values(store)).toEqual({ [of(0)]: 700 })
})
