import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { accessSync, constants } from 'node:fs'
import { chmod, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { homedir, tmpdir } from 'node:os'
import path from 'node:path'
import { chromium, expect, test } from '@playwright/test'
import { browserPlaces, installedBrowser } from '../../electron/browser-host/browsers.ts'

/** The real thing, `npm start` from a checkout without Electron's program: a window of an installed browser, on a screen of its own. */
const browser = process.platform === 'linux' ? installedBrowser(browserPlaces('linux', process.env, homedir())) : null
const screen = process.platform === 'linux' ? programOnPath('Xvfb') : null

test.skip(process.platform !== 'linux', 'A screen that nobody sees is had on Linux only')
test.skip(browser === null, 'No Chrome, Chromium, Edge or Brave is installed here: apt-get install chromium')
test.skip(screen === null, 'There is no screen to show a window on here: apt-get install xvfb')

function programOnPath(name: string): string | null {
  for (const folder of (process.env.PATH ?? '').split(path.delimiter)) {
    try {
      accessSync(path.join(folder, name), constants.X_OK)
      return path.join(folder, name)
    } catch {
      // Not in this folder.
    }
  }
  return null
}

/** A screen of its own; it says which number it took. */
async function newScreen(): Promise<{ child: ChildProcess; display: string }> {
  const child = spawn(screen!, ['-displayfd', '3', '-screen', '0', '1600x1000x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  })
  const said = await once(child.stdio[3] as NodeJS.ReadableStream, 'data')
  return { child, display: `:${String(said[0]).trim()}` }
}

/** The browser as it is installed, with a door for the test to look through. */
async function withDoor(place: string): Promise<string> {
  const script = path.join(place, 'browser.sh')
  await writeFile(script, `#!/bin/sh\nexec "${browser}" --remote-debugging-port=0 "$@"\n`)
  await chmod(script, 0o755)
  return script
}

/** Where that door is, once the browser has written it into its profile. */
async function doorIn(place: string): Promise<string | null> {
  const profile = (await readdir(place)).find(name => name.startsWith('stopgap-window-'))
  if (profile === undefined) return null
  const written = await readFile(path.join(place, profile, 'DevToolsActivePort'), 'utf8').catch(() => '')
  return /^\d+/.exec(written)?.[0] ?? null
}

test('npm start opens a window of the installed browser, which keeps a change and ends with its window', async () => {
  test.setTimeout(180_000)
  const place = await mkdtemp(path.join(tmpdir(), 'stopgap-installed-'))
  const data = path.join(place, 'data')
  const shown = await newScreen()
  const started = spawn(process.execPath, [path.join(import.meta.dirname, '../../dist/start.js')], {
    env: {
      ...process.env,
      DISPLAY: shown.display,
      WAYLAND_DISPLAY: '',
      HOME: place,
      TMPDIR: place,
      STOPGAP_HOST: 'browser',
      STOPGAP_BROWSER: await withDoor(place),
      STOPGAP_DATA: data,
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  let said = ''
  for (const stream of [started.stdout, started.stderr]) stream.on('data', chunk => (said += chunk))
  const ended = once(started, 'close')
  try {
    await expect
      .poll(() => doorIn(place), { message: `the browser runs; said: ${said}`, timeout: 60_000 })
      .not.toBeNull()
    const connected = await chromium.connectOverCDP(`http://127.0.0.1:${await doorIn(place)}`)
    const window = connected.contexts()[0]!.pages()[0]!
    await expect(window.getByRole('heading', { name: 'Measurements' })).toBeVisible({ timeout: 60_000 })
    // A window of its own: no tabs, no address to type in.
    expect(await window.evaluate(() => matchMedia('(display-mode: standalone)').matches)).toBe(true)
    await window.getByRole('button', { name: 'Skip the rest' }).click()
    const gap = window.getByRole('textbox', { name: 'Gap' }).first()
    await gap.fill('3')
    await gap.press('Enter')
    await expect(window.getByRole('button', { name: 'Undo: gap 3 in' })).toBeVisible()
    await window.screenshot({ path: test.info().outputPath('window.png') })
    await window.close()

    expect((await ended)[0]).toBe(0)
    expect(said).toBe('')
    expect((await readdir(place)).filter(name => name.startsWith('stopgap-window-'))).toEqual([])
    const files = (await readdir(data, { recursive: true, withFileTypes: true })).filter(each => each.isFile())
    const texts = await Promise.all(files.map(each => readFile(path.join(each.parentPath, each.name), 'utf8')))
    expect(texts.some(text => /\bgap\W+0\.076[12]/.test(text))).toBe(true)
  } finally {
    started.kill('SIGKILL')
    shown.child.kill()
    await ended
    await rm(place, { recursive: true, force: true, maxRetries: 10 })
  }
})
