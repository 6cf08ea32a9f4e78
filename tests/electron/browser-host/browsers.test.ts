import { chmod, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { browserPlaces, hasDisplay, installedBrowser } from '../../../electron/browser-host/browsers.ts'
import { browserFlags } from '../../../electron/browser-host/launch.ts'
import { newFolder } from '../folder.ts'

describe('browserPlaces', () => {
  it('looks in the usual places of each platform', () => {
    expect(browserPlaces('linux', { PATH: '/opt/bin' }, '/home/a')).toEqual(
      expect.arrayContaining([
        '/opt/bin/chromium',
        '/usr/bin/google-chrome',
        '/snap/bin/chromium',
        '/usr/bin/brave-browser',
      ]),
    )
    expect(browserPlaces('darwin', {}, '/Users/a')).toEqual(
      expect.arrayContaining([
        '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
        '/Users/a/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
      ]),
    )
    expect(browserPlaces('win32', { PROGRAMFILES: 'P', 'PROGRAMFILES(X86)': 'X' }, 'home')).toEqual(
      expect.arrayContaining([
        join('P', 'Google', 'Chrome', 'Application', 'chrome.exe'),
        join('X', 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
      ]),
    )
    expect(browserPlaces('linux', { STOPGAP_BROWSER: '/mine' }, '/home/a')).toEqual(['/mine'])
  })
})

describe('installedBrowser', () => {
  it('is the first that is there and can be run', async ({ skip }) => {
    skip(process.platform === 'win32', 'Windows has no mark on files that can be run')
    const folder = await newFolder()
    const [text, program] = [join(folder, 'text'), join(folder, 'program')]
    await writeFile(text, '')
    await chmod(text, 0o644)
    await writeFile(program, '')
    await chmod(program, 0o755)
    expect(installedBrowser([join(folder, 'none'), text, program])).toBe(program)
    expect(installedBrowser([text])).toBe(null)
  })
})

it('browserFlags give up the sandbox for root only, where the browser would not run otherwise', () => {
  const size = { width: 1200, height: 800 }
  const address = 'http://127.0.0.1:1/enter?ticket=a'
  expect(browserFlags(address, '/p', size, false)).not.toContain('--no-sandbox')
  expect(browserFlags(address, '/p', size, true)).toContain('--no-sandbox')
  expect(browserFlags(address, '/p', size, false)).toEqual(
    expect.arrayContaining([`--app=${address}`, '--user-data-dir=/p', '--window-size=1200,800', '--no-first-run']),
  )
})

it('hasDisplay goes by the two display servers where windows need one', () => {
  expect(hasDisplay('linux', {})).toBe(false)
  expect(hasDisplay('linux', { DISPLAY: '' })).toBe(false)
  expect(hasDisplay('linux', { DISPLAY: ':0' })).toBe(true)
  expect(hasDisplay('linux', { WAYLAND_DISPLAY: 'wayland-0' })).toBe(true)
  expect(hasDisplay('darwin', {})).toBe(true)
  expect(hasDisplay('win32', {})).toBe(true)
})
