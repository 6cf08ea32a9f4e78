import { execFile } from 'node:child_process'
import { existsSync } from 'node:fs'
import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { describe, expect, it } from 'vitest'
import { notYetOwn } from '../../../electron/release-values.ts'
import { newFolder } from '../folder.ts'
import { readArchive } from './archive.ts'
import { fuseMark, fuseNames, standInForElectron } from './stand-in.ts'

const root = join(import.meta.dirname, '../../..')
const config = 'electron/packaging/builder.yml'
const json = async (path: string) => JSON.parse(await readFile(path, 'utf8')) as Record<string, unknown>

/** Packs the built program for Linux around a stand-in for Electron: no network, nothing fetched. */
async function pack(): Promise<string> {
  const folder = await newFolder()
  const { version } = await json(join(root, 'node_modules/electron/package.json'))
  const electron = await standInForElectron(join(folder, 'electron'), String(version))
  const builder = join(root, 'node_modules/electron-builder/cli.js')
  const asked = ['--linux', 'dir', '--x64', '--config', config, '--publish', 'never']
  const here = [`-c.electronDist=${electron}`, `-c.directories.output=${join(folder, 'out')}`]
  await promisify(execFile)(process.execPath, [builder, ...asked, ...here], { cwd: root })
  return join(folder, 'out', 'linux-unpacked')
}

const notBuilt = existsSync(join(root, 'dist/main.js')) ? '' : 'the program is not built; npm run build comes first'

describe('the package', () => {
  it('holds the built program and nothing else, and its fuses are set', async ({ skip }) => {
    skip(process.platform !== 'linux', 'the stand-in for Electron is shaped as on Linux')
    skip(notBuilt !== '', notBuilt)
    const packed = await pack()
    const files = await readArchive(join(packed, 'resources', 'app.asar'))
    const names = [...files.keys()]
    const known =
      /^(LICENSE|package\.json|dist\/main\.js|dist\/preload\.cjs|dist\/shared-[\w-]+\.js|dist\/renderer\/(index\.html|licences\.json|assets\/[\w.-]+\.(js|css|woff2|svg|png))|seeds\/[\w-]+\.stopgap)$/
    expect(names.filter(name => !known.test(name))).toEqual([])
    expect(names).toEqual(
      expect.arrayContaining([
        'dist/main.js',
        'dist/preload.cjs',
        'dist/renderer/index.html',
        'seeds/on-its-stops.stopgap',
      ]),
    )
    const told = JSON.parse(files.get('package.json')!) as Record<string, unknown>
    const { name, version } = await json(join(root, 'package.json'))
    expect(told).toMatchObject({ name, version, main: 'dist/main.js', type: 'module' })
    expect(Object.keys(told).filter(key => /dependencies|^scripts/i.test(key))).toEqual([])

    for (const [name, text] of files) {
      if (!/^dist\/[^/]+\.c?js$/.test(name)) continue
      const outside = [...text.matchAll(/\b(?:from|require\(|import\()\s*["']([@\w][\w@./:-]*)["']/g)].map(
        ([, from]) => from,
      )
      expect(
        outside.filter(from => from !== 'electron' && !from!.startsWith('node:')),
        name,
      ).toEqual([])
      const near = [...text.matchAll(/\bfrom\s*["']\.\/(shared-[^"']+)["']/g)].map(([, from]) => `dist/${from}`)
      expect(
        near.filter(from => !files.has(from)),
        name,
      ).toEqual([])
      expect(text.includes(root), `${name} names a folder of this machine`).toBe(false)
    }

    const program = await readFile(join(packed, 'stopgap'), 'latin1')
    const at = program.indexOf(fuseMark) + fuseMark.length
    const fuses = fuseNames.map((name, n) => [name, program[at + 2 + n]])
    expect(Object.fromEntries(fuses)).toEqual({
      runAsNode: '0',
      cookieEncryption: '1',
      nodeOptions: '0',
      nodeCliInspect: '0',
      embeddedAsarIntegrity: '1',
      onlyLoadAppFromAsar: '1',
      browserProcessSnapshot: '0',
      fileProtocolPrivileges: '0',
    })
  })

  it('is made for three systems, opens plans, and has an icon of its own', async () => {
    const text = await readFile(join(root, config), 'utf8')
    for (const line of ['target: [AppImage, deb]', 'target: [nsis]', 'target: [dmg]', 'ext: stopgap'])
      expect(text).toContain(line)
    const icon = await readFile(join(root, 'electron/packaging/icon.png'))
    expect(icon.subarray(1, 4).toString()).toBe('PNG')
    expect([icon.readUInt32BE(16), icon.readUInt32BE(20)]).toEqual([1024, 1024])
    expect(await readFile(join(root, 'electron/packaging/icon.svg'), 'utf8')).toContain('viewBox="0 0 1024 1024"')
  })
})

describe('a package for people', () => {
  const own = { appId: 'org.example.stopgap', homepage: 'https://example.org', maintainer: 'Me <me@example.org>' }
  const config = (values: Record<string, string>) =>
    Object.entries(values)
      .map(([name, value]) => `${name === 'appId' ? '' : '  '}${name}: ${value}\n`)
      .join('')

  it.each([
    ['appId', 'stopgap.desktop'],
    ['homepage', 'https://stopgap.invalid'],
    ['maintainer', 'Stopgap developers <developers@stopgap.invalid>'],
  ])('is not made while its %s is nobody’s', (name, value) => {
    expect(notYetOwn(config({ ...own, [name]: value }))).toEqual([
      `${name} is “${value}”, which is nobody’s; right would be your own.`,
    ])
    const { [name as 'appId']: _, ...rest } = own
    expect(notYetOwn(config(rest))).toEqual([`${name} is not there; right would be your own.`])
  })

  it('is made when they are somebody’s; else all are told, one by one, before anything is built', async () => {
    const scripts = (await json(join(root, 'package.json'))).scripts as Record<string, string>
    const [program, ...args] = scripts.package!.split(' && ')[0]!.split(' ')
    expect(program).toBe('node')
    const file = join(await newFolder(), 'builder.yml')
    const ends = async (values: Record<string, string>) => {
      await writeFile(file, config(values))
      return promisify(execFile)(process.execPath, [...args, file], { cwd: root }).catch((error: unknown) => error)
    }
    expect(await ends(own)).toMatchObject({ stdout: '', stderr: '' })
    const nobodys = { appId: 'stopgap.desktop', homepage: 'https://stopgap.invalid', maintainer: 'me@stopgap.invalid' }
    expect(await ends(nobodys)).toMatchObject({
      code: 1,
      stderr: expect.stringMatching(/appId.*\n.*homepage.*\n.*maintainer/),
    })
  })
})
