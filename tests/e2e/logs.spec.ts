import { copyFile, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import path from 'node:path'
import type { Page, TestInfo } from '@playwright/test'
import { readPlan } from '../../core/plan/parse.ts'
import { recordedRide } from '../renderer/runs/recorded-ride.ts'
import { choose, drop } from './actions.ts'
import { cutOff } from './cut-off.ts'
import { readable } from './readable.ts'
import { serveWindow } from './served.ts'
import { expect, test } from './window.ts'

const seed = path.join(import.meta.dirname, '../../seeds/on-its-stops.stopgap')

/** What a logger on the demo car would have written over its first terrain, and the terrain's name. */
async function recorded(how: Parameters<typeof recordedRide>[2] = {}) {
  const read = readPlan(await readFile(seed, 'utf8'))
  if (!read.ok) throw new Error('The demo plan cannot be read.')
  const axle = read.plan.setups[0]!.axles.find(({ id }) => id === 'rear')!
  return { ...recordedRide(axle, read.plan.terrains[0]!, how), terrain: read.plan.terrains[0]!.name }
}

async function openLogs(window: Page): Promise<void> {
  const inSight = window.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Logs' })
  if (!(await inSight.isVisible())) await window.getByRole('button', { name: /more page/ }).click()
  await window.getByText('Logs', { exact: true }).first().click()
  await expect(window.getByRole('main', { name: 'Logs' })).toBeVisible()
}

const give = (window: Page, name: string, text: string) =>
  window
    .getByLabel('Recording', { exact: true })
    .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) })

async function calibrate(window: Page, column: string): Promise<void> {
  await window.getByLabel(`What ${column} means`).selectOption('points')
  const type = (name: string, text: string) => window.getByLabel(`${column}, ${name}`).fill(text)
  await type('first reading', '2.5')
  await type('first travel', '0')
  await type('second reading', '3.7')
  await type('second travel', '100 mm')
  await window.getByLabel(`${column}, second travel`).press('Enter')
}

const figure = (window: Page, name: string, place = 0) =>
  window
    .getByRole('region', { name: 'What it comes to' })
    .getByRole('row', { name: new RegExp(`^${name}`) })
    .getByRole('cell')
    .nth(place)
const time = (window: Page) => window.getByRole('slider', { name: 'Time' })

async function bringAndRead(window: Page, text: string): Promise<void> {
  await give(window, 'pit.csv', text)
  await calibrate(window, 'rear left')
  await calibrate(window, 'rear right')
  await window.getByRole('button', { name: 'Read the run' }).click()
  await expect(figure(window, 'Time on the stop')).toHaveText(/%$/)
}

const fits = (window: Page) =>
  window.evaluate(() => {
    const { scrollWidth, scrollHeight } = document.documentElement
    return { right: scrollWidth - innerWidth, below: scrollHeight - innerHeight }
  })

/** As in the smallest window, enlarged to twice: nothing is cut off, and one scrolls only down. */
async function enlarged(window: Page, info: TestInfo, state: string): Promise<void> {
  const before = window.viewportSize()!
  await window.setViewportSize({ width: 512, height: 350 })
  await window.screenshot({ path: info.outputPath(`${state}, enlarged.png`), fullPage: true })
  expect.soft(await cutOff(window), `${state}, enlarged`).toEqual([])
  await window.setViewportSize(before)
}

test.use({ planFile: seed })

for (const look of [
  { colorScheme: 'light', viewport: { width: 1440, height: 900 } },
  { colorScheme: 'dark', viewport: { width: 1024, height: 700 } },
] as const)
  test.describe(`${look.colorScheme}, ${look.viewport.width} × ${look.viewport.height}`, () => {
    test.use(look)

    test('a recording is looked at, read and laid over the plan; all of it fits and can be read by everyone', async ({
      window,
    }, info) => {
      test.slow()
      const { text, terrain } = await recorded()
      await openLogs(window)
      await expect(window.getByText('No recorded run yet')).toBeVisible()
      await readable(window, info, 'empty')
      const lines = text.split('\r\n')
      lines.splice(20, 0, 'torn')
      await give(window, 'pit.csv', lines.join('\r\n'))
      await expect(window.getByText('not taken: another number of cells')).toBeVisible()
      await readable(window, info, 'how it is read')
      await enlarged(window, info, 'how it is read')
      await calibrate(window, 'rear left')
      await calibrate(window, 'rear right')
      await window.getByRole('button', { name: 'Read the run' }).click()
      await expect(figure(window, 'Hits on the stop')).toHaveText(/min$/)
      await expect(window.getByText('1 row not as they should be', { exact: false })).toBeVisible()
      await readable(window, info, 'the run')
      await window.getByLabel('Compared with').selectOption({ label: `${terrain}, simulated` })
      await expect(figure(window, 'Hits on the stop', 1)).toHaveText(/\d/, { timeout: 30_000 })
      await readable(window, info, 'beside a ride')
      await enlarged(window, info, 'beside a ride')
      expect(await fits(window)).toEqual({ right: 0, below: 0 })
    })
  })

test('a run replays in the drawing; zero and sign come from the moments picked on the trace', async ({ window }) => {
  const { text, stands, hangs } = await recorded({ off: 0.6 })
  await openLogs(window)
  await bringAndRead(window, text)
  const corner = window.getByRole('img', { name: /^Rear corner, wheel/ })
  const highest = await corner.getAttribute('aria-label')
  const wrong = await figure(window, 'Wheel comes up to').textContent()
  const at = async (seconds: number) => {
    await time(window).press('Home')
    for (let i = 0; i < seconds / 0.5; i += 1) await time(window).press('PageUp')
  }
  await at(stands)
  await expect(time(window)).toHaveAttribute('aria-valuetext', /^1\.50 seconds/)
  expect(await corner.getAttribute('aria-label')).not.toBe(highest)
  await window.getByRole('button', { name: 'Ride height here' }).click()
  await expect(time(window)).toHaveAttribute('aria-valuetext', /at ride height/)
  await at(hangs)
  await window.getByRole('button', { name: 'Full droop here' }).click()
  await expect(time(window)).toHaveAttribute('aria-valuetext', /at full droop$/)
  await expect(figure(window, 'Wheel comes up to')).not.toHaveText(wrong ?? '')

  const before = Number(await time(window).getAttribute('aria-valuenow'))
  await window.getByRole('button', { name: 'Play' }).click()
  await expect
    .poll(async () => Number(await time(window).getAttribute('aria-valuenow')), { message: 'time goes on' })
    .toBeGreaterThan(before + 0.2)
  await window.getByRole('button', { name: 'Pause' }).click()
  const plate = (await window.locator('.terrain-plate').boundingBox())!
  await window.mouse.click(plate.x + plate.width * 0.6, plate.y + plate.height * 0.3)
  expect(Number(await time(window).getAttribute('aria-valuenow'))).not.toBe(before)
})

test('two runs, before and after: the second of a kind is read at once, and stands beside the first', async ({
  window,
}) => {
  const { text } = await recorded()
  await openLogs(window)
  await bringAndRead(window, text)
  const { text: after } = await recorded({ right: 0.5 })
  await drop(window, 'after.csv', after)
  await expect(window.getByLabel('Run', { exact: true })).toHaveValue('run-2')
  await expect(figure(window, 'Time on the stop')).toHaveText(/%$/)
  await choose(window, 'Side', 'Right')
  const own = await figure(window, 'Wheel comes up to').textContent()
  await window.getByLabel('Compared with').selectOption({ label: 'pit' })
  await expect(figure(window, 'Wheel comes up to', 1)).toHaveText(/in$/)
  await expect(figure(window, 'Wheel comes up to', 1)).not.toHaveText(own ?? '')
})

test('a long file is read with progress, and can be stopped while somebody types', async ({ window }) => {
  test.slow()
  const { text } = await recorded()
  await openLogs(window)
  await give(window, 'pit.csv', text)
  await calibrate(window, 'rear left')
  await calibrate(window, 'rear right')
  const [a, b, c, ...rows] = text.trimEnd().split('\r\n')
  const step = rows.length / 500
  const many = Array.from({ length: 60 }, (_, n) =>
    rows.map(row =>
      row.replace(/^[\d,]+/, at => (Number(at.replace(',', '.')) + n * step).toFixed(3).replace('.', ',')),
    ),
  )
  await give(window, 'day.csv', [a, b, c, ...many.flat()].join('\r\n'))
  await calibrate(window, 'rear left')
  await calibrate(window, 'rear right')
  await window.getByRole('button', { name: 'Read the run' }).click()
  await expect(window.getByRole('progressbar', { name: 'Reading' })).toBeVisible()
  await window.getByRole('main').getByRole('button', { name: 'Stop', exact: true }).click()
  await expect(window.getByRole('progressbar', { name: 'Reading' })).toBeHidden()
  await window.getByRole('button', { name: 'Read the run' }).click()
  await expect(figure(window, 'Time on the stop')).toHaveText(/%$/, { timeout: 60_000 })
})

test('a plan that is in no file says to be saved first', async ({ window }) => {
  const { text } = await recorded()
  await drop(window, 'not in a file.stopgap', await readFile(seed, 'utf8'))
  await openLogs(window)
  await bringAndRead(window, text)
  await expect(window.getByRole('button', { name: 'save the plan first' })).toBeVisible()
})

test('a run is kept beside the plan and comes back with it; changed or gone, it is said and nothing else is lost', async ({
  page,
}) => {
  test.slow()
  const folder = await mkdtemp(path.join(tmpdir(), 'stopgap-run-'))
  const plan = path.join(folder, 'Car.stopgap')
  await copyFile(seed, plan)
  const file = path.join(folder, 'Car, pit.stopgap-run')
  /** The window of a new start, with what is done in it. */
  const inWindow = async (work: () => Promise<void>) => {
    const served = await serveWindow(plan)
    try {
      await page.goto(served.address)
      await page.getByRole('heading', { name: 'Measurements' }).waitFor()
      await openLogs(page)
      await work()
    } finally {
      await served.end()
    }
  }
  try {
    const { text } = await recorded()
    let hits = ''
    await inWindow(async () => {
      await bringAndRead(page, text)
      hits = (await figure(page, 'Hits on the stop').textContent()) ?? ''
      await page.getByRole('button', { name: 'Keep it beside the plan' }).click()
      await expect(page.getByText('Kept beside the plan.')).toBeVisible()
      await page.keyboard.press('Control+s')
      await expect(page.getByRole('button', { name: /^Plan .* saved .*: files$/ })).toBeVisible()
    })
    expect(JSON.parse(await readFile(plan, 'utf8')).runs).toMatchObject([{ name: 'pit', file: 'Car, pit.stopgap-run' }])
    await inWindow(async () => {
      await expect(page.getByText('Kept beside the plan.')).toBeVisible()
      await expect(figure(page, 'Hits on the stop')).toHaveText(hits)
    })
    await writeFile(file, 'somebody else’s')
    await inWindow(async () => {
      await expect(page.getByText('has changed since it was kept', { exact: false })).toBeVisible()
      await page.getByRole('button', { name: 'Take it as it is now' }).click()
      await expect(page.getByText('cannot be used', { exact: false })).toBeVisible()
    })
    await rm(file)
    await inWindow(async () => {
      await expect(page.getByText('moved, renamed or deleted', { exact: false })).toBeVisible()
      await give(page, 'pit.csv', text)
      await expect(page.getByLabel('What rear left means')).toBeVisible()
    })
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
})
