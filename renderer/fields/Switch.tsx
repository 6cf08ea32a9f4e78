import { type ReactNode, useId } from 'react'

export interface SwitchOption<T extends string> {
  readonly value: T
  readonly label: string
  /** Drawn before the words, in their colour. */
  readonly mark?: ReactNode
}

interface Props<T extends string> {
  readonly label: string
  readonly options: readonly SwitchOption<T>[]
  readonly value: T
  readonly onChange: (value: T) => void
  readonly className?: string
  readonly children?: ReactNode
}

/** One of a few, all in sight: a radio group with the arrow keys every radio group has. `children` follow inside the frame. */
export function Switch<T extends string>({ label, options, value, onChange, className = '', children }: Props<T>) {
  const group = useId()
  return (
    <div className={`switch ${className}`} role="radiogroup" aria-label={label}>
      {options.map(option => (
        <label key={option.value} title={option.label}>
          <input
            type="radio"
            className="spoken"
            name={group}
            checked={option.value === value}
            onChange={() => onChange(option.value)}
          />
          {option.mark}
          <b>{option.label}</b>
        </label>
      ))}
      {children}
    </div>
  )
}
