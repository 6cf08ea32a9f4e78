import { readFile } from 'node:fs/promises'
import { parseArgs } from 'node:util'
import { chromium } from '@playwright/test'
import { unpackBrowser } from '../../../e2e/browser.ts'
import { serveWindow } from '../../../e2e/served.ts'

/**
 * Pictures of the terrain page in the built window: `node --import tsx tests/renderer/terrain/gallery/pictures.ts out.png`.
 * --plan file.stopgap, --size 1024x700, --dark, --grey, --terrain Landing, --axle Front, --setup Proposed, --metric, --car, --font FILE,
 * --wait milliseconds, --press keys (one after the other, on the time), --play milliseconds.
 */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    plan: { type: 'string' },
    size: { type: 'string', default: '1440x900' },
    dark: { type: 'boolean', default: false },
    grey: { type: 'boolean', default: false },
    metric: { type: 'boolean', default: false },
    terrain: { type: 'string' },
    axle: { type: 'string' },
    setup: { type: 'string' },
    font: { type: 'string' },
    car: { type: 'boolean', default: false },
    wait: { type: 'string', default: '2500' },
    press: { type: 'string', multiple: true, default: [] },
    play: { type: 'string' },
  },
})
const [out] = positionals
if (out === undefined) {
  console.error('Say where the picture goes.')
  process.exit(1)
}
const [width = 1440, height = 900] = values.size.split('x').map(Number)
const font = values.font === undefined ? null : (await readFile(values.font)).toString('base64')

const served = await serveWindow(values.plan)
const browser = await chromium.launch(await unpackBrowser())
try {
  const page = await browser.newPage({
    viewport: { width, height },
    colorScheme: values.dark ? 'dark' : 'light',
    bypassCSP: font !== null,
  })
  page.on('console', message => console.log(`${message.type()}: ${message.text()}`))
  page.on('pageerror', fault => console.log(`fault: ${fault.stack ?? fault.message}`))
  await page.goto(served.address)
  await page.getByRole('heading', { name: 'Measurements' }).waitFor()
  if (font !== null)
    await page.evaluate(async source => {
      document.fonts.add(await new FontFace('Trial', `url(data:font/ttf;base64,${source})`).load())
      document.body.style.fontFamily = 'Trial'
    }, font)
  if (values.grey) await page.evaluate(() => document.documentElement.style.setProperty('filter', 'grayscale(1)'))
  if (values.metric) await page.getByText('Metric').click()
  if (values.axle !== undefined) await page.locator('.switch.axle').getByText(values.axle).click()
  if (values.setup !== undefined) await page.locator('.switch.setup').getByText(values.setup).click()
  const inSight = page.locator('.pages > button', { hasText: 'Terrain' })
  if (!(await inSight.isVisible())) await page.locator('.more-pages').click()
  await page.locator('.pages').getByText('Terrain').click()
  if (values.car) await page.getByText('whole car').click()
  if (values.terrain !== undefined)
    await page.locator('.terrain-strip .switch').getByText(values.terrain).first().click()
  await page.waitForTimeout(Number(values.wait))
  for (const key of values.press) await page.locator('.time-cursor').press(key)
  if (values.play !== undefined) {
    await page.getByRole('button', { name: 'Play' }).click()
    await page.waitForTimeout(Number(values.play))
  }
  await page.screenshot({ path: out })
} finally {
  await browser.close()
  await served.end()
}
