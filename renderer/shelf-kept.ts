import { useEffect, useMemo, useSyncExternalStore } from 'react'
import { shelfOf } from './state/shelf.ts'
import { useFiles } from './window-context.ts'

/** The window's own shelf, asked for when it is first looked at. */
export function useShelf() {
  const files = useFiles()
  const keptShelf = useMemo(() => shelfOf(files), [files])
  useEffect(() => keptShelf.begin(), [keptShelf])
  const shelfView = useSyncExternalStore(keptShelf.subscribe, keptShelf.read)
  return { keptShelf, shelfView }
}
