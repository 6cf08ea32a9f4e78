import { expect, test } from 'vitest'
import { comparedSetup, shownSetup } from '../../../renderer/state/selectors.ts'
import { addSetup, removeSetup, renameSetup } from '../../../renderer/state/setups.ts'
import { compareWith, showSetup } from '../../../renderer/state/view.ts'
import { aPlan } from '../a-plan.ts'
import { aStore } from '../some-files.ts'

const alone = () =>
  aStore(
    aPlan(plan => {
      plan.setups.pop()
    }),
  )

test('a new setup is a copy of the one shown, named Proposed first, shown and compared with its origin', () => {
  const store = alone()
  addSetup(store)
  addSetup(store)
  const { plan, view } = store.read()
  expect(plan.setups.map(({ id, name }) => [id, name])).toEqual([
    ['as-found', 'As found'],
    ['proposed', 'Proposed'],
    ['proposed-2', 'Proposed 2'],
  ])
  expect(plan.setups[1]!.axles).toEqual(plan.setups[0]!.axles)
  expect(plan.setups.map(({ madeFrom }) => madeFrom?.setup)).toEqual([undefined, 'as-found', 'proposed'])
  expect(view).toMatchObject({ setup: 'proposed-2', compared: 'proposed' })
  expect(store.read().history.past.map(({ label }) => label)).toEqual(['new setup Proposed', 'new setup Proposed 2'])
})

test('showing the compared setup swaps the two', () => {
  const store = aStore()
  expect(comparedSetup(store.read())?.setup.id).toBe('proposed')
  showSetup(store, 'proposed')
  expect(shownSetup(store.read()).setup.id).toBe('proposed')
  expect(comparedSetup(store.read())?.setup.id).toBe('as-found')
  compareWith(store, null)
  expect(comparedSetup(store.read())).toBeNull()
})

test('the last setup stays; a removed one is neither shown nor compared', () => {
  const store = aStore()
  showSetup(store, 'proposed')
  removeSetup(store, 'proposed')
  expect(shownSetup(store.read()).setup.id).toBe('as-found')
  expect(comparedSetup(store.read())).toBeNull()
  removeSetup(store, 'as-found')
  expect(store.read().plan.setups).toHaveLength(1)
})

test('renaming letter by letter is one entry', () => {
  const store = aStore()
  for (const name of ['P', 'Pl', 'Plan B']) renameSetup(store, 'proposed', name, 'rename')
  expect(store.read().history.past.map(({ label }) => label)).toEqual(['setup name Plan B'])
})
