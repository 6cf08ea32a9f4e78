import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '../../..')
const json = async (file: string) => JSON.parse(await readFile(join(root, file), 'utf8')) as unknown

interface Locked {
  version: string
  integrity?: string
  devDependencies?: Record<string, string>
}

describe('what is built from', () => {
  it('is held to one version and one content, package by package', async () => {
    const { packages } = (await json('package-lock.json')) as { packages: Record<string, Locked> }
    const { devDependencies } = (await json('package.json')) as { devDependencies: Record<string, string> }
    const { '': own, ...others } = packages
    expect(own?.devDependencies).toEqual(devDependencies)
    const loose = Object.entries(others).filter(
      ([, { version, integrity }]) => !/^\d+\.\d+\.\d+/.test(version) || !integrity?.startsWith('sha512-'),
    )
    expect(loose).toEqual([])
    for (const name of Object.keys(devDependencies)) expect(Object.keys(others)).toContain(`node_modules/${name}`)
  })

  it('is no time and no chance: the same sources make the same program', async () => {
    for (const file of ['electron/build.ts', 'electron/licences.ts', 'electron/packaging/builder.yml'])
      expect(await readFile(join(root, file), 'utf8'), file).not.toMatch(/Date|random|hostname|userInfo|\$\{env\./i)
  })
})
