/** Puts the keyboard on a finding's way out in the list, and the finding in sight. */
export function goToFinding(id: string): void {
  const line = document.querySelector<HTMLElement>(`[data-finding="${CSS.escape(id)}"]`)
  line?.scrollIntoView({ block: 'nearest' })
  line?.querySelector('button')?.focus({ preventScroll: true })
}
