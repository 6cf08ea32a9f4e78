import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeEach, describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '../../..')
const dist = join(root, 'dist')
const built = existsSync(join(dist, 'main.js'))

/** Programs that run in Electron's main process, and the preload script. */
const programs = (built ? readdirSync(dist) : [])
  .filter(name => /\.c?js$/.test(name))
  .map(name => ({ name, text: readFileSync(join(dist, name), 'utf8') }))
const where = (pattern: RegExp) => programs.filter(({ text }) => pattern.test(text)).map(({ name }) => name)
const off = String.raw`:\s*(?:false|!1)\b`
const on = String.raw`:\s*(?:true|!0)\b`

describe('what is built', () => {
  beforeEach(({ skip }) => skip(!built, 'the program is not built; npm run build comes first'))

  it('shuts the window in', () => {
    for (const name of ['contextIsolation', 'sandbox']) expect(where(new RegExp(name + on))).toContain('main.js')
    expect(where(new RegExp(`nodeIntegration${off}`))).toContain('main.js')
  })

  it.each([
    ...['contextIsolation', 'sandbox', 'webSecurity'].map(name => name + off),
    ...['nodeIntegration\\w*', 'webviewTag', 'allowRunningInsecureContent', 'experimentalFeatures'].map(
      name => name + on,
    ),
    'enableBlinkFeatures',
    'openExternal',
    '@electron/remote',
    'executeJavaScript',
    'unsafe-inline|unsafe-eval',
    '0\\.0\\.0\\.0',
  ])('has no %s', pattern => expect(where(new RegExp(pattern))).toEqual([]))

  it('gives the preload script Electron and nothing else of the machine', () => {
    const preload = programs.find(({ name }) => name === 'preload.cjs')!.text
    expect([...preload.matchAll(/require\(["']([^"']+)["']\)/g)].map(([, name]) => name)).toEqual(['electron'])
    expect(preload.match(/exposeInMainWorld/g)).toHaveLength(1)
  })

  it('loads the page from its own files, with no script or style in it', () => {
    const page = readFileSync(join(dist, 'renderer', 'index.html'), 'utf8')
    const named = [...page.matchAll(/\b(?:src|href)="([^"]+)"/g)].map(([, name]) => name!)
    expect(named.length).toBeGreaterThan(1)
    expect(named.filter(name => !/^(\.\/|data:)/.test(name))).toEqual([])
    expect(
      [...page.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)].filter(([, inside]) => inside!.trim() !== ''),
    ).toEqual([])
    expect(page).not.toMatch(/<style\b|\sstyle=|\son\w+=/)
  })
})
