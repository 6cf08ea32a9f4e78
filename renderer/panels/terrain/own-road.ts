import { useCallback, useState, useSyncExternalStore } from 'react'
import type { MeasuredCourse } from '../../../core/ride/measured-road.ts'
import { bringRoad, ownRoadOf } from '../../state/own-road.ts'
import type { Store } from '../../state/store.ts'
import { showTerrain } from '../../state/view.ts'
import { useStore } from '../../window-context.ts'

/** The road from a file, drawn again when another is brought. */
export function useOwnRoad(): MeasuredCourse | null {
  const { read, subscribe } = ownRoadOf(useStore())
  return useSyncExternalStore(subscribe, read)
}

/** Takes a road out of a file and shows it, or says why it cannot; what was there stays then. */
async function take(store: Store, file: File): Promise<string | null> {
  const own = ownRoadOf(store)
  const brought = await bringRoad(file, own.read())
  if (!brought.ok) return `“${file.name}” cannot be used as a road: ${brought.why}.`
  own.write(brought.road)
  showTerrain(store, brought.road.id)
  return null
}

export interface Bringing {
  /** Why the last file was not taken; null when it was. */
  readonly trouble: string | null
  readonly bring: (file: File) => void
  readonly forget: () => void
}

export function useBringing(): Bringing {
  const store = useStore()
  const [trouble, setTrouble] = useState<string | null>(null)
  const bring = useCallback(
    (file: File) => {
      setTrouble(null)
      void take(store, file).then(setTrouble)
    },
    [store],
  )
  const forget = useCallback(() => setTrouble(null), [])
  return { trouble, bring, forget }
}

/** Whether a dropped file may be a road, and not a plan. */
export const looksLikeRoad = ({ name }: File): boolean => /\.(csv|tsv|txt)$/i.test(name)
