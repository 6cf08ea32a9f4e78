import type { ComponentType } from 'react'

/** A page whose program is fetched when it is first wanted. */
export interface Later {
  /** Rejects when it cannot be fetched. Asking again tries again. */
  load(): Promise<ComponentType>
  /** null until it is fetched. */
  loaded(): ComponentType | null
}

export function later(fetchPage: () => Promise<ComponentType>): Later {
  let page: ComponentType | null = null
  let fetching: Promise<ComponentType> | null = null
  const fetched = async (): Promise<ComponentType> => {
    try {
      page = await fetchPage()
      return page
    } catch (error) {
      fetching = null
      throw error
    }
  }
  return {
    load: () => {
      fetching ??= fetched()
      return fetching
    },
    loaded: () => page,
  }
}
