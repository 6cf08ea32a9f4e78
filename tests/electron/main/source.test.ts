import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '../../..')

const sources = [
  'electron/main',
  'electron/preload',
  'electron/services',
  'electron/browser-host',
  'electron/start',
  'renderer',
]
  .flatMap(folder =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter(name => /\.(tsx?|html)$/.test(name))
      .map(name => `${folder}/${name.replaceAll('\\', '/')}`),
  )
  .map(path => ({ path, text: readFileSync(join(root, path), 'utf8') }))

const where = (pattern: RegExp) => sources.filter(({ text }) => pattern.test(text)).map(({ path }) => path)

describe('the sources', () => {
  it('are really read', () =>
    expect(where(/contextIsolation: true/)).toEqual(['electron/main/print.ts', 'electron/main/window.ts']))

  it.each([
    /nodeIntegration\w*: true/,
    /contextIsolation: false/,
    /sandbox: false/,
    /webSecurity: false/,
    /allowRunningInsecureContent/,
    /webviewTag: true/,
    /experimentalFeatures/,
    /enableBlinkFeatures/,
    /shell\.openExternal/,
    /@electron\/remote/,
    /executeJavaScript/,
    /\beval\(|new Function\(/,
    /dangerouslySetInnerHTML|\.innerHTML\b|insertAdjacentHTML|document\.write/,
    /'0\.0\.0\.0'|"0\.0\.0\.0"|'::'/,
    /access-control-allow/i,
    /unsafe-inline|unsafe-eval/,
  ])('have no %s', pattern => expect(where(pattern)).toEqual([]))

  it('listen on the loopback address, in one place', () => {
    expect(where(/\.listen\(\d/)).toEqual(['electron/browser-host/serve.ts'])
    expect(where(/\.listen\(0, '127\.0\.0\.1'/)).toEqual(['electron/browser-host/serve.ts'])
  })

  it('take messages from the window in one place, which checks the sender of each', () => {
    expect(where(/ipcMain\.(handle|on)/)).toEqual(['electron/main/doors.ts'])
    const doors = sources.find(({ path }) => path === 'electron/main/doors.ts')!.text
    const handled = doors.match(/ipcMain\.handle/g)!.length
    expect(doors.match(/fromOurPage\(event\)/g)).toHaveLength(handled)
  })

  it('give the page one bridge', () => expect(where(/exposeInMainWorld/)).toEqual(['electron/preload/preload.ts']))
})
