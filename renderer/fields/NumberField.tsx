import { type KeyboardEvent, useId, useState } from 'react'
import { fieldText } from '../../core/units/format.ts'
import { parseMeasure } from '../../core/units/parse.ts'
import { type Quantity, type System, unitOf } from '../../core/units/quantity.ts'
import { stepped } from './stepping.ts'

interface Props {
  readonly label: string
  /** Its accessible name, where the label alone says too little. */
  readonly name?: string
  /** Where its value comes from, in a word beside it. */
  readonly source?: string
  readonly assumed?: boolean
  readonly value: number | null
  readonly quantity: Quantity
  readonly system: System
  /** Why a value cannot be so, in a sentence; null when it can. */
  readonly refuses?: (value: number) => string | null
  readonly onChange: (value: number) => void
  /** The field may be empty, and this is what that does. */
  readonly onClear?: () => void
}

/** Keys that move a value by the mark of the tape, or by ten of them. */
const STEPPING: Readonly<Record<string, 1 | -1>> = { ArrowUp: 1, ArrowDown: -1, PageUp: 1, PageDown: -1 }

/** A value on the page that is not a measurement of the plan: taken when Enter is pressed or the field is left. */
export function NumberField(props: Props) {
  const { label, name, source, assumed = false, value, quantity, system, refuses, onChange, onClear } = props
  const id = useId()
  const [typed, setTyped] = useState<string | null>(null)
  const [wrong, setWrong] = useState<string | null>(null)
  const shown = value === null ? '' : fieldText(value, quantity, system)
  const settle = (): void => {
    setTyped(null)
    setWrong(null)
  }
  const commit = (): void => {
    if (typed === null) return
    if (typed.trim() === '' && onClear !== undefined) {
      settle()
      onClear()
      return
    }
    const read = parseMeasure(typed, quantity, system)
    const problem = read.ok ? (refuses?.(read.value) ?? null) : read.problem
    setWrong(problem)
    if (!read.ok || problem !== null) return
    settle()
    onChange(read.value)
  }
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') commit()
    if (event.key === 'Escape') settle()
    const direction = STEPPING[event.key]
    if (direction === undefined || value === null || typed !== null) return
    event.preventDefault()
    const next = stepped(value, quantity, system, direction, event.key.startsWith('Page'))
    const problem = refuses?.(next) ?? null
    setWrong(problem)
    if (problem === null) onChange(next)
  }
  const unit = unitOf(quantity, system).label
  return (
    <>
      <div className="row">
        <label htmlFor={id}>{label}</label>
        <span className="as">{source}</span>
        <input
          id={id}
          className={['f', assumed && 'assumed', wrong !== null && 'bad'].filter(Boolean).join(' ')}
          value={typed ?? shown}
          placeholder={onClear === undefined ? undefined : 'not known'}
          autoComplete="off"
          aria-label={name}
          aria-invalid={wrong !== null}
          aria-describedby={wrong === null ? undefined : `${id}-wrong`}
          onChange={event => setTyped(event.currentTarget.value)}
          onBlur={commit}
          onKeyDown={onKeyDown}
        />
        <span className="u">{unit}</span>
      </div>
      {wrong === null ? null : (
        <p className="wrong" id={`${id}-wrong`} role="alert">
          {wrong} {shown === '' ? '' : `Still using ${shown}${unit === '' ? '' : ` ${unit}`}.`}
        </p>
      )}
    </>
  )
}
