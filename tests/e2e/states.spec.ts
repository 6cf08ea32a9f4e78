import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { budget, choose, drop, enter, field, fromMenu, group, plan, startTaped, undoButton } from './actions.ts'
import { readable } from './readable.ts'
import { expect, test } from './window.ts'

const newChassis = path.join(import.meta.dirname, '../../seeds/new-chassis.stopgap')

const looks = [
  { colorScheme: 'light', viewport: { width: 1440, height: 900 } },
  { colorScheme: 'dark', viewport: { width: 1024, height: 700 } },
] as const

for (const look of looks) {
  test.describe(`${look.colorScheme}, ${look.viewport.width} × ${look.viewport.height}`, () => {
    test.use(look)

    test('every state of the plan is drawn, and can be read by everyone', async ({ window }, info) => {
      test.slow()
      const see = (state: string) => test.step(state, () => readable(window, info, state))
      await see('first start')

      await enter(await field(window, 'Stop', 'Stroke'), 'three')
      await see('wrong entry')
      await window.keyboard.press('Escape')

      await choose(window, 'Units', 'Metric')
      await expect(budget(window)).toHaveAccessibleName(/millimetres/)
      await see('metric')
      await choose(window, 'Units', 'Inch')

      await choose(window, 'Kind of stop', 'None')
      await expect(budget(window)).toHaveAccessibleName(/All of it is on the coilover/)
      await see('no stop')
      await undoButton(window).click()

      for (const kind of ['Table', 'Axle']) {
        await group(window, 'Linkage')
        await choose(window, 'Linkage by', kind)
        await see(`linkage by ${kind.toLowerCase()}`)
      }

      await fromMenu(window, 'Yarrow, on its stops')
      await expect(window.getByText(/^It rides on its stop/)).toBeVisible()
      await see('on its stops')

      const empty = JSON.parse(await readFile(newChassis, 'utf8'))
      await drop(window, 'empty.stopgap', JSON.stringify({ ...empty, title: '', notes: '', loads: [], terrains: [] }))
      await expect(plan(window)).toHaveAccessibleName(/^Plan Plan without a title|^Plan without a title/)
      await see('no title, no loads')

      await startTaped(window)
      await expect(window.getByRole('radiogroup', { name: 'Axle' }).getByRole('radio')).toHaveCount(1)
      await see('one axle')
    })

    test('every dialog and menu can be read by everyone', async ({ window }, info) => {
      const see = (state: string) => test.step(state, () => readable(window, info, state))
      await plan(window).click()
      await see('files')
      await window.keyboard.press('Escape')

      await window.getByRole('button', { name: /^Setups/ }).click()
      await see('setups')
      await window.keyboard.press('Escape')

      await window.keyboard.press('Control+n')
      await window.getByRole('button', { name: 'Start the plan' }).click()
      await see('guided start, nothing entered')
      await window.getByRole('button', { name: 'Cancel' }).click()

      await window.keyboard.press('Control+s')
      await expect(window.getByRole('dialog', { name: 'Save as' }).getByRole('button', { name: 'Home' })).toBeVisible()
      await see('save as')
      await window.getByRole('button', { name: 'Cancel' }).click()

      await drop(window, 'torn.stopgap', '{')
      await expect(window.getByRole('status')).toContainText('torn')
      await see('a file that cannot be opened')
    })
  })
}
