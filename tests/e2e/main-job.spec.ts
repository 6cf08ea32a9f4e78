import { mkdir, readFile } from 'node:fs/promises'
import path from 'node:path'
import {
  budget,
  choose,
  enter,
  field,
  fromMenu,
  lineAt,
  plan,
  redoButton,
  shafts,
  startTaped,
  undoButton,
  wheel,
} from './actions.ts'
import { expect, test } from './window.ts'

const before = /Bump travel 10 inches, ended by stop closed\. Coilover zone 4 inches, engagement zone 6 inches\./
const after =
  /Bump travel 11 3\/4 inches, ended by stop closed\. Coilover zone 5 3\/4 inches, engagement zone 6 inches\./

test('from the tape to the engagement line, through a file and back', async ({ window, served }) => {
  const gap = await field(window, 'Ride height', 'Gap')

  await test.step('a handful of measurements gives a budget', async () => {
    await startTaped(window)
    await expect(budget(window)).toHaveAccessibleName(before)
    await expect(window).toHaveTitle('Sorrel, rear (not saved) - Stopgap')
    await expect(await field(window, 'Ride height', 'Shaft showing')).toHaveValue('8')
    await expect(window.getByText(/\d+ assumed$/)).toBeVisible()
  })

  await test.step('a longer gap moves the engagement line and its numbers', async () => {
    const share = async () => {
      const [ride, engagement, bump] = [
        await lineAt(window, 'ride'),
        await lineAt(window, 'engagement'),
        await lineAt(window, 'bump'),
      ]
      return (ride - engagement) / (ride - bump)
    }
    await expect.poll(share).toBeCloseTo(4 / 10, 3)
    await enter(gap, '2 7/8')
    await expect(budget(window)).toHaveAccessibleName(after)
    await expect.poll(share).toBeCloseTo(5.75 / 11.75, 3)
    await expect(window.getByRole('region', { name: 'Findings' })).toContainText('Gas volume is assumed')
  })

  await test.step('undo says what it takes back, redo brings it again', async () => {
    await expect(undoButton(window)).toHaveAccessibleName('Undo: gap 2 7/8 in')
    await undoButton(window).click()
    await expect(gap).toHaveValue('2')
    await expect(budget(window)).toHaveAccessibleName(before)
    await expect(undoButton(window)).toBeDisabled()
    await window.keyboard.press('Control+y')
    await expect(gap).toHaveValue('2 7/8')
    await expect(budget(window)).toHaveAccessibleName(after)
  })

  const file = path.join(served.home, 'builds', 'sorrel.stopgap')
  await test.step('saved in a folder of the person’s home', async () => {
    await mkdir(path.dirname(file))
    await window.keyboard.press('Control+s')
    const chooser = window.getByRole('dialog', { name: 'Save as' })
    await chooser.getByRole('button', { name: 'builds/' }).click()
    await expect(chooser.getByText('No folders and no plans here.')).toBeVisible()
    await chooser.getByRole('textbox', { name: 'Name' }).fill('sorrel')
    await chooser.getByRole('button', { name: 'Save here' }).click()
    await expect(plan(window)).toHaveAccessibleName(/sorrel\.stopgap, saved/)
    await expect(window).toHaveTitle('Sorrel, rear (saved) - Stopgap')
  })

  await test.step('a change is marked until it is saved too', async () => {
    await enter(await field(window, 'Weights', 'Corner'), '1100')
    await expect(plan(window)).toHaveAccessibleName(/sorrel\.stopgap, not saved/)
    await expect(window).toHaveTitle(/not saved/)
    await window.keyboard.press('Control+s')
    await expect(plan(window)).toHaveAccessibleName(/sorrel\.stopgap, saved/)
  })
  const saved = await readFile(file, 'utf8')
  expect(JSON.parse(saved).setups[0].axles[0].corner.stop.gap).toBeCloseTo(2.875 * 0.0254, 12)

  await test.step('loaded again, every step can still be undone', async () => {
    await window.reload()
    await expect(undoButton(window)).toHaveAccessibleName(/^Undo: corner .*1,100 lb$/)
    await undoButton(window).click()
    await undoButton(window).click()
    await expect(gap).toHaveValue('2')
    await expect(plan(window)).toHaveAccessibleName(/not saved/)
    await redoButton(window).click()
    await redoButton(window).click()
    await expect(plan(window)).toHaveAccessibleName(/sorrel\.stopgap, saved/)
  })

  await test.step('opened again from the recent plans, it is the same to the letter', async () => {
    await fromMenu(window, 'Yarrow, on its stops')
    await expect(plan(window)).toHaveAccessibleName(/^Plan Yarrow/)
    await fromMenu(window, /^sorrel builds/)
    await expect(budget(window)).toHaveAccessibleName(after)
    await expect(plan(window)).toHaveAccessibleName(/sorrel\.stopgap, saved/)
    await fromMenu(window, /^Save as/)
    const chooser = window.getByRole('dialog', { name: 'Save as' })
    await chooser.getByRole('textbox', { name: 'Name' }).fill('sorrel again')
    await chooser.getByRole('button', { name: 'Save here' }).click()
    await expect(plan(window)).toHaveAccessibleName(/sorrel again\.stopgap, saved/)
    expect(await readFile(path.join(served.home, 'builds', 'sorrel again.stopgap'), 'utf8')).toBe(saved)
  })
})

test('the wheel goes where it is dragged and stepped, and every number goes with it', async ({ window }) => {
  const tag = wheel(window)
  const track = (await window.locator('[data-wheel-handle="track"]').boundingBox())!
  const plate = (await window.getByRole('main').boundingBox())!
  const [ride, bump] = [plate.y + (await lineAt(window, 'ride')), plate.y + (await lineAt(window, 'bump'))]
  const x = track.x + track.width - 4
  const position = async () => Number(await tag.getAttribute('aria-valuenow'))
  const full = Number(await tag.getAttribute('aria-valuemax'))

  await window.mouse.move(x, (ride + bump) / 2)
  await window.mouse.down()
  await expect.poll(position).toBeCloseTo(full / 2, 0)
  await window.mouse.move(x, bump - 40, { steps: 4 })
  await expect(tag).toHaveAttribute('aria-valuenow', String(full))
  await expect(shafts(window)).toHaveAccessibleName(/Stop 0 inches left/)
  await window.mouse.up()
  await window.mouse.move(x, ride)
  await expect(tag).toHaveAttribute('aria-valuenow', String(full))

  await tag.press('Home')
  await expect(tag).toHaveAttribute('aria-valuenow', String(await tag.getAttribute('aria-valuemin')))
  await tag.press('PageUp')
  await tag.press('End')
  await tag.press('PageDown')
  await tag.press('ArrowUp')
  await expect.poll(async () => full - (await position())).toBeLessThan(0.99)
  expect(full - (await position())).toBeGreaterThan(0.8)
  await expect(shafts(window)).not.toHaveAccessibleName(/Stop 0 inches left/)

  const hub = (await window.locator('[data-wheel-hub]').boundingBox())!
  const from = await position()
  await window.mouse.move(hub.x + hub.width / 2, hub.y + hub.height / 2)
  await window.mouse.down()
  await window.mouse.move(hub.x + hub.width / 2, hub.y + hub.height / 2 + 20, { steps: 3 })
  await window.mouse.up()
  await expect.poll(position).toBeLessThan(from - 2)
})

test('front and rear, found and proposed, inch and metric', async ({ window }) => {
  const gap = await field(window, 'Ride height', 'Gap')
  await expect(gap).toHaveValue('1 1/4')
  await choose(window, 'Axle', 'Front')
  await expect(window.getByRole('main').getByRole('group')).toHaveAccessibleName(/^Travel of As found, front/)
  await choose(window, 'Axle', 'Rear')

  await choose(window, 'Setup', 'Proposed')
  await expect(gap).toHaveValue('2 1/4')
  const lead = async () => (await lineAt(window, 'other engagement')) - (await lineAt(window, 'engagement'))
  await expect.poll(lead).toBeGreaterThan(20)
  await choose(window, 'Setup', 'As found')
  await expect.poll(lead).toBeLessThan(-20)

  await window.getByRole('button', { name: 'Add a setup' }).click()
  await expect(window.getByRole('radio', { name: 'Proposed 2' })).toBeChecked()
  await expect(undoButton(window)).toHaveAccessibleName('Undo: new setup Proposed 2')
  await enter(gap, '3')
  await expect(window.locator('[data-line="other engagement"]')).toHaveCount(1)
  await choose(window, 'Setup', 'As found')
  await expect(gap).toHaveValue('1 1/4')

  await choose(window, 'Units', 'Metric')
  await expect(gap).toHaveValue('31.8')
  await expect(budget(window)).toHaveAccessibleName(/Coilover zone \d+ millimetres/)
  await enter(gap, '1 1/2"')
  await expect(gap).toHaveValue('38.1')
  await choose(window, 'Units', 'Inch')
  await expect(gap).toHaveValue('1 1/2')
})

test('a wrong entry says what would be right, and changes nothing', async ({ window }) => {
  const showing = await field(window, 'Ride height', 'Shaft showing')
  const said = (await budget(window).getAttribute('aria-label'))!
  for (const [text, words] of [
    [
      '17 1/2',
      'More than 14 in of stroke. Tape only the bright shaft, from the body to what it meets. Still using 7 1/4 in.',
    ],
    ['-2', 'Too small. It takes 0 in or more. Still using 7 1/4 in.'],
    ['seven', 'Not a number. Enter 2 7/8, 2.875 or 73 mm. Still using 7 1/4 in.'],
    ['', 'Nothing entered. Enter 2 7/8, 2.875 or 73 mm. Still using 7 1/4 in.'],
  ] as const) {
    await enter(showing, text)
    await expect(showing).toHaveAttribute('aria-invalid', 'true')
    await expect(showing).toHaveAccessibleDescription(words)
    await expect(showing).toHaveValue(text)
    await expect(budget(window)).toHaveAccessibleName(said)
  }
  await expect(undoButton(window)).toBeDisabled()
  await showing.press('Escape')
  await expect(showing).toHaveValue('7 1/4')
  await expect(showing).not.toHaveAttribute('aria-invalid')
})
