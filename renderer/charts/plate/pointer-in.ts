interface Pointer {
  readonly clientX: number
  readonly clientY: number
}

/** How much larger than its own px an element is drawn: more than 1 in a very large window, see `--larger` in the style sheets. */
export const largerDrawn = (element: Element): number => element.currentCSSZoom ?? 1

/** Where the pointer is in an element, in the px the element is drawn with, from its upper left corner. */
export function pointerIn(element: Element, { clientX, clientY }: Pointer): { readonly x: number; readonly y: number } {
  const { left, top } = element.getBoundingClientRect()
  const larger = largerDrawn(element)
  return { x: (clientX - left) / larger, y: (clientY - top) / larger }
}
