import { useRef } from 'react'
import { RECORDING_TYPES } from '../../state/brought-recording.ts'

interface Props {
  readonly name: string
  readonly className: string
  readonly onFile: (file: File) => void
}

/** A button that takes a recording from a file of this computer. Nothing is written to it. */
export function RecordingFile({ name, className, onFile }: Props) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" className={className} onClick={() => input.current?.click()}>
        {name}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept={RECORDING_TYPES}
        aria-label="Recording"
        onChange={event => {
          const file = event.currentTarget.files?.[0]
          event.currentTarget.value = ''
          if (file !== undefined) onFile(file)
        }}
      />
    </>
  )
}
