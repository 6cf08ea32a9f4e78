import { existsSync, readFileSync } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { _electron, expect, test } from '@playwright/test'

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
