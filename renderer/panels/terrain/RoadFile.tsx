import { useRef } from 'react'

interface Props {
  readonly name: string
  readonly className: string
  readonly onFile: (file: File) => void
}

/** A button that takes a road from a file of this computer. */
export function RoadFile({ name, className, onFile }: Props) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button
        type="button"
        className={className}
        title="A CSV file: distance and height, its first line such as “distance (m),height (m)”"
        onClick={() => input.current?.click()}
      >
        {name}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept=".csv,.tsv,.txt,text/csv,text/plain"
        aria-label="Road file"
        onChange={event => {
          const file = event.currentTarget.files?.[0]
          event.currentTarget.value = ''
          if (file !== undefined) onFile(file)
        }}
      />
    </>
  )
}
