import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { latestWriter } from '../../../electron/services/latest-writer.ts'
import { namesIn, newFolder } from '../folder.ts'

describe('latestWriter', () => {
  it('ends with the last of many contents, and each promise waits for it', async () => {
    const path = join(await newFolder(), 'a')
    const writer = latestWriter()
    const all = Array.from({ length: 50 }, (_, n) => writer.write(path, String(n)))
    await all[10]
    expect(await readFile(path, 'utf8')).toBe('49')
    await Promise.all(all)
  })

  it('removes in the same order as it writes', async () => {
    const folder = await newFolder()
    const writer = latestWriter()
    await Promise.all([writer.write(join(folder, 'a'), 'text'), writer.write(join(folder, 'a'), null)])
    expect(await namesIn(folder)).toEqual([])
  })

  it('tells a failure, and works again after it', async () => {
    const folder = await newFolder()
    const writer = latestWriter()
    await expect(writer.write(join(folder, 'none', 'a'), 'text')).rejects.toThrow('ENOENT')
    await writer.write(join(folder, 'a'), 'text')
    expect(await readFile(join(folder, 'a'), 'utf8')).toBe('text')
  })
})
