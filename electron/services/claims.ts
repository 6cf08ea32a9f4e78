import { setTimeout as pause } from 'node:timers/promises'
import type { Marks } from './marks.ts'

/** Windows of one plan at one time. */
const most = 50
/** How long a window that is loaded again may take to let go of what it had, ms. */
const patience = 600

/** Where the changes of a window to a plan are kept. Only the first window has the place that goes by the plan's own key. */
export interface Place {
  readonly key: string
  /** Another window, of this Stopgap or another one, has the plan open. */
  readonly isSecond: boolean
}

const placeKey = (key: string, n: number) => (n === 1 ? key : `${key}--${n}`)

/** The plan's key, for a place that a second window had; null for any other. */
export const planOfSecond = (key: string): string | null => /^(.+)--\d+$/.exec(key)?.[1] ?? null

/**
 * Which window keeps its changes where. Two windows on one plan never write the same kept copy, in one Stopgap or in two.
 * @param isHere whether a window of this run is still there
 * @param shared hears, once for a window and its plan, that another window has come to the same plan
 */
export function createClaims(
  marks: Marks,
  isHere: (window: string) => boolean,
  shared: (window: string, plan: string) => void = () => undefined,
) {
  const held = new Map<string, string>()
  /** By plan, the window that has been told it is not alone with it. */
  const told = new Map<string, string>()

  function tellHolder(plan: string): void {
    const holder = held.get(plan)
    if (holder === undefined || !isHere(holder) || told.get(plan) === holder) return
    told.set(plan, holder)
    shared(holder, plan)
  }

  async function take(key: string, window: string): Promise<boolean> {
    const holder = held.get(key)
    if (holder !== undefined && holder !== window && isHere(holder)) return false
    // Before anything is waited for: two windows that ask at once are answered one after the other.
    held.set(key, window)
    if (await marks.take(key)) return true
    held.delete(key)
    return false
  }

  const placesOf = (window: string) => [...held].filter(([, holder]) => holder === window).map(([key]) => key)

  async function letGo(key: string): Promise<void> {
    held.delete(key)
    told.delete(key)
    await marks.drop(key)
  }

  /** The place of a window for a plan; whatever else it had is free then. */
  async function placeFor(plan: string, window: string): Promise<Place> {
    const key = await firstFree(plan, window)
    for (const other of placesOf(window)) if (other !== key) await letGo(other)
    if (key !== plan) tellHolder(plan)
    return { key, isSecond: key !== plan }
  }

  async function firstFree(plan: string, window: string): Promise<string> {
    const before = placesOf(window).find(key => key === plan || planOfSecond(key) === plan)
    if (before !== undefined && (await take(before, window))) return before
    const until = Date.now() + patience
    while (!(await take(plan, window))) {
      if (!held.has(plan) || Date.now() > until) break
      await pause(50)
    }
    if (held.get(plan) === window) return plan
    for (let n = 2; n <= most; n += 1) if (await take(placeKey(plan, n), window)) return placeKey(plan, n)
    return `${plan}--${Date.now()}`
  }

  return {
    placeFor,
    /** Another Stopgap has taken a place. */
    takenElsewhere(key: string): void {
      const plan = planOfSecond(key)
      if (plan !== null && !held.has(key)) tellHolder(plan)
    },
    /** The window is gone, and what it had is free. */
    async gone(window: string): Promise<void> {
      for (const key of placesOf(window)) await letGo(key)
    },
    /** Whether some window has the place now; if not, it is nobody's while `work` runs. */
    async ifFree(key: string, work: () => Promise<void>): Promise<void> {
      if (held.has(key) || !(await marks.take(key))) return
      try {
        await work()
      } finally {
        if (!held.has(key)) await marks.drop(key)
      }
    },
  }
}

export type Claims = ReturnType<typeof createClaims>
