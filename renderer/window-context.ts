import { createContext, useCallback, useContext, useRef, useSyncExternalStore } from 'react'
import type { Files } from './state/files.ts'
import { type LateStore, lateOf } from './state/late.ts'
import type { State } from './state/state.ts'
import type { Store } from './state/store.ts'

export const WindowContext = createContext<Files | null>(null)

export function useFiles(): Files {
  const files = useContext(WindowContext)
  if (files === null) throw new Error('A part of the window stands outside WindowContext: put it inside App.')
  return files
}

export const useStore = (): Store => useFiles().store

function useSelection<T>(store: LateStore, select: (state: State) => T, same: (a: T, b: T) => boolean = Object.is): T {
  const last = useRef<{ state: State; select: typeof select; part: T } | null>(null)
  const snapshot = useCallback(() => {
    const state = store.read()
    const known = last.current
    // Asked several times for each drawing, it is worked out once.
    if (known !== null && known.state === state && known.select === select) return known.part
    const part = select(state)
    const kept = known !== null && same(known.part, part) ? known.part : part
    last.current = { state, select, part: kept }
    return kept
  }, [store, select, same])
  return useSyncExternalStore(store.subscribe, snapshot)
}

/** Part of the state; the component is drawn again only when that part differs by `same`. */
export const useSelect = <T>(select: (state: State) => T, same?: (a: T, b: T) => boolean): T =>
  useSelection(useStore(), select, same)

const shallow = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  const keys = Object.keys(a)
  return (
    keys.length === Object.keys(b).length &&
    keys.every(key => Object.is((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]))
  )
}

/** As `useSelect`, for a selection that makes a new group each time. */
export const useSelectGroup = <T>(select: (state: State) => T): T => useSelect(select, shallow)

/** As `useSelectGroup`, for what takes longer to work out than a keystroke may: a moment late while somebody types. */
export const useSelectLate = <T>(select: (state: State) => T): T => useSelection(lateOf(useStore()), select, shallow)
