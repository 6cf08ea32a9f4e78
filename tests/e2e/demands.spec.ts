import { readFile } from 'node:fs/promises'
import path from 'node:path'
import type { Page } from '@playwright/test'
import { drop, enter, plan, undoButton } from './actions.ts'
import { readable } from './readable.ts'
import { expect, test } from './window.ts'

const seeds = path.join(import.meta.dirname, '../../seeds')

const demands = (window: Page) => window.getByRole('img', { name: /^Demands\./ })
const count = (window: Page, load: string) =>
  window.getByRole('button', { name: `Count ${load} among the demands`, exact: true })

test.describe('a car on its stops', () => {
  test.use({ planFile: path.join(seeds, 'on-its-stops.stopgap') })

  test('loads are counted and left out on the plate, and their sum follows', async ({ window }) => {
    const all = await demands(window).getAttribute('aria-label')
    expect(all).toMatch(/Together .* inches/)
    const gear = count(window, 'Camp gear and water')
    await expect(gear).toHaveAttribute('aria-pressed', 'true')
    await gear.click()
    await expect(gear).toHaveAttribute('aria-pressed', 'false')
    await expect(demands(window)).toHaveAccessibleName(/Camp gear and water .* inches, not counted/)
    expect(await demands(window).getAttribute('aria-label')).not.toBe(all)
    await gear.press(' ')
    await expect(demands(window)).toHaveAccessibleName(all!)

    for (const load of ['Camp gear and water', 'Hard corner', 'Braking downhill', 'Ruts and rocks'])
      await count(window, load).click()
    await expect(demands(window)).not.toHaveAccessibleName(/left before|Together/)
    await count(window, 'Hard corner').click()
    await expect(demands(window)).toHaveAccessibleName(/left before the stop/)
  })

  test('a bar leads to its size, and what is entered there moves it', async ({ window }) => {
    await window.getByRole('button', { name: /^Edit Hard corner/ }).click()
    const size = window.getByRole('textbox', { name: 'sideways', exact: true })
    await expect(size).toBeFocused()
    const before = await demands(window).getAttribute('aria-label')
    await enter(size, '0.2')
    await expect.poll(() => demands(window).getAttribute('aria-label')).not.toBe(before)
  })

  test('a bar is moved where it stands, by key and by hand, each hold undone as one', async ({ window }) => {
    const bar = window.getByRole('button', { name: /^Edit Hard corner/ })
    const size = () => bar.getAttribute('aria-label')
    const before = await size()
    await bar.focus()
    await bar.press('ArrowUp')
    await bar.press('ArrowUp')
    await expect.poll(size).not.toBe(before)
    const stepped = await size()
    const { x, y, width, height } = (await bar.boundingBox())!
    await window.mouse.move(x + width / 2, y + height / 2)
    await window.mouse.down()
    await window.mouse.move(x + width / 2, y + height / 2 + 40, { steps: 5 })
    await window.mouse.up()
    await expect.poll(size).not.toBe(stepped)
    await undoButton(window).click()
    await expect.poll(size).toBe(stepped)
    await undoButton(window).click()
    await expect.poll(size).toBe(before)
  })

  test('the axle in roll is reached from its column and told in words', async ({ window }, info) => {
    await window.getByRole('button', { name: 'Axle in roll' }).first().click()
    const dialog = window.getByRole('dialog', { name: 'Rear axle in roll' })
    await expect(dialog.getByRole('img')).toHaveAccessibleName(/^The car leans \d\.\d°\. .*outer rear stop/)
    await readable(window, info, 'axle in roll')
    await window.keyboard.press('Escape')
    await expect(dialog).toBeHidden()
  })
})

test('a plan without loads is offered some, taken back as one', async ({ window }) => {
  const empty = JSON.parse(await readFile(path.join(seeds, 'new-chassis.stopgap'), 'utf8'))
  await drop(window, 'empty.stopgap', JSON.stringify({ ...empty, title: 'Empty', loads: [] }))
  await expect(plan(window)).toHaveAccessibleName(/^Plan Empty/)
  await expect(demands(window)).toHaveAccessibleName('Demands. No loads yet.')
  await window.getByRole('main').getByRole('button', { name: 'Begin with usual loads' }).click()
  await expect(demands(window)).toHaveAccessibleName(/Two people and gear .* inches, assumed/)
  await expect(window.getByRole('button', { name: /^Count / })).toHaveCount(4)
  await undoButton(window).click()
  await expect(demands(window)).toHaveAccessibleName('Demands. No loads yet.')
})
