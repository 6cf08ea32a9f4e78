/**
 * Puts the keyboard on a field of an open group, once it is drawn; a path of several fields means the first of them.
 * @param otherwise what has it where there is no such field, as a selector
 */
export function focusField(field: string, otherwise?: string): void {
  requestAnimationFrame(() => {
    const input =
      document.querySelector<HTMLElement>(`[data-field="${field}"]`) ??
      document.querySelector<HTMLElement>(`[data-field^="${field}."]`) ??
      (otherwise === undefined ? null : document.querySelector<HTMLElement>(otherwise))
    input?.scrollIntoView({ block: 'nearest' })
    input?.focus()
  })
}
