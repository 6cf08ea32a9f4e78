import { useRef } from 'react'
import { cancelGesture, closeGesture, put } from '../state/edit.ts'
import { valueAt } from '../state/place.ts'
import { placeOf } from '../state/selectors.ts'
import { focusField } from '../state/view.ts'
import { useSelect, useStore } from '../window-context.ts'

interface Props {
  readonly field: string
  readonly id: string
  readonly name: string
  /** How undo calls it: `title`. */
  readonly called: string
  readonly longest: number
  readonly lines?: number
}

/** A pause in writing after which undo takes a step of its own, ms. */
const BREATH = 2000

let gestures = 0

/** Words of the plan. What is written is in the plan at once. */
export function TextField({ field, id, name, called, longest, lines }: Props) {
  const store = useStore()
  const value = useSelect(state => valueAt(state.plan, placeOf(state, field)))
  const gesture = useRef({ id: '', at: 0 })

  const write = (text: string) => {
    const now = performance.now()
    if (now - gesture.current.at > BREATH) {
      gestures += 1
      gesture.current.id = `text#${gestures}`
    }
    gesture.current.at = now
    put(store, `${called} ${text === '' ? 'emptied' : `“${text.slice(0, 30)}”`}`, field, text, gesture.current.id)
  }

  const common = {
    id,
    className: 'words',
    value: typeof value === 'string' ? value : '',
    maxLength: longest,
    'aria-label': name,
    'data-field': field,
    onFocus: () => focusField(store, field),
    onBlur: () => {
      gesture.current.at = 0
      closeGesture(store)
    },
  }
  if (lines !== undefined)
    return <textarea {...common} rows={lines} onChange={event => write(event.currentTarget.value)} />
  return (
    <input
      {...common}
      type="text"
      autoComplete="off"
      onChange={event => write(event.currentTarget.value)}
      onKeyDown={event => {
        if (event.key === 'Escape') cancelGesture(store, gesture.current.id)
        if (event.key === 'Enter') event.currentTarget.blur()
      }}
    />
  )
}
