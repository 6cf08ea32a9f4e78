import type { Axle } from '../../core/plan/schema.ts'
import { edit, type Outcome } from './edit.ts'
import { freeId, freeName } from './setups.ts'
import type { Store } from './store.ts'

/**
 * A setup of what was really built, beside the plan it came from, in one step of undo. It is shown next, and remembers what it was made from.
 * @param differences from what was planned, each in words
 */
export function addAsBuilt(store: Store, from: string, axle: Axle, differences: readonly string[]): Outcome {
  const { setups } = store.read().plan
  const planned = setups.find(({ id }) => id === from)
  if (planned === undefined) return []
  const id = freeId(
    'as-built',
    setups.map(setup => setup.id),
  )
  const name = freeName(
    'As built',
    setups.map(setup => setup.name),
  )
  const axles = planned.axles.map(each => (each.id === axle.id ? axle : each))
  const changes = differences.length === 0 ? ['built as planned'] : differences.map(text => text.slice(0, 300))
  const built = { id, name, axles, madeFrom: { setup: from, changes } }
  const problems = edit(store, `new setup ${name}`, plan => {
    plan.setups.push(built)
  })
  if (problems.length > 0) return problems
  const next = store.read()
  store.write({ ...next, view: { ...next.view, setup: id, compared: from, finding: null, refused: {} } })
  return []
}
