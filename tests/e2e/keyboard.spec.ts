import { readFile } from 'node:fs/promises'
import path from 'node:path'
import type { Page } from '@playwright/test'
import { budget, plan, taped, undoButton, wheel } from './actions.ts'
import { expect, test } from './window.ts'

/** What has the keyboard, by name, and whether it shows that; null while the browser's own bar has it. */
const held = (window: Page) =>
  window.evaluate(() => {
    const element = document.activeElement
    if (element === null || element === document.body) return null
    const { labels } = element as HTMLInputElement
    const named = element.getAttribute('aria-label') ?? labels?.[0]?.textContent ?? element.textContent ?? ''
    const outlined = [element, element.parentElement].some(each => {
      const { outlineStyle, outlineWidth } = getComputedStyle(each ?? element)
      return outlineStyle !== 'none' && outlineWidth !== '0px'
    })
    const ring = element.closest('svg') === null ? null : element.firstElementChild
    const ringed = ring !== null && getComputedStyle(ring).stroke !== 'none'
    return { named: named.trim(), shown: outlined || ringed }
  })

/** Goes on with Tab until something of that name has the keyboard, and sees that each stop on the way shows that it has it. */
async function tabTo(window: Page, name: string | RegExp): Promise<void> {
  const passed: string[] = []
  for (let presses = 0; presses < 120; presses++) {
    const at = await held(window)
    if (at !== null && (typeof name === 'string' ? at.named === name : name.test(at.named))) return
    if (at !== null) passed.push(at.named)
    await window.keyboard.press('Tab')
    const after = `what comes after “${passed.at(-1)}” shows that it has the keyboard`
    await expect.poll(async () => (await held(window))?.shown ?? true, after).toBe(true)
  }
  throw new Error(`Tab never came to ${name}; it passed ${passed.join(' · ')}.`)
}

test('the whole job without a pointer', async ({ window, served }) => {
  const { keyboard } = window

  await test.step('new plan from the menu', async () => {
    await tabTo(window, /^Plan Hackberry/)
    await keyboard.press('Enter')
    await expect(window.getByRole('menuitem', { name: /^New plan/ })).toBeFocused()
    await keyboard.press('Enter')
    await expect(window.getByRole('dialog', { name: 'New plan' })).toBeVisible()
  })

  await test.step('its questions, in order', async () => {
    await tabTo(window, 'Title')
    await keyboard.type(taped.Title!)
    await tabTo(window, 'Tender and main')
    await keyboard.press('ArrowLeft')
    await tabTo(window, 'Measure by jacking')
    await keyboard.press('ArrowRight')
    for (const [name, text] of Object.entries(taped).slice(1)) {
      await tabTo(window, name)
      await keyboard.type(text)
    }
    await keyboard.press('Enter')
    await expect(plan(window)).toHaveAccessibleName(/^Plan Sorrel, rear/)
  })

  await test.step('a measurement, stepped and typed', async () => {
    await tabTo(window, 'Gap')
    await keyboard.press('ArrowUp')
    await expect(window.locator(':focus')).toHaveValue('2 1/16')
    await keyboard.press('Control+a')
    await keyboard.type('2 7/8')
    await keyboard.press('Enter')
    await expect(budget(window)).toHaveAccessibleName(/Coilover zone 5 3\/4 inches/)
  })

  await test.step('the wheel', async () => {
    await tabTo(window, 'Wheel position')
    await keyboard.press('End')
    await expect(wheel(window)).toHaveAttribute('aria-valuenow', '11.75')
  })

  await test.step('a mark leads to its finding, and the finding to the field it rests on', async () => {
    await window.getByRole('button', { name: /^Finding 1/ }).focus()
    await keyboard.press('Enter')
    expect((await held(window))?.named).toMatch(/^See /)
    await keyboard.press('Enter')
    await expect(window.locator(':focus')).toHaveAttribute('data-field', /^corner\./)
  })

  await test.step('undo, redo, save', async () => {
    await keyboard.press('Control+z')
    await expect(budget(window)).toHaveAccessibleName(/Coilover zone 4 inches/)
    await keyboard.press('Control+Shift+z')
    await expect(undoButton(window)).toHaveAccessibleName('Undo: gap 2 7/8 in')
    await keyboard.press('Control+s')
    const chooser = window.getByRole('dialog', { name: 'Save as' })
    await expect(chooser.getByText('No folders and no plans here.')).toBeVisible()
    await tabTo(window, 'Name')
    await keyboard.press('Control+a')
    await keyboard.type('by keys')
    await keyboard.press('Enter')
    await expect(plan(window)).toHaveAccessibleName(/by keys\.stopgap, saved/)
    expect(await readFile(path.join(served.home, 'by keys.stopgap'), 'utf8')).toContain('Sorrel, rear')
  })
})
