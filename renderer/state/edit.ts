import { type Draft, original, produce } from 'immer'
import type { Problem } from '../../core/plan/problem.ts'
import type { Axle, Plan, Setup } from '../../core/plan/schema.ts'
import { closeGesture as close, record, type Step, undo as stepBack, redo as stepForward } from './history.ts'
import { assumedEntry, assumedList, isAssumed, loadSized, normal, putAt, valueAt } from './place.ts'
import { problemsOfEdit } from './plan-checks.ts'
import { placeOf, shownAxle, shownSetup } from './selectors.ts'
import type { State } from './state.ts'
import type { Store } from './store.ts'

export interface Here {
  readonly setup: Draft<Setup>
  readonly axle: Draft<Axle>
}

export type Recipe = (plan: Draft<Plan>, here: Here) => void

/** What the plan says to an edit: nothing, or why it stays as it was. */
export type Outcome = readonly Problem[]

/** The plan after a recipe, or why it cannot be so. */
function attempt(state: State, recipe: Recipe): { plan: Plan; problems: Outcome } {
  const setup = shownSetup(state).index
  const axle = shownAxle(state).index
  const plan = produce(state.plan, draft => {
    const shown = draft.setups[setup]!
    recipe(draft, { setup: shown, axle: shown.axles[axle]! })
  })
  if (plan === state.plan) return { plan, problems: [] }
  const problems = problemsOfEdit(state.plan, plan)
  return problems.length === 0 ? { plan, problems } : { plan: state.plan, problems }
}

/**
 * The only way the plan changes. A plan that would make no sense is refused and stays as it was.
 * @param label what undo will call it: `gap 1 13/16 in`
 * @param gesture edits of one typing or one drag share it, and are undone as one
 */
export function edit(store: Store, label: string, recipe: Recipe, gesture: string | null = null): Outcome {
  const state = store.read()
  const { plan, problems } = attempt(state, recipe)
  if (problems.length > 0 || plan === state.plan) return problems
  const where = { setup: shownSetup(state).setup.id, axle: shownAxle(state).axle.id }
  const history = record(state.history, state.plan, plan, { label, where, gesture })
  store.write({ ...state, plan, history })
  return []
}

/** Ends the typing or drag under way, so that the next edit is an entry of its own. */
export function closeGesture(store: Store): void {
  const state = store.read()
  const history = close(state.history)
  if (history !== state.history) store.write({ ...state, history })
}

/** Takes the typing or drag under way back, as if it had not been. */
export function cancelGesture(store: Store, gesture: string): void {
  const state = store.read()
  const open = state.history.gesture
  if (open?.id !== gesture) return
  store.write({ ...state, plan: open.base, history: { past: open.past, future: open.future, gesture: null } })
}

function take(store: Store, step: Step | null): string | null {
  if (step === null) return null
  const state = store.read()
  const { plan, history, entry } = step
  const there = (id: string | null): boolean => plan.setups.some(each => each.id === id)
  const setup = there(entry.where.setup) ? entry.where.setup : state.view.setup
  // A comparison with a setup that is gone, or with itself, is one with the next there is, as where somebody removes it.
  const { compared: was } = state.view
  const stays = was === null || (was !== setup && there(was))
  const compared = stays ? was : (plan.setups.find(({ id }) => id !== setup)?.id ?? null)
  const view = { ...state.view, setup, compared, axle: entry.where.axle, refused: {} }
  store.write({ ...state, plan, history, view })
  return entry.label
}

/** The label of what was undone; null when there was nothing. */
export const undo = (store: Store): string | null => take(store, stepBack(store.read().plan, store.read().history))

export const redo = (store: Store): string | null => take(store, stepForward(store.read().plan, store.read().history))

function dropAssumed(plan: Draft<Plan>, place: string): void {
  const before = original(plan) as Plan
  const load = loadSized(before, place)
  if (load !== null) delete plan.loads[load]!.assumed
  const at = assumedList(before, place)
  const entry = assumedEntry(before, place)
  if (at === null || entry === null) return
  const list = (valueAt(before, `${at.holder}.assumed`) as string[]).filter(each => normal(each) !== entry)
  putAt(plan, `${at.holder}.assumed`, list.length === 0 ? undefined : list)
}

/** Puts a value where a field stands; undefined takes it away. What a person enters is measured from then on. */
export const put = (store: Store, label: string, field: string, value: unknown, gesture: string | null = null) =>
  edit(
    store,
    label,
    plan => {
      const place = placeOf(store.read(), field)
      if (Object.is(valueAt(plan, place), value)) return
      putAt(plan, place, value)
      dropAssumed(plan, place)
    },
    gesture,
  )

/** Marks a field as measured, or as assumed until somebody measures it. */
export function markAssumed(store: Store, name: string, field: string, assumed: boolean): Outcome {
  const place = placeOf(store.read(), field)
  if (isAssumed(store.read().plan, place) === assumed) return []
  return edit(store, `${name} ${assumed ? 'assumed' : 'measured'}`, plan => {
    if (!assumed) return dropAssumed(plan, place)
    const at = assumedList(plan as Plan, place)
    if (at === null) return
    const list = (valueAt(plan, `${at.holder}.assumed`) ?? []) as string[]
    putAt(plan, `${at.holder}.assumed`, [...list, at.name])
  })
}
