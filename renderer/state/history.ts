import type { AxleId, Plan } from '../../core/plan/schema.ts'
import { apply, type Change, changeBetween, isNoChange } from './change.ts'

/** Where the person was when they made an edit, so that undoing it shows what it undoes. */
export interface Where {
  readonly setup: string
  readonly axle: AxleId
}

/** One thing that can be undone. The label says it in the person's words: `gap 1 13/16 in`. */
export interface Entry extends Change {
  readonly label: string
  readonly where: Where
}

/** An edit under way: typing in one field, one drag. All of it is one entry. */
interface Gesture {
  readonly id: string
  readonly base: Plan
  readonly past: readonly Entry[]
  readonly future: readonly Entry[]
}

export interface History {
  readonly past: readonly Entry[]
  /** What can be redone, the next one last. */
  readonly future: readonly Entry[]
  readonly gesture: Gesture | null
}

export const emptyHistory: History = { past: [], future: [], gesture: null }

/** Entries kept; older ones are forgotten. */
const LONGEST = 300

export interface Edit {
  readonly label: string
  readonly where: Where
  /** Edits with the same gesture, one after the other, are one entry. */
  readonly gesture: string | null
}

/** The history after the plan went from `before` to `after`. */
export function record(history: History, before: Plan, after: Plan, { label, where, gesture }: Edit): History {
  const open =
    gesture !== null && history.gesture?.id === gesture
      ? history.gesture
      : { id: gesture ?? '', base: before, past: history.past, future: history.future }
  const change = changeBetween(open.base, after)
  const kept = gesture === null ? null : open
  if (isNoChange(change)) return { past: open.past, future: open.future, gesture: kept }
  const past = [...open.past, { label, where, ...change }].slice(-LONGEST)
  return { past, future: [], gesture: kept }
}

/** The edit under way is over: the next one is an entry of its own. */
export const closeGesture = (history: History): History =>
  history.gesture === null ? history : { ...history, gesture: null }

export interface Step {
  readonly plan: Plan
  readonly history: History
  readonly entry: Entry
}

/** The plan before the last entry; null when there is nothing to undo. */
export function undo(plan: Plan, history: History): Step | null {
  const entry = history.past.at(-1)
  if (entry === undefined) return null
  const past = history.past.slice(0, -1)
  return {
    plan: apply(plan, entry.inverse),
    history: { past, future: [...history.future, entry], gesture: null },
    entry,
  }
}

/** The plan after the entry undone last; null when there is nothing to redo. */
export function redo(plan: Plan, history: History): Step | null {
  const entry = history.future.at(-1)
  if (entry === undefined) return null
  const future = history.future.slice(0, -1)
  return { plan: apply(plan, entry.patches), history: { past: [...history.past, entry], future, gesture: null }, entry }
}
