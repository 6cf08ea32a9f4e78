import type { Page } from '@playwright/test'
import { choose } from './actions.ts'
import { readable } from './readable.ts'
import { expect, test } from './window.ts'

async function openChanges(window: Page): Promise<void> {
  await choose(window, 'Axle', 'Rear')
  const inSight = window.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Changes' })
  if (!(await inSight.isVisible())) await window.getByRole('button', { name: /more page/ }).click()
  await window.getByText('Changes', { exact: true }).first().click()
  await expect(window.getByRole('main', { name: 'Changes' })).toBeVisible()
}

const listed = (window: Page) => window.locator('.candidate')
const map = (window: Page) => window.getByRole('img', { name: /^Map of the coilover/ })

for (const look of [
  { colorScheme: 'light', viewport: { width: 1440, height: 900 } },
  { colorScheme: 'dark', viewport: { width: 1024, height: 700 } },
] as const)
  test.describe(`${look.colorScheme}, ${look.viewport.width} × ${look.viewport.height}`, () => {
    test.use(look)

    test('candidates are found, one becomes a setup, and both ways can be read by everyone', async ({
      window,
    }, info) => {
      test.slow()
      await openChanges(window)
      await expect(listed(window).first()).toBeVisible({ timeout: 60_000 })
      await expect(map(window)).toHaveAccessibleName(/\d+ candidates, \d+ of them meet every target/)
      await readable(window, info, 'look')
      await listed(window).first().focus()
      await window.keyboard.press('Enter')
      await expect(window.getByRole('status').filter({ hasText: 'is now' })).toBeVisible()
      await window.getByRole('button', { name: /^Undo/ }).click()
      await expect(window.getByRole('status').filter({ hasText: 'is now' })).toBeHidden()
      await choose(window, 'How', 'Change by hand')
      await expect(window.getByText('What stays: the closed position', { exact: false })).toBeVisible()
      await readable(window, info, 'hand')
    })
  })

test('a target is a line moved by the keys, and the plan keeps it', async ({ window }) => {
  await openChanges(window)
  const line = window.getByRole('slider', { name: 'Target: share on the coilover, least' })
  await expect(line).toHaveAttribute('aria-valuetext', '45 %')
  await line.focus()
  await line.press('ArrowUp')
  await expect(line).toHaveAttribute('aria-valuetext', '46 %')
  await window.getByRole('button', { name: /^Undo/ }).click()
  await expect(line).toHaveAttribute('aria-valuetext', '45 %')
})
