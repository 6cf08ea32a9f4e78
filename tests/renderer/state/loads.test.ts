import { expect, test } from 'vitest'
import { startingLoads } from '../../../core/loads/starting-loads.ts'
import { markAssumed, put } from '../../../renderer/state/edit.ts'
import { isAssumed } from '../../../renderer/state/place.ts'
import { aPlan } from '../a-plan.ts'
import { aStore } from '../some-files.ts'

const withLoads = () =>
  aStore(
    aPlan(plan => {
      plan.loads = startingLoads(plan)
    }),
  )

test('a load whose size somebody enters is assumed no more; its name and the other loads change nothing', () => {
  const store = withLoads()
  put(store, 'name', 'loads.2.name', 'Sand corner')
  expect(isAssumed(store.read().plan, 'loads.2.lateral')).toBe(true)
  put(store, 'lateral', 'loads.2.lateral', 7)
  put(store, 'front', 'loads.0.masses.front', 80)
  expect(store.read().plan.loads.map(({ assumed }) => assumed ?? false)).toEqual([false, true, false, true])
  expect(isAssumed(store.read().plan, 'loads.2.lateral')).toBe(false)
})

test('the size a load was assumed with can be confirmed as it is', () => {
  const store = withLoads()
  const before = store.read().plan.loads[2]!
  markAssumed(store, 'lateral', 'loads.2.lateral', false)
  const { assumed, ...rest } = before
  expect(assumed).toBe(true)
  expect(store.read().plan.loads[2]).toEqual(rest)
})
