import { expect, test } from '@playwright/test'

test('the packaged browser draws a page in its own font', async ({ page }) => {
  await page.goto('data:text/html,<h1 style="font-family:sans-serif">3 7/16 in</h1>')
  await expect(page.getByRole('heading')).toHaveText('3 7/16 in')
  const width = await page.getByRole('heading').evaluate(h => {
    const range = document.createRange()
    range.selectNodeContents(h)
    return range.getBoundingClientRect().width
  })
  expect(width).toBeGreaterThan(50)
  await page.screenshot({ path: 'test-results/trial.png' })
})
