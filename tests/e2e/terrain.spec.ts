import type { Page } from '@playwright/test'
import { choose, enter, field } from './actions.ts'
import { readable } from './readable.ts'
import { expect, test } from './window.ts'

async function openTerrain(window: Page): Promise<void> {
  const inSight = window.getByRole('navigation', { name: 'Pages' }).getByRole('button', { name: 'Terrain' })
  if (!(await inSight.isVisible())) await window.getByRole('button', { name: /more page/ }).click()
  await window.getByText('Terrain', { exact: true }).first().click()
  await expect(window.getByRole('main', { name: 'Terrain' })).toBeVisible()
}

const figure = (window: Page, name: string) =>
  window
    .getByRole('row', { name: new RegExp(`^${name}`) })
    .getByRole('cell')
    .first()
const time = (window: Page) => window.getByRole('slider', { name: 'Time' })
const corner = (window: Page) => window.getByRole('img', { name: /^Rear corner, wheel/ })

for (const look of [
  { colorScheme: 'light', viewport: { width: 1440, height: 900 } },
  { colorScheme: 'dark', viewport: { width: 1024, height: 700 } },
] as const)
  test.describe(`${look.colorScheme}, ${look.viewport.width} × ${look.viewport.height}`, () => {
    test.use(look)

    test('every terrain is ridden in workers, fits, and can be read by everyone', async ({ window }, info) => {
      test.slow()
      await openTerrain(window)
      for (const terrain of ['One-foot whoops', 'Landing off a lip', 'Rock ledge', 'Dry river bed']) {
        await choose(window, 'Terrain', terrain)
        await expect(figure(window, 'Bottoms')).toHaveText(/^(never|once|\d+ times)$/)
        await expect(window.getByRole('img', { name: new RegExp(`of ${terrain}\\.`) })).toBeVisible()
        await test.step(terrain, () => readable(window, info, terrain))
      }
      const beyond = await window.evaluate(() => {
        const { scrollWidth, scrollHeight } = document.documentElement
        return { right: scrollWidth - innerWidth, below: scrollHeight - innerHeight }
      })
      expect(beyond).toEqual({ right: 0, below: 0 })
    })
  })

test('time goes by the keys, by the pointer and by itself, and the drawing goes with it', async ({ window }) => {
  await openTerrain(window)
  await choose(window, 'Terrain', 'Rock ledge')
  await expect(time(window)).toHaveAttribute('aria-valuetext', /at full bump|on the stop/)
  const highest = await corner(window).getAttribute('aria-label')

  await time(window).press('Home')
  await expect(time(window)).toHaveAttribute('aria-valuetext', /^0\.00 seconds/)
  await time(window).press('PageUp')
  await time(window).press('ArrowRight')
  await expect(time(window)).toHaveAttribute('aria-valuetext', /^0\.52 seconds/)
  expect(await corner(window).getAttribute('aria-label')).not.toBe(highest)

  const plate = (await window.locator('.terrain-plate').boundingBox())!
  await window.mouse.click(plate.x + plate.width * 0.6, plate.y + plate.height * 0.3)
  const clicked = Number(await time(window).getAttribute('aria-valuenow'))
  expect(clicked).toBeGreaterThan(1)

  await window.getByRole('button', { name: 'Play' }).click()
  await expect(window.getByRole('button', { name: 'Pause' })).toBeVisible()
  await expect
    .poll(async () => Number(await time(window).getAttribute('aria-valuenow')), { message: 'time goes on' })
    .toBeGreaterThan(clicked + 0.2)
  await expect(window.getByRole('button', { name: 'Play' })).toBeVisible({ timeout: 30_000 })
  expect(await time(window).getAttribute('aria-valuenow')).toBe(await time(window).getAttribute('aria-valuemax'))
})

test('typing does not wait for rides under way, and what is typed is what is ridden', async ({ window }) => {
  await openTerrain(window)
  await choose(window, 'Terrain', 'Dry river bed')
  await expect(window.getByRole('progressbar', { name: 'Rides worked out' })).toBeVisible()
  await expect(figure(window, 'Time on the stop')).toHaveText(/%$/)
  const before = await figure(window, 'Time on the stop').textContent()
  await enter(await field(window, 'Ride height', 'Gap'), '4')
  await expect(figure(window, 'Time on the stop')).not.toHaveText(before ?? '')
  await window.getByRole('button', { name: /^Undo/ }).click()
  await expect(figure(window, 'Time on the stop')).toHaveText(before ?? '')
})

test('long work can be stopped and taken up again', async ({ window }) => {
  await openTerrain(window)
  await choose(window, 'Terrain', 'Dry river bed')
  await window.getByRole('main').getByRole('button', { name: 'Stop', exact: true }).click()
  await expect(window.getByRole('button', { name: 'Go on' })).toBeVisible()
  await window.getByRole('button', { name: 'Go on' }).click()
  await expect(window.getByRole('button', { name: 'Go on' })).toBeHidden()
  await expect(figure(window, 'Bottoms')).toHaveText(/\w/)
})
