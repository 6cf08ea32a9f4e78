import { expect, test } from './window.ts'

test('opens the first time on a demo plan with its measurements, its travel and a finding', async ({ window }) => {
  await expect(window).toHaveTitle(/Hackberry/)
  await expect(window.getByRole('textbox', { name: 'Gap' }).first()).not.toHaveValue('')
  await expect(window.getByText('The stop engages early')).toBeVisible()
})

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
