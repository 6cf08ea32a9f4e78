import type { ReactNode } from 'react'

/** Part of a drawing that is heard as one picture with one sentence. */
export function Picture({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: the rule takes any g for something to press; here are shapes and words only
    <g role="img" aria-label={label}>
      {children}
    </g>
  )
}

/** Part of a drawing whose words are said elsewhere. */
export function Unspoken({ children }: { readonly children: ReactNode }) {
  // biome-ignore lint/a11y/noAriaHiddenOnFocusable: the rule takes any g for something to focus; here are shapes and words only
  return <g aria-hidden="true">{children}</g>
}
