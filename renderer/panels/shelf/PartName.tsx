import { type KeyboardEvent, useId, useState } from 'react'

/** What a part is called: taken when Enter is pressed or the field is left. */
export function PartName({ name, onChange }: { name: string; onChange: (name: string) => void }) {
  const id = useId()
  const [typed, setTyped] = useState<string | null>(null)
  const commit = (): void => {
    if (typed !== null && typed !== name) onChange(typed)
    setTyped(null)
  }
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') commit()
    if (event.key === 'Escape') setTyped(null)
  }
  return (
    <div className="row wide-choice">
      <label htmlFor={id}>Name</label>
      <input
        id={id}
        className="words"
        maxLength={200}
        value={typed ?? name}
        autoComplete="off"
        onChange={event => setTyped(event.currentTarget.value)}
        onBlur={commit}
        onKeyDown={onKeyDown}
      />
    </div>
  )
}
