/** The octagon before what is wrong with an entry. */
export const ErrorMark = () => (
  <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
    <path d="M5 1h6l4 4v6l-4 4H5l-4-4V5z" fill="var(--alarm)" />
    <path d="M8 4v5M8 11v1.6" stroke="var(--sheet)" strokeWidth="1.8" />
  </svg>
)
