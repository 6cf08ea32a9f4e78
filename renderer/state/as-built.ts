import type { Axle } from '../../core/plan/schema.ts'
import { edit, type Outcome } from './edit.ts'
import { freeId, freeName } from './setups.ts'
import type { Store } from './store.ts'

/** A setup of what was really built, beside the plan it came from, in one step of undo. It is shown next. */
export function addAsBuilt(store: Store, from: string, axle: Axle): Outcome {
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
  const built = { ...planned, id, name, axles: planned.axles.map(each => (each.id === axle.id ? axle : each)) }
  const problems = edit(store, `new setup ${name}`, plan => {
    plan.setups.push(built)
  })
  if (problems.length > 0) return problems
  const next = store.read()
  store.write({ ...next, view: { ...next.view, setup: id, compared: from, finding: null, refused: {} } })
  return []
}
