import { type RefObject, useLayoutEffect, useState } from 'react'

export interface Size {
  readonly width: number
  readonly height: number
}

/** The size of an element as it changes; null until it has one. */
export function useSize(element: RefObject<HTMLElement | null>): Size | null {
  const [size, setSize] = useState<Size | null>(null)
  useLayoutEffect(() => {
    const target = element.current
    if (target === null) return
    const read = (): void => {
      const { clientWidth: width, clientHeight: height } = target
      if (width < 1 || height < 1) return
      setSize(before => (before?.width === width && before.height === height ? before : { width, height }))
    }
    read()
    const observer = new ResizeObserver(read)
    observer.observe(target)
    return () => observer.disconnect()
  }, [element])
  return size
}
