import { useEffect, useRef, useState } from 'react'
import { fieldText, formatMeasure } from '../../core/units/format.ts'
import { parseMeasure } from '../../core/units/parse.ts'
import { cancelGesture, closeGesture, markAssumed, type Outcome, put } from '../state/edit.ts'
import { isAssumed, valueAt } from '../state/place.ts'
import { placeOf } from '../state/selectors.ts'
import type { Refusal } from '../state/state.ts'
import { pardon, refuse } from '../state/view.ts'
import { useSelectGroup, useStore } from '../window-context.ts'
import { type FieldSpec, plainName } from './field-spec.ts'
import { refusalOf, unreadable } from './refusals.ts'
import { stepped } from './stepping.ts'

/** What an emptied field stands for; null where it may not be empty. */
export interface Empty {
  readonly value: null | undefined
  /** What the empty field shows: `none`. */
  readonly word: string
  /** The group that goes with it, if it is not the value alone. */
  readonly takes?: string
}

/** How long typing may rest on something wrong before the field says so, ms. */
const PATIENCE = 700

let gestures = 0

interface Draft {
  readonly text: string
  /** What the plan took from it. */
  readonly made: unknown
  /** Why it did not; told when typing rests, ends or is confirmed. */
  readonly refusal: Refusal | null
}

/** One number of the plan as text being typed: charts follow each valid keystroke, and all of it is undone as one. */
export function useTyping(field: string, spec: FieldSpec, empty: Empty | null) {
  const store = useStore()
  const { place, system, value, refused, assumed } = useSelectGroup(state => {
    const at = placeOf(state, field)
    const { plan, view } = state
    return {
      place: at,
      system: plan.units,
      value: valueAt(plan, at),
      refused: view.refused[at],
      assumed: isAssumed(plan, at),
    }
  })
  const [draft, setDraft] = useState<Draft | null>(null)
  const gesture = useRef('')
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined)
  useEffect(() => () => clearTimeout(timer.current), [])

  const name = plainName(spec)
  const labelled = (next: number) => `${name} ${formatMeasure(next, spec.quantity, system, { unit: true })}`
  const shown = typeof value === 'number' ? fieldText(value, spec.quantity, system) : ''
  const live = draft !== null && (draft.refusal !== null || Object.is(draft.made, value))
  const text = live ? draft.text : (refused?.text ?? shown)

  const reset = () => {
    clearTimeout(timer.current)
    setDraft(null)
  }

  /** Says what is wrong; the plan goes back to what it had before this typing. */
  const tell = (refusal: Refusal) => {
    reset()
    cancelGesture(store, gesture.current)
    refuse(store, place, refusal)
  }

  const take = (next: unknown, label: string, typed: string, at = field): void => {
    const problems: Outcome = put(store, label, at, next, gesture.current)
    if (problems.length === 0) {
      pardon(store, place)
      setDraft({
        text: typed,
        made: typeof next === 'number' ? next : valueAt(store.read().plan, place),
        refusal: null,
      })
    } else hold(typed, refusalOf(place, spec, typed, problems, system))
  }

  const hold = (typed: string, refusal: Refusal) => {
    setDraft({ text: typed, made: undefined, refusal })
    timer.current = setTimeout(() => tell(refusal), PATIENCE)
  }

  const type = (typed: string) => {
    clearTimeout(timer.current)
    if (empty !== null && typed.trim() === '') {
      return take(empty.value, `${name} ${empty.word}`, typed, empty.takes)
    }
    const read = parseMeasure(typed, spec.quantity, system)
    if (read.ok) take(read.value, labelled(read.value), typed)
    else hold(typed, unreadable(typed, read.problem))
  }

  const step = (direction: 1 | -1, big: boolean) => {
    clearTimeout(timer.current)
    const from = typeof value === 'number' ? value : 0
    const next = stepped(from, spec.quantity, system, direction, big)
    if (put(store, labelled(next), field, next, gesture.current).length > 0) return
    pardon(store, place)
    reset()
  }

  const begin = () => {
    gestures += 1
    gesture.current = `${place}#${gestures}`
  }

  /** Typing is over: by Enter, which also confirms what was only assumed, or by leaving. */
  const finish = (confirmed: boolean) => {
    if (live && draft.refusal !== null) return tell(draft.refusal)
    if (confirmed && refused === undefined && assumed) markAssumed(store, name, field, false)
    reset()
    closeGesture(store)
    begin()
  }

  const restore = (): boolean => {
    const changed = live || refused !== undefined || store.read().history.gesture?.id === gesture.current
    cancelGesture(store, gesture.current)
    pardon(store, place)
    reset()
    return changed
  }

  return { text, place, refused, assumed, begin, type, step, finish, restore, reset }
}
