import { execFile, spawn } from 'node:child_process'
import { once } from 'node:events'
import { chmod, mkdir, readFile, stat, symlink, utimes, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { promisify } from 'node:util'
import { describe, expect, it } from 'vitest'
import { writeAtomically } from '../../../electron/services/write-atomically.ts'
import { namesIn, newFolder } from '../folder.ts'

const module = pathToFileURL(join(import.meta.dirname, '../../../electron/services/write-atomically.ts')).href

describe('writeAtomically', () => {
  it('replaces the content, keeps the mode, leaves nothing beside it', async () => {
    const folder = await newFolder()
    const path = join(folder, 'a.stopgap')
    await writeFile(path, 'old')
    await chmod(path, 0o640)
    await writeAtomically(path, 'new')
    expect(await readFile(path, 'utf8')).toBe('new')
    expect((await stat(path)).mode & 0o777).toBe(0o640)
    expect(await namesIn(folder)).toEqual(['a.stopgap'])
  })

  it('writes through a link, so that the link stays one', async () => {
    const folder = await newFolder()
    await mkdir(join(folder, 'real'))
    await writeFile(join(folder, 'real', 'a'), 'old')
    await symlink(join(folder, 'real', 'a'), join(folder, 'link'))
    await writeAtomically(join(folder, 'link'), 'new')
    expect(await readFile(join(folder, 'real', 'a'), 'utf8')).toBe('new')
  })

  it('leaves everything as it was when it cannot replace', async () => {
    const folder = await newFolder()
    await mkdir(join(folder, 'taken', 'inside'), { recursive: true })
    await expect(writeAtomically(join(folder, 'taken'), 'new')).rejects.toThrow(/EISDIR|ENOTEMPTY|EEXIST/)
    expect(await namesIn(folder)).toEqual(['taken'])
  })

  it('sweeps away what a killed writer left, and not what a live one is writing', async () => {
    const folder = await newFolder()
    await writeFile(join(folder, '.a.writing-000000000000'), 'half')
    await writeFile(join(folder, '.a.writing-111111111111'), 'half')
    const longAgo = new Date(Date.now() - 3_600_000)
    await utimes(join(folder, '.a.writing-000000000000'), longAgo, longAgo)
    await writeAtomically(join(folder, 'a'), 'whole')
    expect(await namesIn(folder)).toEqual(['.a.writing-111111111111', 'a'])
  })

  it('leaves the old content when only a part of the new one fits', async ({ skip }) => {
    skip(process.platform === 'win32', 'Windows has no limit on the size of files to run into')
    const folder = await newFolder()
    const path = join(folder, 'a')
    await writeFile(path, 'old')
    const script = `
      const { writeAtomically } = await import(${JSON.stringify(module)})
      await writeAtomically(process.argv[1], 'x'.repeat(3_000_000)).catch(error => process.stdout.write(error.code))`
    const limited = 'ulimit -f 100; exec "$0" --import tsx --input-type=module -e "$1" "$2"'
    const { stdout } = await promisify(execFile)('bash', ['-c', limited, process.execPath, script, path])
    expect(stdout).toBe('EFBIG')
    expect(await readFile(path, 'utf8')).toBe('old')
    expect(await namesIn(folder)).toEqual(['a'])
  })

  it('holds a whole version when the writer is killed at any moment', { timeout: 30_000 }, async () => {
    const folder = await newFolder()
    const path = join(folder, 'a')
    const script = `
      const { writeAtomically } = await import(${JSON.stringify(module)})
      for (let n = 0; ; n++) {
        await writeAtomically(process.argv[1], String(n % 10).repeat(3_000_000))
        process.stdout.write('.')
      }`
    for (const delay of [0, 7, 19, 41]) {
      const child = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', script, path], {
        stdio: ['ignore', 'pipe', 'inherit'],
      })
      await once(child.stdout, 'data')
      await new Promise(resolve => setTimeout(resolve, delay))
      child.kill('SIGKILL')
      await once(child, 'exit')
      expect(await readFile(path, 'utf8')).toMatch(/^(\d)\1{2999999}$/)
    }
  })
})
