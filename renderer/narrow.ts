import { useSyncExternalStore } from 'react'

/** The one width and height below which the window shortens; the same as in the style sheets. */
const query = '(max-width: 1180px), (max-height: 780px)'

const subscribe = (hear: () => void): (() => void) => {
  const list = matchMedia(query)
  list.addEventListener('change', hear)
  return () => list.removeEventListener('change', hear)
}

export const useNarrow = (): boolean => useSyncExternalStore(subscribe, () => matchMedia(query).matches)
