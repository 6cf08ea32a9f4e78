// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { INCH } from '../../../core/units/constants.ts'
import { Row } from '../../../renderer/fields/Row.tsx'
import { undo } from '../../../renderer/state/edit.ts'
import { valueAt } from '../../../renderer/state/place.ts'
import { placeOf } from '../../../renderer/state/selectors.ts'
import { leave, press, put, type Shown, show, type } from '../a-page.tsx'

let shown: Shown

beforeEach(() => {
  vi.useFakeTimers()
  shown = show(
    <>
      <Row field="corner.stop.gap" />
      <Row field="corner.shock.showing" />
      <Row field="corner.stop.charge" />
      <Row field="corner.clearance.droop" empty={{ value: null, word: 'none' }} />
    </>,
  )
})
afterEach(() => {
  shown.close()
  vi.useRealTimers()
})

const inches = (field: string) => {
  const state = shown.files.store.read()
  return Math.round(((valueAt(state.plan, placeOf(state, field)) as number) / INCH) * 1e4) / 1e4
}
const labels = () => shown.files.store.read().history.past.map(({ label }) => label)
const error = () => shown.page.querySelector('[role=alert]')?.textContent ?? null

describe('a field', () => {
  test('shows the tape’s fraction and takes one, key by key, as one entry', () => {
    const gap = shown.field('corner.stop.gap')
    expect(gap.value).toBe('2')
    type(gap, '1 13/16')
    expect(inches('corner.stop.gap')).toBe(1.8125)
    expect(gap.value).toBe('1 13/16')
    press(gap, 'Enter')
    expect(gap.value).toBe('1 13/16')
    expect(labels()).toEqual(['gap 1 13/16 in'])
  })

  test('keeps text as typed until left, then writes it as the tape would', () => {
    const gap = shown.field('corner.stop.gap')
    type(gap, '2.875')
    expect(gap.value).toBe('2.875')
    leave(gap)
    expect(gap.value).toBe('2 7/8')
  })

  test('takes another unit than the one shown', () => {
    const gap = shown.field('corner.stop.gap')
    type(gap, '50.8mm')
    expect(inches('corner.stop.gap')).toBe(2)
  })

  test('steps by the sixteenth and by the inch, and Escape brings back what was there', () => {
    const gap = shown.field('corner.stop.gap')
    act(() => gap.focus())
    expect(press(gap, 'ArrowUp')).toBe(true)
    expect(gap.value).toBe('2 1/16')
    press(gap, 'PageUp')
    expect(gap.value).toBe('3 1/16')
    press(gap, 'ArrowDown')
    expect(inches('corner.stop.gap')).toBe(3)
    press(gap, 'Escape')
    expect(gap.value).toBe('2')
    expect(labels()).toEqual([])
  })

  test('does not step past what the plan takes', () => {
    const showing = shown.field('corner.shock.showing')
    type(showing, '14')
    press(showing, 'ArrowUp')
    expect(inches('corner.shock.showing')).toBe(14)
    expect(error()).toBeNull()
  })

  test('follows undo while it has the keyboard', () => {
    const gap = shown.field('corner.stop.gap')
    type(gap, '3')
    act(() => void undo(shown.files.store))
    expect(gap.value).toBe('2')
  })

  test('may be emptied where nothing is an answer, and says so', () => {
    const strap = shown.field('corner.clearance.droop')
    expect(strap.value).toBe('')
    expect(strap.placeholder).toBe('none')
    type(strap, '9')
    leave(strap)
    expect(inches('corner.clearance.droop')).toBe(9)
    type(strap, '9')
    put(strap, '')
    leave(strap)
    expect(shown.files.store.read().plan.setups[0]!.axles[1]!.corner.clearance.droop).toBeNull()
    expect(labels()).toEqual(['limit strap 9 in', 'limit strap none'])
  })
})

describe('a wrong entry', () => {
  test('says what is wrong, what would be right and what still counts; the plan has what it had before', () => {
    const showing = shown.field('corner.shock.showing')
    type(showing, '17 1/2')
    leave(showing)
    expect(error()).toBe(
      'More than 14 in of stroke. Tape only the bright shaft, from the body to what it meets. Still using 7 in.',
    )
    expect(showing.value).toBe('17 1/2')
    expect(showing.getAttribute('aria-invalid')).toBe('true')
    expect(inches('corner.shock.showing')).toBe(7)
    expect(labels()).toEqual([])
  })

  test('waits while typing goes on, and speaks when it rests', () => {
    const gap = shown.field('corner.stop.gap')
    type(gap, '1 13/')
    expect(error()).toBeNull()
    put(gap, '1 13/16')
    act(() => void vi.advanceTimersByTime(2000))
    expect(error()).toBeNull()
    put(gap, 'wide')
    act(() => void vi.advanceTimersByTime(2000))
    expect(error()).toContain('Not a number.')
    expect(inches('corner.stop.gap')).toBe(2)
  })

  test('is gone with the next good one', () => {
    const showing = shown.field('corner.shock.showing')
    type(showing, '17')
    leave(showing)
    type(showing, '8')
    expect(error()).toBeNull()
    expect(inches('corner.shock.showing')).toBe(8)
  })

  test('is gone with Escape', () => {
    const showing = shown.field('corner.shock.showing')
    type(showing, '17')
    leave(showing)
    act(() => showing.focus())
    press(showing, 'Escape')
    expect(error()).toBeNull()
    expect(showing.value).toBe('7')
  })
})

describe('an assumed value', () => {
  const marked = () => shown.field('corner.stop.charge').classList.contains('assumed')

  test('is marked in word and line, until something is entered', () => {
    expect(marked()).toBe(true)
    expect(shown.field('corner.stop.charge').closest('.row')?.textContent).toContain('assumed')
    type(shown.field('corner.stop.charge'), '160')
    expect(marked()).toBe(false)
  })

  test('is confirmed as it stands by Enter, not by passing through', () => {
    const charge = shown.field('corner.stop.charge')
    act(() => charge.focus())
    leave(charge)
    expect(marked()).toBe(true)
    act(() => charge.focus())
    press(charge, 'Enter')
    expect(marked()).toBe(false)
    expect(labels()).toEqual(['stop’s charge measured'])
  })
})
