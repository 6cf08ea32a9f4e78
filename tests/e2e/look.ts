import { parseArgs } from 'node:util'
import { chromium } from '@playwright/test'
import { openPage } from './actions.ts'
import { unpackBrowser } from './browser.ts'
import { serveWindow } from './served.ts'

/**
 * A picture of the built window: `npm run look -- out.png`, or of any page: `npm run look -- URL out.png`.
 * --plan file.stopgap, --page Terrain, --size 1024x700, --dark, --hash text, --wait milliseconds, --full for the whole height of the page;
 * as others see it: --sight deuteranopia, protanopia, tritanopia, achromatopsia (grey) or blurredVision, --forced for colors the system puts.
 */
const sights = ['none', 'deuteranopia', 'protanopia', 'tritanopia', 'achromatopsia', 'blurredVision'] as const
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    plan: { type: 'string' },
    size: { type: 'string', default: '1440x900' },
    dark: { type: 'boolean', default: false },
    hash: { type: 'string' },
    wait: { type: 'string', default: '300' },
    full: { type: 'boolean', default: false },
    page: { type: 'string' },
    sight: { type: 'string', default: 'none' },
    forced: { type: 'boolean', default: false },
  },
})
const out = positionals.at(-1)
const [, width, height] = /^(\d+)x(\d+)$/.exec(values.size) ?? []
const sight = sights.find(each => each === values.sight)
if (out === undefined || positionals.length > 2 || width === undefined || height === undefined || sight === undefined) {
  console.error(
    'Say where the picture goes, as in: npm run look -- out.png --size 1440x900 --dark --sight deuteranopia',
  )
  process.exit(1)
}

const served = positionals.length === 1 ? await serveWindow(values.plan) : undefined
const browser = await chromium.launch(await unpackBrowser())
try {
  const page = await browser.newPage({
    viewport: { width: Number(width), height: Number(height) },
    colorScheme: values.dark ? 'dark' : 'light',
    forcedColors: values.forced ? 'active' : 'none',
  })
  page.on('console', message => console.log(`${message.type()}: ${message.text()}`))
  page.on('pageerror', fault => console.log(`fault: ${fault.stack ?? fault.message}`))
  await page.goto(served?.address ?? positionals[0]!)
  if (values.hash !== undefined) await page.evaluate(hash => location.assign(`#${hash}`), values.hash)
  if (values.page !== undefined) await openPage(page, values.page)
  const devtools = await page.context().newCDPSession(page)
  await devtools.send('Emulation.setEmulatedVisionDeficiency', { type: sight })
  await page.waitForTimeout(Number(values.wait))
  await page.screenshot({ path: out, fullPage: values.full })
} finally {
  await browser.close()
  await served?.end()
}
