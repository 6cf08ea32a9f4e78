import { describe, expect, test } from 'vitest'
import { INCH } from '../../../core/units/constants.ts'
import { copyTo, elsewhere } from '../../../renderer/state/copying.ts'
import { countMeasurements } from '../../../renderer/state/counts.ts'
import { cancelGesture, markAssumed, put } from '../../../renderer/state/edit.ts'
import { putLinkage, putSprings, putStop } from '../../../renderer/state/parts.ts'
import { isAssumed } from '../../../renderer/state/place.ts'
import { axleResults } from '../../../renderer/state/results.ts'
import { placeOf, shownAxle } from '../../../renderer/state/selectors.ts'
import { aPlan } from '../a-plan.ts'
import { aStore } from '../some-files.ts'

const assumed = (store: ReturnType<typeof aStore>, field: string) =>
  isAssumed(store.read().plan, placeOf(store.read(), field))

describe('an edit', () => {
  test('that contradicts the plan is refused, and the plan stays the object it was', () => {
    const store = aStore()
    const before = store.read()
    const problems = put(store, 'showing', 'corner.shock.showing', 15 * INCH)
    expect(problems.map(({ path }) => path)).toEqual(['setups[0].axles[1].corner.shock.showing'])
    expect(store.read()).toBe(before)
  })

  test('leaves every other axle the object it was, so that its results are not worked out again', () => {
    const store = aStore()
    const before = store.read().plan
    const results = axleResults(before.setups[1]!.axles[1]!, before)
    put(store, 'gap', 'corner.stop.gap', 0.01)
    const { plan } = store.read()
    expect(plan.setups[0]!.axles[0]).toBe(before.setups[0]!.axles[0])
    expect(axleResults(plan.setups[1]!.axles[1]!, plan)).toBe(results)
    expect(axleResults(plan.setups[0]!.axles[1]!, plan)).not.toBe(results)
  })

  test('taken back while under way leaves nothing behind', () => {
    const store = aStore()
    const { plan } = store.read()
    put(store, 'gap', 'corner.stop.gap', 0.01, 'typing')
    cancelGesture(store, 'another typing')
    expect(store.read().plan).not.toBe(plan)
    cancelGesture(store, 'typing')
    expect(store.read().plan).toBe(plan)
    expect(store.read().history.past).toHaveLength(0)
  })
})

describe('an assumed value', () => {
  test('is measured once somebody enters one, and can be marked either way', () => {
    const store = aStore()
    expect(assumed(store, 'corner.stop.charge')).toBe(true)
    put(store, 'charge', 'corner.stop.charge', 9e5)
    expect(assumed(store, 'corner.stop.charge')).toBe(false)
    markAssumed(store, 'charge', 'corner.stop.charge', true)
    expect(assumed(store, 'corner.stop.charge')).toBe(true)
    markAssumed(store, 'charge', 'corner.stop.charge', false)
    expect(assumed(store, 'corner.stop.charge')).toBe(false)
    expect(store.read().history.past.map(({ label }) => label)).toEqual(['charge', 'charge assumed', 'charge measured'])
  })

  test('of the vehicle is kept with the vehicle', () => {
    const store = aStore()
    put(store, 'wheelbase', 'vehicle.wheelbase', 2.9)
    expect(store.read().plan.vehicle.assumed).toEqual(['cgHeight', 'rollAxisHeight'])
  })

  test('is counted among the measurements', () => {
    const store = aStore()
    const before = countMeasurements(store.read().plan, 0, 1)
    put(store, 'charge', 'corner.stop.charge', 9e5)
    const after = countMeasurements(store.read().plan, 0, 1)
    expect(after).toEqual({ taken: before.taken + 1, assumed: before.assumed - 1 })
  })

  test('by a list counts for each value in it', () => {
    const store = aStore()
    putLinkage(store, 'table')
    expect(assumed(store, 'corner.linkage.rows')).toBe(true)
    const rows = (shownAxle(store.read()).axle.corner.linkage as { rows: { shock: number }[] }).rows
    put(store, 'shock', 'corner.linkage.rows.0.shock', rows[0]!.shock - 0.001)
    expect(assumed(store, 'corner.linkage.rows')).toBe(false)
  })
})

describe('another part', () => {
  test('has all its values assumed, and no marks of the part before', () => {
    const store = aStore()
    putStop(store, 'elastomer')
    const { axle } = shownAxle(store.read())
    expect(axle.corner.stop?.kind).toBe('elastomer')
    expect(axle.assumed?.filter(path => path.startsWith('corner.stop'))).toEqual([
      'corner.stop.gap',
      'corner.stop.curve',
    ])
    putStop(store, 'none')
    expect(shownAxle(store.read()).axle.assumed?.some(path => path.startsWith('corner.stop'))).toBe(false)
  })

  test.each(['ratio', 'table', 'arm', 'axle'] as const)('a linkage by %s is one the plan takes', kind => {
    const store = aStore()
    expect(putLinkage(store, kind)).toEqual([])
    expect(shownAxle(store.read()).axle.corner.linkage.kind).toBe(kind)
  })

  test('a spring put on top moves the marks of those below it', () => {
    const store = aStore()
    put(store, 'free', 'corner.springs.springs.1.freeLength', 0.6)
    expect(putSprings(store, 3)).toEqual([])
    const { axle } = shownAxle(store.read())
    expect(axle.corner.springs.springs.map(({ name }) => name)).toEqual(['helper', 'tender', 'main'])
    expect(axle.assumed?.filter(path => path.startsWith('corner.springs.springs')).sort()).toEqual([
      'corner.springs.springs.0.freeLength',
      'corner.springs.springs.0.rate',
      'corner.springs.springs.0.solidLength',
      'corner.springs.springs.1.freeLength',
      'corner.springs.springs.1.solidLength',
      'corner.springs.springs.2.solidLength',
    ])
  })
})

test('what another setup has is told where it differs, and can be made the same', () => {
  const store = aStore(aPlan())
  expect(elsewhere(store.read(), 'corner.stop.charge')).toEqual([])
  const before = shownAxle(store.read()).axle.corner.stop
  put(store, 'charge', 'corner.stop.charge', 9e5)
  expect(elsewhere(store.read(), 'corner.stop.charge')).toEqual([
    { setup: 'proposed', name: 'Proposed', value: before?.kind === 'hydraulic' ? before.charge : Number.NaN },
  ])
  copyTo(store, 'charge', 'corner.stop.charge', 'proposed')
  expect(elsewhere(store.read(), 'corner.stop.charge')).toEqual([])
  expect(isAssumed(store.read().plan, 'setups.1.axles.1.corner.stop.charge')).toBe(false)
})
