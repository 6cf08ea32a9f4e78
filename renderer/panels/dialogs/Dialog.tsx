import { type ReactNode, useId, useLayoutEffect, useRef } from 'react'

interface Props {
  readonly title: string
  readonly onClose: () => void
  readonly className?: string
  readonly children: ReactNode
}

/** A question that must be answered first. Escape is an answer: it changes nothing. */
export function Dialog({ title, onClose, className, children }: Props) {
  const dialog = useRef<HTMLDialogElement>(null)
  const heading = useId()
  // Closed while it still stands in the page: only then does the keyboard go back to where it came from.
  useLayoutEffect(() => {
    const shown = dialog.current
    if (shown !== null && !shown.open) shown.showModal()
    return () => shown?.close()
  }, [])
  return (
    <dialog ref={dialog} aria-labelledby={heading} className={className} onCancel={onClose}>
      <h2 id={heading}>{title}</h2>
      {children}
    </dialog>
  )
}
