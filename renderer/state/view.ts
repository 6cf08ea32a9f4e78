import type { AxleId } from '../../core/plan/schema.ts'
import { closeGesture } from './edit.ts'
import { resultsShown } from './selectors.ts'
import type { ChangesWay, Dialog, Refusal, View } from './state.ts'
import type { Store } from './store.ts'

function look(store: Store, change: Partial<View>): void {
  const state = store.read()
  const keys = Object.keys(change) as (keyof View)[]
  if (keys.every(key => Object.is(state.view[key], change[key]))) return
  store.write({ ...state, view: { ...state.view, ...change } })
}

export const showPage = (store: Store, page: string) => look(store, { page })

/** The page of changes, the way it is asked for. */
export const showChanges = (store: Store, changes: ChangesWay) => look(store, { page: 'changes', changes })

export function showAxle(store: Store, axle: AxleId): void {
  closeGesture(store)
  look(store, { axle, finding: null })
}

/** Shows a setup. One made from another is compared with that one; else the one it was compared with becomes the one left. */
export function showSetup(store: Store, setup: string): void {
  closeGesture(store)
  const { plan, view } = store.read()
  const { setup: before, compared } = view
  const origin = plan.setups.find(({ id }) => id === setup)?.madeFrom?.setup
  const known = origin !== setup && plan.setups.some(({ id }) => id === origin)
  const other = known && origin !== undefined ? origin : setup === compared ? before : compared
  look(store, { setup, compared: other, finding: null })
}

export const compareWith = (store: Store, compared: string | null) => look(store, { compared })

export const rideWholeCar = (store: Store, wholeCar: boolean) => look(store, { wholeCar })
export const showTerrain = (store: Store, terrain: string) => look(store, { terrain })

/** Puts the wheel somewhere in the travel, m from ride height. */
export function moveWheel(store: Store, wheel: number): void {
  const { model } = resultsShown(store.read())
  look(store, { wheel: Math.min(model.bump, Math.max(model.droop, wheel)) })
}

export const focusField = (store: Store, field: string | null) => look(store, { field })
export const focusFinding = (store: Store, finding: string | null) => look(store, { finding })

export const fold = (store: Store, folds: Readonly<Record<string, boolean>>) =>
  look(store, { folds: { ...store.read().view.folds, ...folds } })

/** Counts a load among the demands, or leaves it out. */
export function countLoad(store: Store, id: string, counted: boolean): void {
  const { loadsOff } = store.read().view
  if (loadsOff.includes(id) === !counted) return
  look(store, { loadsOff: counted ? loadsOff.filter(each => each !== id) : [...loadsOff, id] })
}

export const openDialog = (store: Store, dialog: Dialog | null) => look(store, { dialog })

export const showGuide = (store: Store, guide: boolean) => look(store, { guide })

export const refuse = (store: Store, place: string, refusal: Refusal) =>
  look(store, { refused: { ...store.read().view.refused, [place]: refusal } })

export function pardon(store: Store, place: string): void {
  const { [place]: gone, ...refused } = store.read().view.refused
  if (gone !== undefined) look(store, { refused })
}
