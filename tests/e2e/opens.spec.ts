import AxeBuilder from '@axe-core/playwright'
import { expect, test } from './window.ts'

/** WCAG 2.2 up to AA, the levels the window is held to. */
const levels = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']

test('opens the first time on a demo plan with its measurements, its travel and a finding', async ({ window }) => {
  await expect(window).toHaveTitle(/Hackberry/)
  await expect(window.getByRole('textbox', { name: 'Gap' }).first()).not.toHaveValue('')
  await expect(window.getByText('The stop engages early')).toBeVisible()
})

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(`in the ${colorScheme}`, () => {
    test.use({ colorScheme })

    test('can be read and used by everyone, as far as a tool can tell', async ({ window }, info) => {
      const { violations } = await new AxeBuilder({ page: window }).withTags(levels).analyze()
      await window.screenshot({ path: info.outputPath('window.png') })
      expect(
        violations.map(({ id, nodes }) => `${id}: ${nodes.map(node => node.target.join(' ')).join(', ')}`),
      ).toEqual([])
    })
  })
}

for (const [width, height] of [
  [1024, 700],
  [1440, 900],
  [3840, 2160],
] as const) {
  test.describe(`at ${width} × ${height}`, () => {
    test.use({ viewport: { width, height } })

    test('fits: nothing of the window lies outside it', async ({ window }, info) => {
      await window.screenshot({ path: info.outputPath('window.png') })
      const beyond = await window.evaluate(() => {
        const { scrollWidth, scrollHeight } = document.documentElement
        return { right: scrollWidth - innerWidth, below: scrollHeight - innerHeight }
      })
      expect(beyond).toEqual({ right: 0, below: 0 })
    })
  })
}
