import type { ReactNode } from 'react'

/** Part of a drawing that is heard as one picture with one sentence. */
export function Picture({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a group of shapes, with nothing to press in it
    <g role="img" aria-label={label}>
      {children}
    </g>
  )
}

/** Part of a drawing whose words are said elsewhere. */
export function Unspoken({ children }: { readonly children: ReactNode }) {
  // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of shapes, with nothing to focus in it
  return <g aria-hidden="true">{children}</g>
}
