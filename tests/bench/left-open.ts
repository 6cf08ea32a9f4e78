import type { Page } from '@playwright/test'
import { openPage } from '../e2e/actions.ts'
import type { Benchmark } from './benchmark.ts'
import { inOpenedWindow, type OpenedWindow } from './opened.ts'

const edits = 1000
/** As many as fill what is kept on purpose: the steps that can be undone, and the rides that can be shown again. */
const editsBefore = 1000
const ridesBefore = 18
/** Each rides the course and the speeds around it, so these make more than a hundred rides. */
const editsOfRides = 6

/** What a budget of memory allows: measured twice, a heap at rest differs by some percent. */
const FLAT = 1.1

/** By then rides have begun after an edit, ms; they can be over sooner than anybody could look for their progress. */
const BEGUN = 600

const gap = (page: Page) => page.locator('[data-field="corner.stop.gap"]')

async function press(page: Page, times: number): Promise<void> {
  await gap(page).focus()
  for (let i = 0; i < times; i++) await page.keyboard.press(i % 16 < 8 ? 'ArrowUp' : 'ArrowDown')
}

/** One more sixteenth, and everything that is ridden for it. */
async function ride(page: Page, n: number): Promise<void> {
  await gap(page).focus()
  await page.keyboard.press(n % 16 < 8 ? 'ArrowUp' : 'ArrowDown')
  await page.waitForTimeout(BEGUN)
}

const ridden = (page: Page) =>
  page.getByRole('progressbar', { name: 'Rides worked out' }).waitFor({ state: 'hidden', timeout: 120_000 })

async function heapAtRest({ page, calm, heap }: OpenedWindow): Promise<number> {
  await gap(page).blur()
  await calm()
  return heap()
}

/** Seconds nobody touches the window. */
const quiet = 8
/** What the browser counts processor time in, ns: less than one of these is told as one. */
const STEP = 1e7

async function idle(pageName: string): Promise<number> {
  return inOpenedWindow(async window => {
    await openPage(window.page, pageName)
    await window.calm()
    const before = await window.processor()
    await window.page.waitForTimeout(quiet * 1000)
    return Math.max(STEP, (await window.processor()) - before) / quiet
  })
}

/** What a window costs that is left open: nothing is piled up, and nothing is done while nobody does anything. */
export const leftOpen: readonly Benchmark[] = [
  {
    name: `memory after another ${edits.toLocaleString('en-US')} edits`,
    reference: `the same after the first ${editsBefore.toLocaleString('en-US')}`,
    budget: FLAT,
    measure: () =>
      inOpenedWindow(async window => {
        await press(window.page, editsBefore)
        const reference = await heapAtRest(window)
        await press(window.page, edits)
        return { unit: 'bytes', value: await heapAtRest(window), reference }
      }),
  },
  {
    name: 'memory after another 100 rides',
    reference: 'the same once as many rides are kept as ever are',
    budget: FLAT,
    measure: () =>
      inOpenedWindow(async window => {
        const { page } = window
        await openPage(page, 'Terrain')
        await ridden(page)
        for (let i = 0; i < ridesBefore; i++) await ride(page, i)
        await ridden(page)
        const reference = await heapAtRest(window)
        for (let i = 0; i < editsOfRides; i++) {
          await ride(page, i)
          await ridden(page)
        }
        return { unit: 'bytes', value: await heapAtRest(window), reference }
      }),
  },
  ...['Travel', 'Terrain'].map(
    (page): Benchmark => ({
      name: `processor time of ${page} while nobody does anything, a second`,
      reference: 'a hundredth of that second',
      budget: 1,
      measure: async () => ({ unit: 'ns', value: await idle(page), reference: 1e7 }),
    }),
  ),
]
