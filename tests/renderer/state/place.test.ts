import { expect, test } from 'vitest'
import { assumedList, normal, placeIn, putAt, valueAt } from '../../../renderer/state/place.ts'
import { aPlan } from '../a-plan.ts'

test('fields of the axle shown and fields of the plan find their place', () => {
  expect(placeIn('corner.stop.gap', 1, 0)).toBe('setups.1.axles.0.corner.stop.gap')
  expect(placeIn('vehicle.wheelbase', 1, 0)).toBe('vehicle.wheelbase')
  expect(placeIn('corner.springs.springs[1].rate', 0, 0)).toBe('setups.0.axles.0.corner.springs.springs.1.rate')
  expect(normal('setups[0].axles[1].track')).toBe('setups.0.axles.1.track')
})

test('values are read and written by path, and nothing is found where nothing is', () => {
  const plan = aPlan()
  putAt(plan, 'targets.coiloverShare', 0.5)
  expect(valueAt(plan, 'targets.coiloverShare')).toBe(0.5)
  putAt(plan, 'targets.coiloverShare', undefined)
  expect(plan.targets).toEqual({})
  expect(valueAt(plan, 'setups.7.axles.0.corner')).toBeUndefined()
})

test('only measurements of an axle or the vehicle can be assumed', () => {
  const plan = aPlan()
  expect(assumedList(plan, 'setups.0.axles.1.corner.stop.gap')).toEqual({
    holder: 'setups.0.axles.1',
    name: 'corner.stop.gap',
  })
  expect(assumedList(plan, 'vehicle.cgHeight')).toEqual({ holder: 'vehicle', name: 'cgHeight' })
  expect(assumedList(plan, 'targets.coiloverShare')).toBeNull()
  expect(assumedList(plan, 'setups.9.axles.1.corner.stop.gap')).toBeNull()
})
