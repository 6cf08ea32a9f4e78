import { readFile, stat, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { detectReading } from '../../../core/runs/detect.ts'
import { digest } from '../../../electron/services/plan-file.ts'
import { type ReadAs, readRun, tokenize } from '../../../electron/services/run-file.ts'
import { memoryOf } from '../../bench/stopwatch.ts'
import { newFolder } from '../folder.ts'
import { writeLongRun } from './long-run.ts'

const asDetected = (sample: string, encoding: Parameters<typeof detectReading>[1]): ReadAs => {
  const { reading, columns } = detectReading(sample, encoding, tokenize)
  return { reading, columns, taken: columns.map((_, i) => i).slice(1) }
}

describe('a recorded run in a file', () => {
  const rows = Array.from({ length: 20_000 }, (_, i) => [
    i / 1000,
    Math.round(1e3 * Math.sin(i / 50)) / 10 + 0,
    (i % 7) - 3,
  ])
  const text = (comma: boolean, end: string): string =>
    [
      ['Zeit (s)', 'Höhe vorn (mm)', 'rear (mm)'],
      ...rows.map(row => row.map(value => String(value).replace('.', comma ? ',' : '.'))),
    ]
      .map(cells => cells.join(';') + end)
      .join('')
  const written: readonly (readonly [string, Buffer])[] = [
    ['UTF-8', Buffer.from(text(false, '\n'))],
    ['UTF-8 with its mark, decimal comma', Buffer.from(`\uFEFF${text(true, '\r\n')}`)],
    ['UTF-16', Buffer.from(`\uFEFF${text(true, '\r\n')}`, 'utf16le')],
    ['UTF-16 the other way round', Buffer.from(`\uFEFF${text(false, '\n')}`, 'utf16le').swap16()],
    ['Latin-1, bare carriage returns', Buffer.from(text(true, '\r'), 'latin1')],
  ]

  it.each(written)('is read the same in %s, and is not touched', async (_, bytes) => {
    const file = path.join(await newFolder(), 'run.csv')
    await writeFile(file, bytes)
    const before = await stat(file)
    const told: number[] = []
    const read = await readRun(file, asDetected, share => told.push(share))
    if (!read.ok) throw new Error(read.why)
    const { time, values } = read.table
    expect([Array.from(time), ...values.map(list => Array.from(list))]).toEqual(
      [0, 1, 2].map(column => rows.map(row => row[column]!)),
    )
    expect(read.digest).toBe(digest(bytes))
    expect([told.at(-1), told.every((share, i) => i === 0 || share >= told[i - 1]!)]).toEqual([1, true])
    const after = await stat(file)
    expect([after.mtimeMs, after.size, (await readFile(file)).equals(bytes)]).toEqual([
      before.mtimeMs,
      before.size,
      true,
    ])
  })

  it('of 200 MB takes no more memory than 8 bytes a number, for times, four channels and one list twice, and 256 MB for Node, text and cells', async () => {
    const file = path.join(await newFolder(), 'long.csv')
    const count = await writeLongRun(file, 200e6)
    expect((await stat(file)).size).toBeGreaterThan(200e6)
    const from = (each: string) => JSON.stringify(path.join(import.meta.dirname, '../../..', each))
    const most = memoryOf(
      `const { readRun, tokenize } = await import(${from('electron/services/run-file.ts')})
       const { detectReading } = await import(${from('core/runs/detect.ts')})
       const as = (sample, encoding) => ({ ...detectReading(sample, encoding, tokenize), taken: [1, 2, 3, 4] })
       const read = await readRun(${JSON.stringify(file)}, as)
       const { table } = read
       if (!read.ok || table.rows !== ${count} || table.time.at(-1) !== ${(count - 1) / 1000}) throw new Error('not read')
       const { unreadable, repeated, backward, missing } = table.faults
       if (unreadable + repeated + backward + missing > 0) throw new Error('not read whole')`,
    )
    expect(most).toBeLessThan(8 * count * (1 + 4 + 1) + 256e6)
  })
})
