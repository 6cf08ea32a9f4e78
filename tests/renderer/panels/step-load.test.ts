import { expect, test } from 'vitest'
import { GRAVITY } from '../../../core/units/constants.ts'
import { stepLoad } from '../../../renderer/panels/measurements/step-load.ts'
import { addLoad } from '../../../renderer/state/demands.ts'
import { closeGesture, undo } from '../../../renderer/state/edit.ts'
import { shownAxle } from '../../../renderer/state/selectors.ts'
import { aStore } from '../some-files.ts'

const last = (store: ReturnType<typeof aStore>) => store.read().plan.loads.at(-1)!

test('a load takes the next mark of its own field, is known from then on, and steps of one hold are undone as one', () => {
  const store = aStore()
  addLoad(store, 'cornering')
  const before = store.read().plan
  const { id } = last(store)
  for (let i = 0; i < 3; i += 1) stepLoad(store, id, 1, false, 'held')
  closeGesture(store)
  const load = last(store)
  const size = load.kind === 'cornering' ? load.lateral / GRAVITY : Number.NaN
  expect(size).toBeGreaterThan(0.5)
  expect(Math.abs(size * 100 - Math.round(size * 100))).toBeLessThan(1e-6)
  expect(undo(store)).toMatch(/^sideways .* g$/)
  expect(store.read().plan).toEqual(before)
})

test('a payload is stepped on the axle shown; what asks for nothing is not stepped below it', () => {
  const store = aStore()
  addLoad(store, 'payload')
  const mine = shownAxle(store.read()).axle.id
  stepLoad(store, last(store).id, 1, true, 'once')
  const load = last(store)
  expect(load.kind === 'payload' && load.masses[mine]! > 0).toBe(true)
  addLoad(store, 'terrain')
  const { id } = last(store)
  for (let i = 0; i < 60; i += 1) stepLoad(store, id, -1, true, 'down')
  const ground = last(store)
  expect(ground.kind === 'terrain' && ground.amplitude).toBeGreaterThanOrEqual(0)
  const plan = store.read().plan
  stepLoad(store, 'nobody', 1, false, 'none')
  expect(store.read().plan).toBe(plan)
})
