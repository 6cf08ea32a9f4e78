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
    await writer.write(join(folder, 'a'), 'text')
    await expect(writer.write(join(folder, 'a', 'b'), 'text')).rejects.toThrow(/ENOTDIR|EEXIST/)
    await writer.write(join(folder, 'a'), 'other')
    expect(await readFile(join(folder, 'a'), 'utf8')).toBe('other')
  })

  it('makes the folder it writes to, and keeps the latest of what is asked for at once or right after', async () => {
    const file = join(await newFolder(), 'new', 'a')
    const writer = latestWriter()
    await Promise.all(['one', 'two', 'three'].map(text => writer.write(file, text)))
    expect(await readFile(file, 'utf8')).toBe('three')
    await writer.write(file, 'four').then(() => writer.write(file, 'five'))
    expect(await readFile(file, 'utf8')).toBe('five')
  })
})
