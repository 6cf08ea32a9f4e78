import type { Plan } from '../../core/plan/schema.ts'
import { type Entry, emptyHistory, type History, redo, undo } from './history.ts'

/** The undo history as text, kept beside the plan so that undo outlives the window. */
export const historyText = ({ past, future }: History): string => JSON.stringify({ version: 1, past, future })

const isText = (value: unknown): value is string => typeof value === 'string'
const isGroup = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null

const isPatch = (value: unknown): boolean =>
  isGroup(value) &&
  ['replace', 'add', 'remove'].includes(value.op as string) &&
  Array.isArray(value.path) &&
  value.path.every(step => (isText(step) || Number.isInteger(step)) && step !== '__proto__' && step !== 'constructor')

const isEntry = (value: unknown): value is Entry =>
  isGroup(value) &&
  isText(value.label) &&
  isGroup(value.where) &&
  isText(value.where.setup) &&
  (value.where.axle === 'front' || value.where.axle === 'rear') &&
  [value.patches, value.inverse].every(list => Array.isArray(list) && list.every(isPatch))

const isEntries = (value: unknown): value is Entry[] => Array.isArray(value) && value.every(isEntry)

/** Walks the history to both ends: it fits the plan if every step can be taken and each end is a plan still. */
function fits(plan: Plan, history: History, isPlan: (value: unknown) => boolean): boolean {
  for (const step of [undo, redo]) {
    let at: { plan: Plan; history: History } | null = { plan, history }
    let last = plan
    try {
      for (; at !== null; at = step(at.plan, at.history)) last = at.plan
    } catch {
      return false
    }
    if (!isPlan(last)) return false
  }
  return true
}

/** The history kept for a plan; null when the text is not one, or does not fit the plan. */
export function readHistory(text: string, plan: Plan, isPlan: (value: unknown) => boolean): History | null {
  let kept: unknown
  try {
    kept = JSON.parse(text)
  } catch {
    return null
  }
  if (!isGroup(kept) || kept.version !== 1 || !isEntries(kept.past) || !isEntries(kept.future)) return null
  const history = { ...emptyHistory, past: kept.past, future: kept.future }
  return fits(plan, history, isPlan) ? history : null
}
