import { current } from 'immer'
import type { Axle } from '../../core/plan/schema.ts'
import { edit, type Outcome } from './edit.ts'
import { shownSetup } from './selectors.ts'
import { freeId, freeName } from './setups.ts'
import type { Store } from './store.ts'

/**
 * A new setup: the one shown with one axle as changed. The one shown stays shown, and is compared with the new one; undone as one entry.
 * The new one remembers what it was made from.
 * @param changes what was done, each in words
 */
export function makeSetup(store: Store, axle: Axle, changes: readonly string[]): Outcome {
  const { setups } = store.read().plan
  const id = freeId(
    'proposed',
    setups.map(each => each.id),
  )
  const name = freeName(
    'Proposed',
    setups.map(each => each.name),
  )
  const problems = edit(store, `new setup ${name}: ${changes.join(' + ')}`.slice(0, 200), (plan, here) => {
    const { axles } = current(here.setup)
    const madeFrom = { setup: here.setup.id, changes: [...changes] }
    plan.setups.push({ id, name, axles: axles.map(each => (each.id === axle.id ? axle : each)), madeFrom })
  })
  if (problems.length > 0) return problems
  const next = store.read()
  store.write({ ...next, view: { ...next.view, setup: shownSetup(next).setup.id, compared: id } })
  return []
}
