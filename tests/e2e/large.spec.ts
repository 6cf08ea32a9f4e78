import type { Page } from '@playwright/test'
import { fromMenu, lineAt, wheel } from './actions.ts'
import { expect, test } from './window.ts'

const box = async (window: Page, part: string) => (await window.locator(part).first().boundingBox())!

for (const [width, height, larger] of [
  [1920, 1080, 1],
  [2560, 1440, 1.25],
  [3840, 2160, 2],
] as const)
  test.describe(`at ${width} × ${height}`, () => {
    test.use({ viewport: { width, height } })

    test('all is drawn so large that it can be read, and what is held stays under the pointer', async ({ window }) => {
      expect((await box(window, '[data-field="corner.stop.gap"]')).height).toBeCloseTo(20 * larger, 0)
      const beyond = await window.evaluate(() => {
        const { scrollWidth, scrollHeight } = document.documentElement
        return { right: scrollWidth - innerWidth, below: scrollHeight - innerHeight }
      })
      expect(beyond).toEqual({ right: 0, below: 0 })

      const plate = await box(window, '.plate')
      const [ride, bump] = [await lineAt(window, 'ride'), await lineAt(window, 'bump')]
      const half = plate.y + ((ride + bump) / 2) * larger
      const track = await box(window, '[data-wheel-handle="track"]')
      const full = Number(await wheel(window).getAttribute('aria-valuemax'))
      const position = async () => Number(await wheel(window).getAttribute('aria-valuenow'))
      await window.mouse.move(track.x + track.width - 4, half)
      await window.mouse.down()
      await expect.poll(position).toBeCloseTo(full / 2, 0)
      await window.mouse.move(track.x + track.width - 4, half + ((ride - bump) / 4) * larger, { steps: 3 })
      await expect.poll(async () => Math.abs((await position()) - full / 4)).toBeLessThan(0.1)
      await window.mouse.up()

      await fromMenu(window, 'A first look')
      const note = window.locator('.guide')
      await note.getByRole('button', { name: 'Next' }).press('Enter')
      await note.getByRole('button', { name: 'Next' }).press('Enter')
      await expect(note).toHaveAccessibleName('Read what is found')
      const [ring, found] = [await box(window, '.guide-ring'), await box(window, '.find')]
      for (const side of ['x', 'y', 'width', 'height'] as const)
        expect(Math.abs(ring[side] - found[side]), side).toBeLessThan(1)
    })
  })
