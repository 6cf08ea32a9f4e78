import { execFile } from 'node:child_process'
import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { expect, it } from 'vitest'
import { newFolder } from '../folder.ts'

const root = join(import.meta.dirname, '../../..')
/** Packages of which something is in what people get. */
const shipped = ['commander', 'd3', 'electron', 'immer', 'react', 'react-dom', 'zod']

interface Audit {
  error?: { code?: string; summary?: string }
  message?: string
  vulnerabilities?: Record<string, { severity: string }>
}

it('the audit of packages has nothing against what ships', async ({ skip }) => {
  const folder = await newFolder()
  const told = JSON.parse(await readFile(join(root, 'package.json'), 'utf8')) as {
    devDependencies: Record<string, string>
  }
  const dependencies = Object.fromEntries(shipped.map(name => [name, told.devDependencies[name]]))
  expect(Object.values(dependencies)).not.toContain(undefined)
  await writeFile(join(folder, 'package.json'), JSON.stringify({ name: 'shipped', version: '0.0.0', dependencies }))
  const lock = JSON.parse(await readFile(join(root, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, { dependencies?: Record<string, string> }>
  }
  const nameOf = (place: string) => place.slice(place.lastIndexOf('node_modules/') + 'node_modules/'.length)
  const wanted = new Set(shipped)
  for (const name of wanted)
    for (const [place, { dependencies: further }] of Object.entries(lock.packages))
      if (nameOf(place) === name) for (const next of Object.keys(further ?? {})) wanted.add(next)
  const packages = Object.fromEntries(Object.entries(lock.packages).filter(([place]) => wanted.has(nameOf(place))))
  await writeFile(
    join(folder, 'package-lock.json'),
    JSON.stringify({ ...lock, packages: { '': { dependencies }, ...packages } }),
  )
  const npm = promisify(execFile)('npm', ['audit', '--json', '--package-lock-only'], {
    cwd: folder,
    timeout: 30_000,
    shell: process.platform === 'win32',
  })
  const { stdout } = await npm.catch((failed: { stdout?: string }) => ({ stdout: failed.stdout ?? '' }))
  const found: Audit = stdout.trim() === '' ? { message: 'no answer' } : (JSON.parse(stdout) as Audit)
  skip(
    found.vulnerabilities === undefined,
    `the registry gave no audit: ${(found.error?.summary || found.message || 'no answer').replace(/https?:\S+/g, 'its address')}`,
  )
  expect(found.vulnerabilities).toEqual({})
})
