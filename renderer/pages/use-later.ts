import { type ComponentType, useEffect, useState } from 'react'
import type { Later } from './later.ts'

/** A page, or part of one, once it is fetched; null until then. @param onFault hears, stable, why it cannot be fetched */
export function useLater(page: Later, onFault: (error: unknown) => void): ComponentType | null {
  const [Page, show] = useState(page.loaded)
  useEffect(() => {
    if (Page !== null) return
    let left = false
    page.load().then(
      loaded => left || show(() => loaded),
      (error: unknown) => left || onFault(error),
    )
    return () => {
      left = true
    }
  }, [page, Page, onFault])
  return Page
}
