import { test as base, type Page } from '@playwright/test'
import { type Served, serveWindow } from './served.ts'

interface Fixtures {
  /** Absolute path of the plan the window opens first; without one it opens as it does the first time. */
  planFile: string | undefined
  /** The first look around is shown, as it is the first time. */
  newcomer: boolean
  served: Served
  /** The window, open and past its start. A fault the page does not catch fails the test. */
  window: Page
}

export const test = base.extend<Fixtures>({
  planFile: [undefined, { option: true }],
  newcomer: [false, { option: true }],
  served: async ({ planFile, newcomer }, use) => {
    const served = await serveWindow(planFile, undefined, newcomer)
    await use(served)
    await served.end()
  },
  window: async ({ page, served }, use) => {
    const faults: string[] = []
    page.on('pageerror', fault => faults.push(fault.stack ?? fault.message))
    await page.goto(served.address)
    await page.getByRole('complementary', { name: 'Measurements' }).getByRole('textbox').first().waitFor()
    await use(page)
    if (faults.length > 0) throw new Error(`The page met faults it did not catch:\n${faults.join('\n')}`)
  },
})
export { expect } from '@playwright/test'
