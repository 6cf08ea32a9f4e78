import { onceFor } from './once-for.ts'
import type { State } from './state.ts'
import type { Store } from './store.ts'

/** What is put off waits until nothing was typed for so long, ms: what was typed is on screen by then. */
const PAUSE = 60
/** But no longer than this, ms, while a key is held or something is dragged. */
const LONGEST = 300

/** Whether one state differs from another by what a person types or drags, and by nothing they go to or switch. */
function onlyTyped(a: State, b: State): boolean {
  const [from, to] = [a.view, b.view]
  return (
    from.setup === to.setup &&
    from.axle === to.axle &&
    from.compared === to.compared &&
    from.page === to.page &&
    from.loadsOff === to.loadsOff &&
    a.plan.units === b.plan.units &&
    a.plan.setups.length === b.plan.setups.length &&
    a.plan.loads.length === b.plan.loads.length
  )
}

/** What the window knows, a moment late while somebody types, for what takes longer to work out than a keystroke may. */
export type LateStore = Pick<Store, 'read' | 'subscribe'>

function follow(store: Store): LateStore {
  const listeners = new Set<() => void>()
  let late = store.read()
  let timer: ReturnType<typeof setTimeout> | null = null
  let behindSince = 0
  let unfollow: (() => void) | null = null

  const stopWaiting = (): void => {
    if (timer !== null) clearTimeout(timer)
    timer = null
  }
  const wait = (): void => {
    if (timer === null) behindSince = performance.now()
    stopWaiting()
    timer = setTimeout(settle, Math.min(PAUSE, behindSince + LONGEST - performance.now()))
  }
  const settle = (): void => {
    stopWaiting()
    late = store.read()
    for (const hear of [...listeners]) hear()
  }
  const hear = (): void => {
    const now = store.read()
    if (now.plan !== late.plan && onlyTyped(late, now)) wait()
    else settle()
  }
  return {
    read: () => (unfollow === null ? store.read() : late),
    subscribe: listener => {
      listeners.add(listener)
      if (unfollow === null) {
        late = store.read()
        unfollow = store.subscribe(hear)
      }
      return () => {
        listeners.delete(listener)
        if (listeners.size > 0) return
        stopWaiting()
        unfollow?.()
        unfollow = null
      }
    },
  }
}

/** The one follower of a store. */
export const lateOf = onceFor(follow)
