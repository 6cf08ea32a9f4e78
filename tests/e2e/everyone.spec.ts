import type { Page } from '@playwright/test'
import { enter, field, openPage, plan, wheel } from './actions.ts'
import { cutOff } from './cut-off.ts'
import { readable } from './readable.ts'
import { expect, test } from './window.ts'

/** The pages of the window by name, whichever there are. */
const pageNames = (window: Page): Promise<string[]> =>
  window.getByRole('navigation', { name: 'Pages' }).getByRole('button').allTextContents()

/** Nothing moves any more that was begun by opening the page: trials, rides and candidates are there. */
const settled = (window: Page) => expect(window.getByRole('progressbar')).toHaveCount(0, { timeout: 60_000 })

/** Their own tests do that in each of their states. */
const READ_ELSEWHERE = ['Travel', 'Terrain', 'Changes', 'Sheets', 'Logs']

for (const colorScheme of ['light', 'dark'] as const)
  test.describe(colorScheme, () => {
    test.use({ colorScheme, viewport: { width: 1440, height: 900 } })

    test('every page without window tests of its own can be read by everyone', async ({ window }, info) => {
      test.setTimeout(240_000)
      const names = await pageNames(window)
      expect(names).toEqual(expect.arrayContaining([...READ_ELSEWHERE, 'How sure']))
      for (const name of names.filter(each => !READ_ELSEWHERE.includes(each))) {
        await openPage(window, name)
        await settled(window)
        await test.step(name, () => readable(window, info, name))
      }
    })
  })

test('on every page Tab goes through all that can be used, shows where it is, and comes out again', async ({
  window,
}) => {
  test.setTimeout(240_000)
  for (const name of await pageNames(window)) {
    await openPage(window, name)
    await settled(window)
    await window.getByRole('main', { name, exact: true }).evaluate(main => {
      main.tabIndex = -1
      main.focus()
    })
    const passed: string[] = []
    for (;;) {
      await window.keyboard.press('Tab')
      const at = await window.evaluate(() => {
        const held = document.activeElement
        if (held === null || held.closest('main') === null) return null
        const ring =
          held.closest('svg') === null ? null : (held.querySelector('.focus-ring, .drawn') ?? held.firstElementChild)
        const outlined = [held, held.parentElement].some(each => {
          const { outlineStyle, outlineWidth } = getComputedStyle(each ?? held)
          return outlineStyle !== 'none' && outlineWidth !== '0px'
        })
        const { top, bottom, left, right } = held.getBoundingClientRect()
        return {
          what: held.getAttribute('aria-label') ?? held.textContent?.trim().slice(0, 40) ?? held.tagName,
          shown: outlined || (ring !== null && getComputedStyle(ring).stroke !== 'none'),
          inside: bottom > 0 && top < innerHeight && right > 0 && left < innerWidth,
        }
      })
      if (at === null) break
      expect.soft(at, `${name}: ${at.what}`).toMatchObject({ shown: true, inside: true })
      passed.push(at.what)
      expect(passed.length, `Tab comes out of ${name} after ${passed.slice(-5).join(' · ')}`).toBeLessThan(150)
    }
    expect(passed.length, name).toBeGreaterThan(0)
  }
})

for (const [width, height] of [
  [720, 450],
  [512, 350],
] as const)
  test.describe(`${width * 2} × ${height * 2}, enlarged to twice`, () => {
    test.use({ viewport: { width, height } })

    test('nothing is lost, and one scrolls only down', async ({ window }, info) => {
      test.setTimeout(240_000)
      for (const name of ['Travel', 'Terrain', 'Changes', 'Sheets', 'Logs', 'How sure']) {
        await openPage(window, name)
        await settled(window)
        await window.screenshot({ path: info.outputPath(`${name}.png`), fullPage: true })
        expect.soft(await cutOff(window), name).toEqual([])
      }
      await openPage(window, 'Travel')
      await wheel(window).press('End')
      await expect(wheel(window)).toBeInViewport()
      await enter(await field(window, 'Ride height', 'Gap'), '2')
      await expect(window.getByRole('button', { name: 'Undo: gap 2 in' })).toBeVisible()
      await readable(window, info, 'enlarged')
    })
  })

test.describe('the system’s own colors', () => {
  test.use({ colorScheme: 'dark', contextOptions: { forcedColors: 'active' } })

  test('are those of the drawings too, whatever theme was chosen here', async ({ window }, info) => {
    await plan(window).click()
    await window.getByRole('menuitemradio', { name: 'Light' }).click()
    await expect(window.locator('html')).toHaveAttribute('data-theme', 'light')
    const looks = await window.evaluate(() => {
      const of = (part: string, what: 'fill' | 'stroke' | 'backgroundColor' | 'color') =>
        getComputedStyle(document.querySelector(part)!)[what]
      return {
        ground: of('body', 'backgroundColor'),
        words: of('body', 'color'),
        drawn: of('.wheel-handle path:not(.focus-ring)', 'fill'),
        line: of('[data-line="engagement"]', 'stroke'),
        chosen: of('.switch > label:has(:checked)', 'backgroundColor'),
        other: of('.switch > label:not(:has(:checked))', 'backgroundColor'),
      }
    })
    expect([looks.drawn, looks.line]).toEqual([looks.words, looks.words])
    expect(looks.words).not.toBe(looks.ground)
    expect(looks.chosen).not.toBe(looks.other)
    for (const name of await pageNames(window)) {
      await openPage(window, name)
      await window.screenshot({ path: info.outputPath(`${name}.png`) })
    }
    const sheet = window.locator('.sheet').first()
    await openPage(window, 'Sheets')
    await expect(sheet).toHaveCSS('forced-color-adjust', 'none')
    await expect(sheet).toHaveCSS('background-color', 'rgb(255, 255, 255)')
  })
})

for (const reducedMotion of ['no-preference', 'reduce'] as const)
  test.describe(`motion: ${reducedMotion}`, () => {
    test.use({ contextOptions: { reducedMotion } })

    test(`an edit ${reducedMotion === 'reduce' ? 'jumps' : 'moves lines'} to where it leads`, async ({ window }) => {
      const gap = await field(window, 'Ride height', 'Gap')
      await window.evaluate(() => {
        const seen: string[] = []
        Object.assign(globalThis, { seen })
        for (const name of ['transitionrun', 'animationstart'])
          addEventListener(name, ({ target }) => void seen.push((target as Element).tagName), true)
      })
      await enter(gap, '3')
      await expect(window.getByRole('button', { name: 'Undo: gap 3 in' })).toBeVisible()
      await window.waitForTimeout(400)
      const seen = await window.evaluate(() => (globalThis as unknown as { seen: string[] }).seen.length)
      if (reducedMotion === 'reduce') expect(seen).toBe(0)
      else expect(seen).toBeGreaterThan(0)
    })
  })

test('what an edit leads to is read out once the hands rest', async ({ window }) => {
  const live = window.locator('p[aria-live="polite"]').filter({ hasText: 'Engagement' })
  await expect(live).toHaveCount(0)
  await enter(await field(window, 'Ride height', 'Gap'), '3')
  await expect(live).toHaveText(/^Engagement at .* in\. Findings: .*\.$/)
})

test('light and dark follow the system, until one of them is chosen', async ({ window }) => {
  const ground = () => window.evaluate(() => getComputedStyle(document.body).backgroundColor)
  await window.emulateMedia({ colorScheme: 'light' })
  const light = await ground()
  await window.emulateMedia({ colorScheme: 'dark' })
  await expect.poll(ground).not.toBe(light)
  await plan(window).click()
  await window.getByRole('menuitemradio', { name: 'Light' }).click()
  await expect.poll(ground).toBe(light)
})
