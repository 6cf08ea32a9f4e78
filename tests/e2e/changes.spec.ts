import { readFile } from 'node:fs/promises'
import path from 'node:path'
import type { Page } from '@playwright/test'
import { choose, enter } from './actions.ts'
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
      await choose(window, 'How', 'By hand')
      await expect(window.getByText('What stays: the closed position', { exact: false })).toBeVisible()
      await readable(window, info, 'hand')
      await choose(window, 'How', 'Before and after')
      await expect(window.getByRole('table', { name: /^What differs between As found and/ })).toBeVisible()
      await readable(window, info, 'before-and-after')
      await choose(window, 'How', 'Shelf')
      await window.getByRole('button', { name: 'This car’s stop' }).click()
      await window.getByText('9 generic sizes', { exact: false }).click()
      await readable(window, info, 'shelf')
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

test('what is put on the shelf is there the next time, and changes are taken from it', async ({ window, served }) => {
  test.slow()
  await openChanges(window)
  await choose(window, 'How', 'Shelf')
  await window.getByRole('button', { name: 'This car’s main spring' }).click()
  const part = window.getByRole('region', { name: /lb\/in/ })
  await enter(part.getByRole('textbox', { name: 'Rate' }), '410')
  await enter(part.getByRole('textbox', { name: 'Name' }), 'Rack, left')
  await expect(window.getByRole('button', { name: /^Rack, left/ })).toBeVisible()
  const download = window.waitForEvent('download')
  await window.getByRole('button', { name: 'Export' }).click()
  const file = await (await download).path()
  await window.keyboard.press('Control+z')
  await expect(window.getByRole('button', { name: /^Rack, left/ })).toBeHidden()
  await window.getByLabel('Shelf file').setInputFiles(file)
  await expect(window.getByRole('status').filter({ hasText: 'is on the shelf' })).toBeVisible()
  await expect
    .poll(async () => readFile(path.join(served.data, 'shelf.json'), 'utf8').catch(() => ''))
    .toContain('Rack, left')
  await window.reload()
  await openChanges(window)
  await window.getByText('Another main spring', { exact: false }).click()
  await expect(window.getByRole('checkbox', { name: 'Rack, left' })).toBeChecked()
})

test('ranges somebody chose are kept in the plan, and undone with it', async ({ window }) => {
  await openChanges(window)
  const ranges = window.getByRole('region', { name: 'May be changed' })
  await enter(ranges.getByRole('textbox', { name: 'to' }).first(), '1 1/2')
  await expect(ranges.getByText('Your own ranges, kept in the plan.')).toBeVisible()
  await choose(window, 'Axle', 'Front')
  await choose(window, 'Axle', 'Rear')
  await expect(ranges.getByRole('textbox', { name: 'to' }).first()).toHaveValue('1 1/2')
  await window.getByRole('button', { name: /^Undo/ }).click()
  await expect(ranges.getByText('The usual ranges')).toBeVisible()
})
