import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { put, undo } from '../../../renderer/state/edit.ts'
import { readHistory } from '../../../renderer/state/kept-history.ts'
import { isPlan } from '../../../renderer/state/plan-checks.ts'
import { moveWheel } from '../../../renderer/state/view.ts'
import { aPlan } from '../a-plan.ts'
import { someFiles } from '../some-files.ts'

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

interface Kept {
  readonly text: string
  readonly history: string
}

const keptBy = (files: ReturnType<typeof someFiles>) =>
  files.host.asked.filter(({ name }) => name === 'keep').map(({ request }) => request as Kept)

test('a burst of changes is kept once, with the last of them, within 300 ms', async () => {
  const files = someFiles()
  for (const gap of [0.01, 0.02, 0.03]) {
    put(files.store, `gap ${gap}`, 'corner.stop.gap', gap)
    await vi.advanceTimersByTimeAsync(100)
  }
  expect(keptBy(files)).toHaveLength(0)
  await vi.advanceTimersByTimeAsync(200)
  const kept = keptBy(files)
  expect(kept).toHaveLength(1)
  expect(JSON.parse(kept[0]!.text)).toEqual(files.store.read().plan)
  expect(readHistory(kept[0]!.history, files.store.read().plan, isPlan)?.past).toHaveLength(3)
})

test('looking around keeps nothing; undoing does', async () => {
  const files = someFiles()
  moveWheel(files.store, 0.05)
  await vi.advanceTimersByTimeAsync(1000)
  expect(keptBy(files)).toHaveLength(0)
  put(files.store, 'gap', 'corner.stop.gap', 0.01)
  await vi.advanceTimersByTimeAsync(1000)
  undo(files.store)
  await vi.advanceTimersByTimeAsync(1000)
  expect(keptBy(files).map(({ text }) => JSON.parse(text) as unknown)[1]).toEqual(aPlan())
})

test('leaving the window keeps at once', async () => {
  const files = someFiles()
  put(files.store, 'gap', 'corner.stop.gap', 0.01)
  await files.keeper.flush()
  expect(keptBy(files)).toHaveLength(1)
  await vi.advanceTimersByTimeAsync(1000)
  expect(keptBy(files)).toHaveLength(1)
})

test('changes that cannot be kept are told of until they can', async () => {
  const files = someFiles(aPlan(), { keep: () => ({ kind: 'failed', reason: 'The disk is full.' }) })
  put(files.store, 'gap', 'corner.stop.gap', 0.01)
  await vi.advanceTimersByTimeAsync(300)
  expect(files.store.read().notices).toMatchObject([
    { about: 'keep', text: 'Changes are not being kept: The disk is full.' },
  ])
  files.host.answer({ keep: () => ({ kind: 'kept' }) })
  put(files.store, 'gap', 'corner.stop.gap', 0.02)
  await vi.advanceTimersByTimeAsync(300)
  expect(files.store.read().notices).toEqual([])
})
