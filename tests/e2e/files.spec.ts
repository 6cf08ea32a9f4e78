import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { budget, choose, drop, enter, field, fromMenu, plan, undoButton } from './actions.ts'
import { serveWindow } from './served.ts'
import { expect, test } from './window.ts'

const seed = (name: string) => readFile(path.join(import.meta.dirname, '../../seeds', name), 'utf8')

test('a plan dropped on the window is opened; what is no plan is named, and changes nothing', async ({ window }) => {
  const status = window.getByRole('status')

  await test.step('a plan', async () => {
    await drop(window, 'borrowed.stopgap', await seed('on-its-stops.stopgap'))
    await expect(plan(window)).toHaveAccessibleName('Plan Yarrow, on its stops, not in a file yet: files')
    await expect(window.getByText(/^It rides on its stop/)).toBeVisible()
  })
  const said = (await budget(window).getAttribute('aria-label'))!

  await test.step('half a file', async () => {
    await drop(window, 'torn.stopgap', (await seed('on-its-stops.stopgap')).slice(0, 500))
    await expect(status).toContainText('“torn.stopgap” could not be opened')
  })

  await test.step('a plan with a value that cannot be', async () => {
    const wrong = JSON.parse(await seed('on-its-stops.stopgap'))
    wrong.setups[0].axles[0].corner.shock.showing = 9
    await drop(window, 'wrong.stopgap', JSON.stringify(wrong))
    await expect(status).toContainText('“wrong.stopgap” could not be opened')
    await expect(status).toContainText('corner.shock.showing is 9 m; it should be no more than the stroke')
  })

  await test.step('no text at all', async () => {
    await drop(window, 'picture.png', '\u0000\u0001\ufffd')
    await expect(status).toContainText('“picture.png” could not be opened')
  })

  await expect(plan(window)).toHaveAccessibleName(/^Plan Yarrow/)
  await expect(budget(window)).toHaveAccessibleName(said)
})

test('a file that broke since is named where it is opened, and kept', async ({ window, served }) => {
  const broken = path.join(served.home, 'broken.stopgap')
  await writeFile(broken, '{"format": "stopgap-plan", "version": 1, "tit')
  await window.keyboard.press('Control+o')
  const chooser = window.getByRole('dialog', { name: 'Open a plan' })
  await chooser.getByRole('button', { name: /^broken/ }).click()
  await expect(window.getByRole('status')).toContainText(/“broken[^”]*” (could not|cannot) be opened/)
  await expect(plan(window)).toHaveAccessibleName(/^Plan Hackberry/)
  expect(await readFile(broken, 'utf8')).toBe('{"format": "stopgap-plan", "version": 1, "tit')
})

test('after a power cut the plan and its steps are back', async ({ browser }) => {
  const folder = await mkdtemp(path.join(tmpdir(), 'stopgap-cut-'))
  const first = await serveWindow(undefined, folder)
  try {
    const before = await browser.newPage()
    await before.goto(first.address)
    await fromMenu(before, 'Virga, front stops')
    await expect(plan(before)).toHaveAccessibleName(/^Plan Virga/)
    await choose(before, 'Axle', 'Front')
    const kept = before.waitForResponse(
      answer =>
        answer.url().endsWith('/call/keep') && (answer.request().postData()?.includes('gap 3 1/16 in') ?? false),
    )
    await enter(await field(before, 'Ride height', 'Gap'), '3 1/16')
    await kept
    const said = (await budget(before).getAttribute('aria-label'))!
    await first.kill()
    await expect(before.getByRole('alert')).toContainText('Stopgap has ended')
    await expect(before.getByRole('button', { name: 'Download a copy of the plan' })).toBeVisible()
    await before.close()

    const second = await serveWindow(undefined, folder)
    const page = await browser.newPage()
    await page.goto(second.address)
    await expect(page.getByRole('status')).toContainText('is as you left it')
    await expect(plan(page)).toHaveAccessibleName(/^Plan Virga/)
    await choose(page, 'Axle', 'Front')
    await expect(budget(page)).toHaveAccessibleName(said)
    await expect(undoButton(page)).toHaveAccessibleName('Undo: gap 3 1/16 in')
    await page.close()
    await second.end()
  } finally {
    await first.kill()
    await rm(folder, { recursive: true, force: true })
  }
})
