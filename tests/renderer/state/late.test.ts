import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { put, undo } from '../../../renderer/state/edit.ts'
import { lateOf } from '../../../renderer/state/late.ts'
import { countLoad, showAxle } from '../../../renderer/state/view.ts'
import { aStore } from '../some-files.ts'

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

const gapOf = (from: { read: ReturnType<typeof aStore>['read'] }) =>
  from.read().plan.setups[0]!.axles[1]!.corner.stop?.gap

function followed() {
  const store = aStore()
  const late = lateOf(store)
  const heard = vi.fn()
  const leave = late.subscribe(heard)
  return { store, late, heard, leave }
}

test('what is typed comes a moment late, several keystrokes at once', () => {
  const { store, late, heard } = followed()
  const before = gapOf(late)
  put(store, 'gap', 'corner.stop.gap', 0.04)
  put(store, 'gap', 'corner.stop.gap', 0.041)
  expect([gapOf(late), heard.mock.calls.length]).toEqual([before, 0])
  vi.advanceTimersByTime(100)
  expect([gapOf(late), heard.mock.calls.length]).toEqual([0.041, 1])
})

test('while a key is held it comes now and then, not with every key', () => {
  const { store, late, heard } = followed()
  for (let i = 1; i <= 24; i++) {
    put(store, 'gap', 'corner.stop.gap', 0.04 + i / 1000)
    vi.advanceTimersByTime(30)
  }
  expect(heard).toHaveBeenCalledTimes(2)
  expect(gapOf(late)).toBeGreaterThan(0.055)
  vi.advanceTimersByTime(60)
  expect(gapOf(late)).toBe(0.064)
})

test('where somebody goes and what they switch is there at once, with all that was typed', () => {
  const { store, late } = followed()
  put(store, 'gap', 'corner.stop.gap', 0.04)
  showAxle(store, 'front')
  expect([late.read().view.axle, gapOf(late)]).toEqual(['front', 0.04])
  countLoad(store, 'anything', false)
  expect(late.read().view.loadsOff).toEqual(['anything'])
})

test('nobody listening, it is never late; after the last one leaves it follows no more', () => {
  const { store, late, heard, leave } = followed()
  put(store, 'gap', 'corner.stop.gap', 0.04)
  leave()
  expect(gapOf(late)).toBe(0.04)
  vi.advanceTimersByTime(100)
  undo(store)
  expect(heard).not.toHaveBeenCalled()
  expect(late.read()).toBe(store.read())
})

test('a store has one follower', () => {
  const store = aStore()
  expect(lateOf(store)).toBe(lateOf(store))
  expect(lateOf(aStore())).not.toBe(lateOf(store))
})
