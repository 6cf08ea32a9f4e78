import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { beforeEach, describe, expect, it } from 'vitest'
import { GENERIC_SHELF, type Shelf } from '../../../core/changes/shelf.ts'
import { formatShelf } from '../../../core/plan/shelf-file.ts'
import { type Desk, newDesk } from '../desk.ts'

const own: Shelf = {
  ...GENERIC_SHELF,
  springs: [{ ...GENERIC_SHELF.springs[0]!, id: 'mine', name: 'Blue one, “left rack”', generic: false }],
}

describe('the shelf of stops, springs and tubes', () => {
  let desk: Desk
  beforeEach(async () => {
    desk = await newDesk()
  })
  const file = () => join(desk.data, 'shelf.json')

  it('is empty until somebody puts something on it, and is there in the next run', async () => {
    const first = desk.run()
    expect(await first.handlers.shelf({})).toEqual({ text: null, report: undefined })
    expect(await first.handlers.keepShelf({ text: formatShelf(own) })).toEqual({ kind: 'kept' })
    await first.settled()
    expect(await desk.run().handlers.shelf({})).toEqual({ text: formatShelf(own), report: undefined })
    expect(JSON.parse(await readFile(file(), 'utf8'))).toMatchObject({ format: 'stopgap-shelf', version: 1 })
  })

  it('keeps the latest of several', async () => {
    const { handlers, settled } = desk.run()
    const named = (name: string) => formatShelf({ ...own, springs: [{ ...own.springs[0]!, name }] })
    const kept = await Promise.all(['one', 'two', 'three'].map(name => handlers.keepShelf({ text: named(name) })))
    await settled()
    expect(kept).toEqual(Array(3).fill({ kind: 'kept' }))
    expect((await handlers.shelf({})).text).toBe(named('three'))
  })

  it('takes no text that is not a shelf, says where and why, and leaves the one it has', async () => {
    const { handlers } = desk.run()
    await handlers.keepShelf({ text: formatShelf(own) })
    const wrong = JSON.parse(formatShelf(own))
    wrong.springs[0].part.solidLength = 9
    const refused = await handlers.keepShelf({ text: JSON.stringify(wrong) })
    expect(refused).toMatchObject({ kind: 'failed' })
    expect(refused.kind === 'failed' && refused.reason).toMatch(
      /^The shelf could not be kept: springs\[0\]\.part\.solidLength is 9 m; it should be less than .*Export it/,
    )
    for (const text of ['', '{', 'null', '[]', '{"format":"stopgap-plan"}', `{"__proto__":${formatShelf(own)}}`])
      expect(await handlers.keepShelf({ text })).toMatchObject({ kind: 'failed' })
    expect((await handlers.shelf({})).text).toBe(formatShelf(own))
  })

  it.each([
    ['{', 'was damaged'],
    ['{"format":"stopgap-shelf","version":9}', 'was written by a newer Stopgap'],
    ['\u0000', 'was damaged'],
  ])('that cannot be read is put aside and told, never overwritten: %j %s', async (damaged, why) => {
    await mkdir(desk.data, { recursive: true })
    await writeFile(file(), damaged)
    const { handlers } = desk.run()
    const { text, report } = await handlers.shelf({})
    expect(text).toBeNull()
    expect(report).toContain(`The shelf of stops, springs and tubes ${why}. It was kept as shelf.json.damaged-`)
    expect((await handlers.shelf({})).report).toBeUndefined()
    const aside = (await readdir(desk.data)).find(name => name.startsWith('shelf.json.damaged-'))
    expect(await readFile(join(desk.data, aside!), 'utf8')).toBe(damaged)
  })

  it('says so where it cannot be written', async () => {
    await writeFile(desk.data, 'a file where the folder should be')
    const kept = await desk.run().handlers.keepShelf({ text: formatShelf(own) })
    expect(kept.kind === 'failed' && kept.reason).toMatch(/^The shelf could not be kept: .*\. Export it/)
  })
})
