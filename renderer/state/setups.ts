import { current } from 'immer'
import type { AxleId } from '../../core/plan/schema.ts'
import { otherAxle } from '../../core/plan/starting.ts'
import { edit } from './edit.ts'
import { shownSetup } from './selectors.ts'
import type { Store } from './store.ts'
import { axlesGone } from './tolerances.ts'

/** The first name of a row that nobody has: Proposed, Proposed 2, … */
export function freeName(first: string, taken: readonly string[]): string {
  let name = first
  for (let n = 2; taken.includes(name); n++) name = `${first} ${n}`
  return name
}

export function freeId(stem: string, taken: readonly string[]): string {
  let id = stem
  for (let n = 2; taken.includes(id); n++) id = `${stem}-${n}`
  return id
}

/** A copy of the setup shown, to change and compare; it is shown next. */
export function addSetup(store: Store): void {
  const state = store.read()
  const { setup } = shownSetup(state)
  const { setups } = state.plan
  const id = freeId(
    'proposed',
    setups.map(each => each.id),
  )
  const name = freeName(
    'Proposed',
    setups.map(each => each.name),
  )
  const problems = edit(store, `new setup ${name}`, (plan, here) => {
    plan.setups.push({
      ...current(here.setup),
      id,
      name,
      madeFrom: { setup: here.setup.id, changes: ['a copy of it'] },
    })
  })
  if (problems.length > 0) return
  const next = store.read()
  store.write({ ...next, view: { ...next.view, setup: id, compared: setup.id, finding: null, refused: {} } })
}

/** Takes a setup out; the last one stays. */
export function removeSetup(store: Store, id: string): void {
  const state = store.read()
  const gone = state.plan.setups.find(setup => setup.id === id)
  if (gone === undefined || state.plan.setups.length === 1) return
  edit(store, `setup ${gone.name} removed`, plan => {
    plan.setups = plan.setups.filter(setup => setup.id !== id)
    axlesGone(plan)
  })
  const next = store.read()
  const { setups } = next.plan
  const setup = setups.some(each => each.id === next.view.setup) ? next.view.setup : setups[0]!.id
  const known = setups.some(each => each.id === next.view.compared && each.id !== setup)
  const compared = known ? next.view.compared : (setups.find(each => each.id !== setup)?.id ?? null)
  store.write({ ...next, view: { ...next.view, setup, compared, finding: null, refused: {} } })
}

export const renameSetup = (store: Store, id: string, name: string, gesture: string) =>
  edit(
    store,
    `setup name ${name}`,
    plan => {
      const setup = plan.setups.find(each => each.id === id)
      if (setup !== undefined) setup.name = name
    },
    gesture,
  )

/** Gives every setup the axle it lacks: the values of the one it has, all of them assumed. */
export const addAxle = (store: Store, id: AxleId) =>
  edit(store, `${id} axle added`, plan => {
    for (const setup of plan.setups)
      if (setup.axles.every(axle => axle.id !== id)) {
        setup.axles.push(otherAxle(current(setup.axles[0]!)))
        setup.axles.sort((a, b) => a.id.localeCompare(b.id))
      }
  })

export const removeAxle = (store: Store, id: AxleId) =>
  edit(store, `${id} axle removed`, plan => {
    for (const setup of plan.setups)
      if (setup.axles.length > 1) setup.axles = setup.axles.filter(axle => axle.id !== id)
    axlesGone(plan)
  })
