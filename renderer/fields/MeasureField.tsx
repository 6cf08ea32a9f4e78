import type { KeyboardEvent } from 'react'
import { findingPointedAt } from '../state/ledger.ts'
import { normal } from '../state/place.ts'
import { focusField } from '../state/view.ts'
import { useSelectLate, useStore } from '../window-context.ts'
import type { FieldSpec } from './field-spec.ts'
import { type Empty, useTyping } from './use-typing.ts'

interface Props {
  /** Path of the value: `corner.stop.gap`. */
  readonly field: string
  readonly spec: FieldSpec
  readonly id: string
  /** Accessible name, where no label element names it. */
  readonly name?: string
  readonly empty?: Empty | null
  /** Keys that mean something where the field stands; true when one did. */
  readonly onKey?: (event: KeyboardEvent<HTMLInputElement>) => boolean
}

const steps: Readonly<Record<string, { direction: 1 | -1; big: boolean }>> = {
  ArrowUp: { direction: 1, big: false },
  ArrowDown: { direction: -1, big: false },
  PageUp: { direction: 1, big: true },
  PageDown: { direction: -1, big: true },
}

export const errorId = (id: string): string => `${id}-error`

/** A number as a tape measure says it. */
export function MeasureField({ field, spec, id, name, empty = null, onKey }: Props) {
  const store = useStore()
  const typing = useTyping(field, spec, empty)
  const rests = useSelectLate(state => {
    const finding = findingPointedAt(state)
    return finding !== null && normal(finding.field) === field
  })

  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (onKey?.(event)) return event.preventDefault()
    const step = steps[event.key]
    if (step !== undefined && !event.altKey && !event.ctrlKey && !event.metaKey) {
      event.preventDefault()
      typing.step(step.direction, step.big)
    } else if (event.key === 'Enter') {
      event.preventDefault()
      typing.finish(true)
      event.currentTarget.select()
    } else if (event.key === 'Escape') {
      if (typing.restore()) event.stopPropagation()
    } else if ((event.ctrlKey || event.metaKey) && /^[zy]$/i.test(event.key)) typing.reset()
  }

  const marks = ['f', typing.assumed && 'assumed', typing.refused !== undefined && 'bad', rests && 'rests']
  return (
    <input
      id={id}
      className={marks.filter(Boolean).join(' ')}
      type="text"
      inputMode="text"
      autoComplete="off"
      spellCheck={false}
      value={typing.text}
      placeholder={empty?.word}
      aria-label={name}
      aria-invalid={typing.refused !== undefined || undefined}
      aria-describedby={typing.refused === undefined ? 'how' : errorId(id)}
      data-field={field}
      onFocus={event => {
        typing.begin()
        focusField(store, field)
        event.currentTarget.select()
      }}
      onBlur={() => typing.finish(false)}
      onChange={event => typing.type(event.currentTarget.value)}
      onKeyDown={onKeyDown}
    />
  )
}
