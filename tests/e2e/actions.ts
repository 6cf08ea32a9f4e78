import type { Locator, Page } from '@playwright/test'
import { expect } from './window.ts'

/** What a person does at the window, and where they look, in the words of the job. */

/** A group of measurements, unfolded. */
export async function group(window: Page, title: string): Promise<Locator> {
  const head = window
    .getByRole('complementary')
    .getByRole('heading', { level: 3, name: new RegExp(`^${title}( |$)`) })
    .getByRole('button')
  if ((await head.getAttribute('aria-expanded')) === 'false') await head.click()
  return window.getByRole('group', { name: title, exact: true })
}

export async function field(window: Page, title: string, name: string): Promise<Locator> {
  return (await group(window, title)).getByRole('textbox', { name, exact: true })
}

export async function enter(input: Locator, text: string): Promise<void> {
  await input.fill(text)
  await input.press('Enter')
}

export async function choose(window: Page, of: string, name: string): Promise<void> {
  await window.getByRole('radiogroup', { name: of }).getByText(name, { exact: true }).click()
}

/** What the budget says, in its sentence. */
export const budget = (window: Page) => window.getByRole('img', { name: /^Budget\./ })

export const shafts = (window: Page) => window.getByRole('img', { name: /^Shafts / })

export const wheel = (window: Page) => window.getByRole('slider', { name: 'Wheel position' })

/** Height of a line across the plate, px from its top. */
export async function lineAt(window: Page, line: string): Promise<number> {
  const path = await window.locator(`[data-line="${line}"]`).getAttribute('d')
  return Number(/^M\S+ ([\d.]+)/.exec(path ?? '')?.[1])
}

/** The button with the plan's name and what became of it. */
export const plan = (window: Page) => window.getByRole('button', { name: /^Plan .*: files$/ })

export async function fromMenu(window: Page, item: string | RegExp): Promise<void> {
  await plan(window).click()
  await window.getByRole('menu', { name: 'Files' }).getByRole('menuitem', { name: item }).click()
}

/** Goes to a page of the window, in sight or in the menu of the others. */
export async function openPage(window: Page, name: string): Promise<void> {
  const pages = window.getByRole('navigation', { name: 'Pages' })
  await pages.waitFor()
  const more = pages.getByRole('button', { name: /more page/ })
  if (await more.isVisible()) {
    if (await pages.getByRole('button', { name, exact: true }).isVisible()) return
    await more.click()
    await window.getByRole('menuitem', { name, exact: true }).click()
  } else await pages.getByRole('button', { name, exact: true }).click()
  await expect(window.getByRole('main', { name, exact: true })).toBeVisible()
}

export const undoButton = (window: Page) => window.getByRole('button', { name: /^Undo/ })
export const redoButton = (window: Page) => window.getByRole('button', { name: /^Redo/ })

/** Lets a file fall onto the window. */
export async function drop(window: Page, name: string, text: string): Promise<void> {
  const dataTransfer = await window.evaluateHandle(
    file => {
      const transfer = new DataTransfer()
      transfer.items.add(new File([file.text], file.name))
      return transfer
    },
    { name, text },
  )
  await window.dispatchEvent('body', 'drop', { dataTransfer })
}

/**
 * A plan of a car taped in the shop: 3 in of stop met 2 in off its pad, through half the wheel's travel, so the wheel meets it at 4 in and
 * closes it at 10; a shock of 14 in with 8 showing has 3 1/3 in of wheel travel more.
 */
export const taped: Readonly<Record<string, string>> = {
  Title: 'Sorrel, rear',
  'Shock stroke': '14',
  'Shaft showing': '8"',
  'Stop stroke': '3',
  Gap: '2',
  'Motion ratio, shock': '.6',
  'Motion ratio, stop': '1/2',
  'Spring rate': '300',
  'Corner weight': '1,050',
}

export async function startTaped(window: Page): Promise<void> {
  await window.keyboard.press('Control+n')
  const dialog = window.getByRole('dialog', { name: 'New plan' })
  await dialog.getByText('One spring', { exact: true }).click()
  await dialog.getByText('Known', { exact: true }).click()
  for (const [name, text] of Object.entries(taped)) await dialog.getByRole('textbox', { name, exact: true }).fill(text)
  await dialog.getByRole('button', { name: 'Start the plan' }).click()
  await expect(plan(window)).toHaveAccessibleName(/^Plan Sorrel, rear, not in a file yet/)
}
