import type { State } from './state.ts'

/** The one place that holds what the window knows. Only actions write. */
export interface Store {
  read(): State
  write(next: State): void
  /** The result stops it. */
  subscribe(hear: () => void): () => void
}

export function createStore(initial: State): Store {
  let state = initial
  const listeners = new Set<() => void>()
  return {
    read: () => state,
    write: next => {
      if (next === state) return
      state = next
      for (const hear of [...listeners]) hear()
    },
    subscribe: hear => {
      listeners.add(hear)
      return () => listeners.delete(hear)
    },
  }
}
