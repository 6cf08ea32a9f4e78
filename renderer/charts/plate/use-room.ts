import { type RefObject, useRef } from 'react'
import { type Size, useSize } from './use-size.ts'

/** What a drawing fits into: the size of the element around it, and the font its words are measured in. */
export interface Room {
  readonly size: Size
  readonly family: string
}

/** The room in an element, for what is as large as its parent; null until it has some. */
export function useRoom(): { readonly host: RefObject<HTMLDivElement | null>; readonly room: Room | null } {
  const host = useRef<HTMLDivElement>(null)
  const size = useSize(host)
  return {
    host,
    room: size === null || host.current === null ? null : { size, family: getComputedStyle(host.current).fontFamily },
  }
}
