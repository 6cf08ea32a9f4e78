/** One value that changes, and who hears of it. */
export interface Watched<V> {
  readonly read: () => V
  /** Everyone is told, of the same value too. */
  readonly write: (next: V) => void
  /** The result stops it. */
  readonly subscribe: (hear: () => void) => () => void
}

export function watched<V>(value: V): Watched<V> {
  let now = value
  const listeners = new Set<() => void>()
  return {
    read: () => now,
    write: next => {
      now = next
      for (const hear of [...listeners]) hear()
    },
    subscribe: hear => {
      listeners.add(hear)
      return () => listeners.delete(hear)
    },
  }
}
