import { expect, test } from 'vitest'
import { putLinkage, putStop } from '../../../renderer/state/parts.ts'
import { shownAxle } from '../../../renderer/state/selectors.ts'
import { aStore } from '../some-files.ts'

const kinds = ['ratio', 'table', 'arm', 'axle'] as const

test('every kind of linkage gone through, the one that was measured comes back as it was', () => {
  const store = aStore()
  const { axle } = shownAxle(store.read())
  const { kind } = axle.corner.linkage
  for (const other of kinds.filter(each => each !== kind)) expect(putLinkage(store, other)).toEqual([])
  expect(shownAxle(store.read()).axle.assumed).toContain('corner.linkage.shockLower')
  putLinkage(store, kind)
  expect(shownAxle(store.read()).axle).toEqual(axle)
})

test('a stop taken out and put in again keeps what was measured of it; one of another kind is assumed', () => {
  const store = aStore()
  const { axle } = shownAxle(store.read())
  const kind = axle.corner.stop!.kind
  putStop(store, 'none')
  expect(shownAxle(store.read()).axle.corner.stop).toBeNull()
  putStop(store, kind === 'hydraulic' ? 'elastomer' : 'hydraulic')
  expect(shownAxle(store.read()).axle.assumed).toContain('corner.stop.gap')
  putStop(store, kind)
  expect(shownAxle(store.read()).axle).toEqual(axle)
  expect(store.read().history.past.map(({ label }) => label)).toEqual(['no stop', 'foam stop', 'hydraulic stop'])
})
