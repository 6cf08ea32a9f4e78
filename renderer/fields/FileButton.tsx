import { useRef } from 'react'

interface Props {
  readonly name: string
  readonly className: string
  /** What is asked for, for someone who hears the page. */
  readonly what: string
  /** Endings and types that are offered, as `accept` of an input has them. */
  readonly accept: string
  readonly title?: string
  readonly onFile: (file: File) => void
}

/** A button that takes a file of this computer. Nothing is written to it. */
export function FileButton({ name, className, what, accept, title, onFile }: Props) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" className={className} title={title} onClick={() => input.current?.click()}>
        {name}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept={accept}
        aria-label={what}
        onChange={event => {
          const file = event.currentTarget.files?.[0]
          event.currentTarget.value = ''
          if (file !== undefined) onFile(file)
        }}
      />
    </>
  )
}
