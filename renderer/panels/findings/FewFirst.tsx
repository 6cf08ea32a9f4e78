import { type ReactNode, useState } from 'react'

/** As many as are read at a glance. */
const FEW = 3

interface Props {
  /** What they are, for the button that shows the rest: `2 more causes`. */
  readonly what: string
  readonly items: readonly ReactNode[]
  readonly ordered?: boolean
}

/** A list that begins with its first few and shows the rest when asked; one more is shown at once, a button would be as long. */
export function FewFirst({ what, items, ordered = false }: Props) {
  const [whole, showWhole] = useState(false)
  const List = ordered ? 'ol' : 'ul'
  const left = items.length - FEW
  return (
    <>
      <List>{whole || left < 2 ? items : items.slice(0, FEW)}</List>
      {left < 2 ? null : (
        <button type="button" className="step" aria-expanded={whole} onClick={() => showWhole(!whole)}>
          {whole ? `Fewer ${what}` : `${left} more ${what}`}
        </button>
      )}
    </>
  )
}
