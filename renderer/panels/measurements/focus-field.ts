/**
 * Puts the keyboard on a field of an open group, once it is drawn; a path of several fields means the first of them, with as many of the
 * others in sight as have room.
 * @param otherwise what has it where there is no such field, as a selector
 */
export function focusField(field: string, otherwise?: string): void {
  requestAnimationFrame(() => {
    const several = document.querySelectorAll<HTMLElement>(`[data-field^="${field}."]`)
    several.item(several.length - 1)?.scrollIntoView({ block: 'nearest' })
    const input =
      document.querySelector<HTMLElement>(`[data-field="${field}"]`) ??
      several.item(0) ??
      (otherwise === undefined ? null : document.querySelector<HTMLElement>(otherwise))
    input?.scrollIntoView({ block: 'nearest' })
    input?.focus()
  })
}
