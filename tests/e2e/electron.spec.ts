import { existsSync, readFileSync } from 'node:fs'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { _electron, expect, test } from '@playwright/test'
import type { Plan } from '../../core/plan/schema.ts'
import { usualAxle, usualPair } from '../../renderer/sheets/request.ts'
import { sheetHtml } from '../../renderer/sheets/sheet-file.tsx'
import { drawPdf } from './pdf.ts'

const root = join(import.meta.dirname, '../..')
const folder = join(root, 'node_modules/electron')
const named = join(folder, 'path.txt')
const program = existsSync(named) ? join(folder, 'dist', readFileSync(named, 'utf8').trim()) : null

test.skip(program === null || !existsSync(program), 'Electron’s program is not installed here: npx install-electron')
test.skip(
  process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY,
  'There is no display here, and Electron needs one',
)

test('the window opens in Electron, shut in, on a demo plan, and keeps a change', async () => {
  const data = await mkdtemp(join(tmpdir(), 'stopgap-electron-test-'))
  const isRoot = process.platform === 'linux' && process.getuid?.() === 0
  const launch = () =>
    _electron.launch({
      executablePath: program!,
      args: [root, ...(isRoot ? ['--no-sandbox'] : [])],
      env: { ...(process.env as Record<string, string>), STOPGAP_DATA: data },
    })
  try {
    const first = await launch()
    const window = await first.firstWindow()
    await expect(window.getByRole('heading').first()).toBeVisible()
    expect(window.url()).toBe('stopgap://window/')
    expect(await window.evaluate(() => ['stopgap', 'require', 'process'].filter(name => name in globalThis))).toEqual([
      'stopgap',
    ])
    const gap = window.getByRole('textbox', { name: 'Gap' }).first()
    await gap.fill('1 9/16')
    await gap.press('Enter')
    await window.waitForTimeout(500)
    await first.close()

    const second = await launch()
    const again = await second.firstWindow()
    await expect(again.getByRole('textbox', { name: 'Gap' }).first()).toHaveValue('1 9/16')
    await second.close()
  } finally {
    await rm(data, { recursive: true, force: true })
  }
})

test('a sheet is printed by Electron itself, as it says and on its own paper', async ({ page }, info) => {
  const data = await mkdtemp(join(tmpdir(), 'stopgap-electron-test-'))
  const isRoot = process.platform === 'linux' && process.getuid?.() === 0
  const electron = await _electron.launch({
    executablePath: program!,
    args: [root, ...(isRoot ? ['--no-sandbox'] : [])],
    env: { ...(process.env as Record<string, string>), STOPGAP_DATA: data },
  })
  try {
    const plan = JSON.parse(readFileSync(join(root, 'seeds/before-and-after.stopgap'), 'utf8')) as Plan
    const pair = usualPair(plan)
    const request = {
      plan,
      axle: usualAxle(plan, pair.before, pair.after),
      ...pair,
      paper: 'letter' as const,
      date: null,
    }
    const made = sheetHtml(request, ['customer', 'shop'])
    if (!made.ok) throw new Error(made.problem)
    const window = await electron.firstWindow()
    const answer = await window.evaluate(html => {
      const { stopgap } = globalThis as unknown as {
        stopgap: { call(name: string, request: unknown): Promise<unknown> }
      }
      return stopgap.call('pdf', { html })
    }, made.text)
    const { value } = answer as { value: { kind: string; base64: string } }
    expect(value.kind).toBe('pdf')
    const pages = await drawPdf(page, Buffer.from(value.base64, 'base64'))
    for (const [i, { picture }] of pages.entries())
      await writeFile(info.outputPath(`page-${i + 1}.png`), Buffer.from(picture, 'base64'))
    expect(pages.map(({ width, height }) => [Math.round(width), Math.round(height)])).toEqual([
      [612, 792],
      [612, 792],
    ])
    const words = pages.map(({ texts }) => texts.map(({ text }) => text).join(' '))
    expect(words[0]).toContain('Three numbers to compare')
    expect(words[1]).toContain('Order of work')
    for (const { ink, fontsMissing } of pages) {
      expect(fontsMissing).toEqual([])
      expect(ink!.left).toBeGreaterThan(30)
      expect(ink!.right).toBeLessThan(582)
    }
  } finally {
    await electron.close()
    await rm(data, { recursive: true, force: true })
  }
})
