import type { State } from './state.ts'
import { watched } from './watched.ts'

/** The one place that holds what the window knows. Only actions write. */
export interface Store {
  read(): State
  write(next: State): void
  /** The result stops it. */
  subscribe(hear: () => void): () => void
}

export function createStore(initial: State): Store {
  const { read, write, subscribe } = watched(initial)
  return {
    read,
    write: next => {
      if (next !== read()) write(next)
    },
    subscribe,
  }
}
