// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { practise } from '../../../renderer/pages/practise.tsx'
import { TerrainPage } from '../../../renderer/pages/TerrainPage.tsx'
import { showPage } from '../../../renderer/state/view.ts'
import { answerTo } from '../../../renderer/workers/answer.ts'
import type { Ask, Question } from '../../../renderer/workers/messages.ts'
import { show } from '../a-page.tsx'
import { aPlan } from '../a-plan.ts'
import { someFiles } from '../some-files.ts'
import { terrains } from '../terrain/rode.ts'

const asked: Ask[] = []

/** Answers as the program of rides does, a moment later. */
class SomeWorker {
  onmessage: ((event: { data: unknown }) => void) | null = null
  postMessage({ id, ask }: Question<Ask>) {
    asked.push(ask)
    setTimeout(() => this.onmessage?.({ data: { id, answer: answerTo(ask) } }))
  }
  terminate() {
    this.onmessage = null
  }
}

const plan = aPlan(made => {
  made.terrains = [terrains.ledge]
})

beforeEach(() => {
  asked.length = 0
  vi.stubGlobal('Worker', SomeWorker)
  vi.stubGlobal('requestIdleCallback', (idle: () => void) => setTimeout(idle))
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: false })
})
afterEach(() => vi.unstubAllGlobals())

it('has the rides of the page worked out before it is shown, the rides alone, and leaves nothing behind', async () => {
  const shown = show(<p>Travel</p>, plan)
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: false })
  const before = document.body.innerHTML
  await practise(shown.files)
  expect(document.body.innerHTML).toBe(before)
  expect(asked.map(({ kind }) => kind)).toEqual(['ride', 'ride'])
  Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })
  shown.close()
  const page = show(<TerrainPage />, shown.files.store.read().plan)
  expect(page.page.querySelectorAll('.ride-figures tbody td').length).toBeGreaterThan(8)
  expect([...page.page.querySelectorAll('.ride-figures tbody td')].map(cell => cell.textContent)).not.toContain('')
  expect(asked.length).toBe(2)
  act(() => page.close())
})

it('waits until the hands rest, and does nothing where the page is shown by then', async () => {
  const files = someFiles(plan)
  const done = practise(files)
  const begun = performance.now()
  await new Promise(resolve => setTimeout(resolve, 300))
  dispatchEvent(new KeyboardEvent('keydown', { key: 'a' }))
  showPage(files.store, 'terrain')
  await done
  expect(performance.now() - begun).toBeGreaterThan(700)
  expect(asked).toEqual([])
  files.keeper.stop()
})
