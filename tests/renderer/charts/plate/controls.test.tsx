// @vitest-environment happy-dom
import { act, type ReactNode } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { INCH } from '../../../../core/units/constants.ts'
import { FindingMark } from '../../../../renderer/charts/plate/FindingMarks.tsx'
import { handleGeometry } from '../../../../renderer/charts/plate/handle.ts'
import { WheelHandle } from '../../../../renderer/charts/plate/WheelHandle.tsx'
import { sampleFindings } from '../gallery/cases.ts'
import { sampleCorner } from '../sample-axles.ts'
import { compiledCorner, evenFont } from './arbitrary-view.ts'
import { plateScene } from './whole-scene.ts'

let root: Root
let host: HTMLElement

beforeEach(() => {
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })
  host = document.body.appendChild(document.createElement('div'))
  root = createRoot(host)
})

afterEach(() => {
  act(() => root.unmount())
  host.remove()
})

const show = (element: ReactNode): void => act(() => root.render(<svg aria-hidden="true">{element}</svg>))
const found = (selector: string): Element => {
  const element = host.querySelector(selector)
  if (element === null) throw new Error(`Nothing matches ${selector}.`)
  return element
}

const compiled = compiledCorner(sampleCorner, 'inch')
const scene = plateScene({ ...compiled, other: null, demands: null, system: 'inch' }, 1172, 704, evenFont(0.55))
const { droop, bump } = scene.travel

test('the handle is a slider that says where the wheel is, and steps with the keys', () => {
  const onWheel = vi.fn()
  const wheel = 6.5 * INCH
  const handle = handleGeometry(scene, wheel)
  const limits = { droop, bump, system: 'inch' as const }
  show(<WheelHandle handle={handle} x={scene.frame.budget.x} wheel={wheel} onWheel={onWheel} {...limits} />)
  const slider = found('[role=slider]')
  expect(slider.getAttribute('aria-valuetext')).toBe('6 1/2 inches above ride height')
  expect(Number(slider.getAttribute('aria-valuemax'))).toBeCloseTo(bump / INCH, 2)
  const press = (key: string, modifiers = {}): boolean => {
    const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...modifiers })
    act(() => {
      slider.dispatchEvent(event)
    })
    return event.defaultPrevented
  }
  expect(press('ArrowUp')).toBe(true)
  expect(onWheel.mock.lastCall?.[0]).toBeCloseTo(6.5625 * INCH, 9)
  expect(press('End')).toBe(true)
  expect(onWheel).toHaveBeenLastCalledWith(bump)
  expect(press('z', { ctrlKey: true })).toBe(false)
  expect(press('ArrowUp', { ctrlKey: true })).toBe(false)
  expect(onWheel).toHaveBeenCalledTimes(2)
})

test('a mark names its finding, and tells when it is looked at, taken and left', () => {
  const [finding] = sampleFindings(compiled.budget)
  if (finding === undefined) throw new Error('The sample has findings.')
  const [onFocusFinding, onTakeFinding] = [vi.fn(), vi.fn()]
  const place = { finding, number: 1, x: 10, y: 10 }
  show(<FindingMark place={place} focused={false} onFocusFinding={onFocusFinding} onTakeFinding={onTakeFinding} />)
  const mark = found('[role=button]')
  expect(mark.getAttribute('aria-label')).toBe(`Finding 1, danger: ${finding.message}`)
  act(() => {
    mark.dispatchEvent(new FocusEvent('focusin', { bubbles: true }))
  })
  expect(onFocusFinding).toHaveBeenLastCalledWith(finding.id)
  for (const key of ['Enter', ' ', 'Tab'])
    act(() => {
      mark.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }))
    })
  expect(onTakeFinding.mock.calls).toEqual([[finding.id], [finding.id]])
  act(() => {
    mark.dispatchEvent(new FocusEvent('focusout', { bubbles: true }))
  })
  expect(onFocusFinding).toHaveBeenLastCalledWith(null)
})
