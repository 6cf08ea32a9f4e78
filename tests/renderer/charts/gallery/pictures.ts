import { readFile } from 'node:fs/promises'
import path from 'node:path'
import { parseArgs } from 'node:util'
import { chromium } from '@playwright/test'
import react from '@vitejs/plugin-react'
import { createServer } from 'vite'
import { unpackBrowser } from '../../../e2e/browser.ts'
import { cases } from './cases.ts'

/**
 * Pictures of the plate in its states: `node --import tsx tests/renderer/charts/gallery/pictures.ts FOLDER [case…]`.
 * --size 1172x700 (the plate alone), --dark, --grey, --font FILE (to try another one), --wheel inches, --scale 2.
 */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    size: { type: 'string', default: '1172x704' },
    dark: { type: 'boolean', default: false },
    grey: { type: 'boolean', default: false },
    font: { type: 'string' },
    wheel: { type: 'string' },
    scale: { type: 'string', default: '1' },
  },
})
const [folder, ...named] = positionals
const [width = 1172, height = 704] = values.size.split('x').map(Number)
if (folder === undefined) {
  console.error('Say where the pictures go.')
  process.exit(1)
}

const font = values.font === undefined ? null : (await readFile(values.font)).toString('base64')

const server = await createServer({
  root: path.join(import.meta.dirname, '../../../..'),
  configFile: false,
  plugins: [react()],
  logLevel: 'warn',
  cacheDir: path.join(folder, '.vite'),
  server: { port: 0, host: '127.0.0.1', fs: { strict: true } },
})
await server.listen()
const base = `${server.resolvedUrls?.local[0]}tests/renderer/charts/gallery/index.html`
const browser = await chromium.launch(await unpackBrowser())
try {
  const page = await browser.newPage({ viewport: { width, height }, deviceScaleFactor: Number(values.scale) })
  page.on('pageerror', fault => console.log(`fault: ${fault.stack ?? fault.message}`))
  page.on('console', message => {
    if (message.type() === 'error') console.log(message.text())
  })
  if (font !== null)
    await page.addInitScript(source => {
      document.fonts.add(new FontFace('Trial', `url(${source})`))
    }, `data:font/ttf;base64,${font}`)
  for (const name of named.length > 0 ? named : Object.keys(cases)) {
    const options = new URLSearchParams({ case: name, theme: values.dark ? 'dark' : 'light' })
    if (values.grey) options.set('grey', '')
    if (font !== null) options.set('font', 'Trial')
    if (values.wheel !== undefined) options.set('wheel', values.wheel)
    await page.goto('about:blank')
    await page.goto(`${base}#${options}`)
    await page.waitForSelector('.travel-plate svg')
    await page.screenshot({ path: path.join(folder, `${name}.png`) })
  }
} finally {
  await browser.close()
  await server.close()
}
