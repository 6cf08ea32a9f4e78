import { readFile, writeFile } from 'node:fs/promises'
import path from 'node:path'
import type { Page } from '@playwright/test'
import { budget, choose, drop, enter, field, plan, redoButton, undoButton } from './actions.ts'
import type { Served } from './served.ts'
import { expect, test } from './window.ts'

const seeds = path.join(import.meta.dirname, '../../seeds')
const demo = () => readFile(path.join(seeds, 'before-and-after.stopgap'), 'utf8')

/** Puts a plan into the home and opens it as a person does. */
async function openOwn(window: Page, served: Served, name: string, text: string): Promise<string> {
  const file = path.join(served.home, `${name}.stopgap`)
  await writeFile(file, text)
  await window.keyboard.press('Control+o')
  await window
    .getByRole('dialog', { name: 'Open a plan' })
    .getByRole('button', { name: new RegExp(`^${name}`) })
    .click()
  return file
}

const isOpen = (window: Page, name: string) =>
  expect(plan(window)).toHaveAccessibleName(new RegExp(`${name}\\.stopgap`))

const setGap = async (window: Page, gap: string) => enter(await field(window, 'Ride height', 'Gap'), gap)

test('undo survives loading the window again, however soon after a change', async ({ window, served }) => {
  await openOwn(window, served, 'own', await demo())
  await isOpen(window, 'own')
  await choose(window, 'Axle', 'Rear')
  const gap = await field(window, 'Ride height', 'Gap')
  const before = await gap.inputValue()
  for (let n = 1; n <= 8; n += 1) await enter(gap, `${2 + n / 16}`)
  await setGap(window, '3 3/16')
  await setGap(window, '3 1/16')
  const said = (await budget(window).getAttribute('aria-label'))!
  await window.reload()
  await expect(budget(window)).toHaveAccessibleName(said)
  await expect(undoButton(window)).toHaveAccessibleName('Undo: gap 3 1/16 in')
  await undoButton(window).click()
  await window.reload()
  await choose(window, 'Axle', 'Rear')
  await expect(await field(window, 'Ride height', 'Gap')).toHaveValue('3 3/16')
  await expect(redoButton(window)).toHaveAccessibleName('Redo: gap 3 1/16 in')
  for (let n = 0; n < 9; n += 1) await undoButton(window).click()
  await expect(await field(window, 'Ride height', 'Gap')).toHaveValue(before)
})

test('two windows on one file: both are told, and neither saves over the other', async ({ window, served }, info) => {
  const file = await openOwn(window, served, 'own', await demo())
  await isOpen(window, 'own')
  await expect(plan(window)).toHaveAccessibleName(/^Plan Hackberry.*saved/)
  // As the browser's own “Duplicate tab” does, secret and all.
  const [second] = await Promise.all([
    window.context().waitForEvent('page'),
    window.evaluate(() => void open(location.pathname)),
  ])
  await expect(second.getByRole('status')).toContainText('“own” is open in another window too.')
  await expect(window.getByRole('status')).toContainText('“own” has been opened in another window too.')
  await window.screenshot({ path: info.outputPath('first.png') })
  await choose(window, 'Axle', 'Rear')
  await choose(second, 'Axle', 'Rear')
  await setGap(window, '3 1/16')
  await setGap(second, '3 3/16')

  await test.step('each keeps its own, also when it is loaded again', async () => {
    await second.reload()
    await choose(second, 'Axle', 'Rear')
    await expect(await field(second, 'Ride height', 'Gap')).toHaveValue('3 3/16')
    await window.reload()
    await choose(window, 'Axle', 'Rear')
    await expect(await field(window, 'Ride height', 'Gap')).toHaveValue('3 1/16')
    await expect(window.getByRole('status')).not.toContainText('another window')
  })

  await test.step('the second to save is asked', async () => {
    await window.keyboard.press('Control+s')
    await expect(plan(window)).toHaveAccessibleName(/, saved/)
    const saved = await readFile(file, 'utf8')
    await second.keyboard.press('Control+s')
    const dialog = second.getByRole('dialog', { name: 'The file has changed' })
    await expect(dialog).toBeVisible()
    expect(await readFile(file, 'utf8')).toBe(saved)
    await dialog.getByRole('button', { name: 'Open theirs, set mine aside' }).click()
    await expect(second.getByRole('status')).toContainText('“own (unsaved copy)”')
    await choose(second, 'Axle', 'Rear')
    await expect(await field(second, 'Ride height', 'Gap')).toHaveValue('3 1/16')
    expect(await readFile(file, 'utf8')).toBe(saved)
  })
})

test('of a damaged file what can be read is offered, and the file stays as it is', async ({ window, served }, info) => {
  const text = await demo()
  const torn = text.slice(0, text.lastIndexOf('"tire"'))
  const file = await openOwn(window, served, 'torn', torn)
  const status = window.getByRole('status')
  await expect(status).toContainText('“torn” could not be opened')
  await window.screenshot({ path: info.outputPath('offered.png') })
  await status.getByRole('button', { name: 'Open what can be read of it' }).click()
  await expect(status).toContainText('This is what can be read of “torn”')
  await expect(status).toContainText('marked as assumed: the tire (“Proposed”, rear)')
  await expect(plan(window)).toHaveAccessibleName(/not in a file yet/)
  await window.screenshot({ path: info.outputPath('read.png') })
  expect(await readFile(file, 'utf8')).toBe(torn)

  await test.step('also of one that is dropped', async () => {
    await drop(window, 'fallen.stopgap', torn)
    await status.getByRole('button', { name: 'Open what can be read of it' }).click()
    await expect(status).toContainText('This is what can be read of “fallen”')
  })
})

test('markup in a plan is text on every page', async ({ window, served }) => {
  const markup = '<img src=x onerror="window.ran=1"><script>window.ran=1</script>'
  const dressed = JSON.parse(await demo(), (key, value: unknown) =>
    (key === 'name' || key === 'title' || key === 'notes') && typeof value === 'string' ? `${markup}${value}` : value,
  ) as object
  await openOwn(window, served, 'dressed', JSON.stringify(dressed))
  await isOpen(window, 'dressed')
  await expect(plan(window)).toHaveAccessibleName(/^Plan <img src=x/)
  const pages = window.getByRole('navigation', { name: 'Pages' }).getByRole('button')
  const names = await pages.allTextContents()
  for (const name of names.filter(each => !/more page/i.test(each))) {
    await pages.filter({ hasText: name }).first().click()
    await expect(window.getByRole('main')).toBeVisible()
    const found = await window.evaluate(() => ({
      ran: 'ran' in globalThis,
      images: document.querySelectorAll('img[src="x"]').length,
      scripts: [...document.scripts].filter(script => script.src === '').length,
    }))
    expect(found, name).toEqual({ ran: false, images: 0, scripts: 0 })
  }
  await expect(window.getByText('<img src=x').first()).toBeVisible()
})
