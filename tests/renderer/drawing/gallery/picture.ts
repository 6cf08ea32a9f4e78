import path from 'node:path'
import { chromium } from '@playwright/test'
import react from '@vitejs/plugin-react'
import { createServer } from 'vite'
import { unpackBrowser } from '../../../e2e/browser.ts'

/** Takes pictures of the gallery: `node --import tsx tests/renderer/drawing/gallery/picture.ts FOLDER NAME=QUERY…`. */
const [folder, ...pictures] = process.argv.slice(2)
if (folder === undefined || pictures.length === 0)
  throw new Error('Name a folder and at least one picture: NAME=QUERY.')
const server = await createServer({
  root: import.meta.dirname,
  configFile: false,
  logLevel: 'warn',
  cacheDir: path.join(import.meta.dirname, '../../../../.cache/gallery'),
  plugins: [react()],
  server: { host: '127.0.0.1', fs: { allow: [path.join(import.meta.dirname, '../../../..')] } },
})
const browser = await chromium.launch({ ...(await unpackBrowser()), args: [] })
try {
  await server.listen()
  const address = server.resolvedUrls?.local[0]
  const page = await browser.newPage({
    viewport: { width: Number(process.env.WIDTH ?? 1340), height: 730 },
    deviceScaleFactor: Number(process.env.SCALE ?? 1),
  })
  page.on('console', message => console.log(`${message.type()}: ${message.text()}`))
  page.on('pageerror', problem => console.log(problem.stack))
  for (const picture of pictures) {
    const [name, query] = [picture.slice(0, picture.indexOf('=')), picture.slice(picture.indexOf('=') + 1)]
    await page.goto(`${address}?${query}`)
    await page.waitForSelector('svg', { timeout: 20_000 })
    await page.waitForTimeout(150)
    await page.screenshot({ path: path.join(folder, `${name}.png`), fullPage: true })
  }
} finally {
  await browser.close()
  await server.close()
}
