import { readdirSync, readFileSync } from 'node:fs'
import { mkdir, readdir, readFile, rename, rm, symlink, truncate, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Reply, Request } from '../../../electron/contract/contract.ts'
import type { OpenDocument } from '../../../electron/contract/shapes.ts'
import type { Services } from '../../../electron/services/services.ts'
import { type Desk, newDesk } from '../desk.ts'
import { planText } from '../plan.ts'

const [edited, again] = [planText('Edited'), planText('Edited elsewhere')]

const start = async (services: Services): Promise<Reply<'start'>> => services.handlers.start({})

const keepOf = (document: OpenDocument, text: string): Request<'keep'> => {
  const { key, token, name, basis } = document
  return { key, token, name, basis, text, history: 'steps' }
}

/** Opens the file, changes it without saving, and leaves. */
async function leaveUnsaved(desk: Desk, file: string) {
  const services = desk.run({ file })
  const { document } = await start(services)
  expect(await services.handlers.keep(keepOf(document, edited))).toEqual({ kind: 'kept' })
}

describe('what is opened first', () => {
  it('the first time, the first demo, in no file', async () => {
    const reply = await start((await newDesk()).run())
    expect(reply.document).toMatchObject({
      token: null,
      name: 'First demo',
      text: planText('First demo'),
      recovered: false,
    })
    expect(reply).toMatchObject({ recents: [], settings: { theme: 'system' } })
    expect(reply.demos.map(demo => demo.name)).toEqual(['First demo', 'Second demo'])
    expect(reply.report).toBe(undefined)
  })

  it('the file it was started with; after that, the last plan', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    for (const services of [desk.run({ file }), desk.run()]) {
      const { document, recents } = await start(services)
      expect(document).toMatchObject({
        name: 'Rear',
        text: planText('A plan'),
        savedText: planText('A plan'),
        recovered: false,
      })
      expect(recents).toMatchObject([{ name: 'Rear', folder: 'home', unsaved: false }])
    }
  })

  it('an unsaved change of the last plan, with its history', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    await leaveUnsaved(desk, file)
    const { document, recents } = await start(desk.run())
    expect(document).toMatchObject({ text: edited, savedText: planText('A plan'), history: 'steps', recovered: true })
    expect(recents).toMatchObject([{ name: 'Rear', unsaved: true }])
    expect(await readFile(file, 'utf8')).toBe(planText('A plan'))
  })

  it('a plan that was never in a file', async () => {
    const desk = await newDesk()
    const services = desk.run()
    const { document } = await start(services)
    await services.handlers.keep(keepOf(document, edited))
    const next = await start(desk.run())
    expect(next.document).toMatchObject({ key: document.key, token: null, text: edited, recovered: true })
    expect(next.recents).toMatchObject([{ name: 'First demo', folder: null, unsaved: true }])
  })

  it('something else, with a word, when the file is not there or not a plan', async () => {
    const desk = await newDesk()
    const missing = await start(desk.run({ file: join(desk.home, 'Gone.stopgap') }))
    expect(missing.document.name).toBe('First demo')
    expect(missing.report).toBe('“Gone” could not be opened: it has been moved, renamed or deleted.')
    const file = await desk.put('Odd.stopgap', '{"format":"stopgap-plan","version":2}')
    const newer = await start(desk.run({ file }))
    expect(newer.report).toMatch(/^“Odd” could not be opened: version is 2, written by a newer Stopgap/)
    expect(newer.report).not.toContain(desk.home)
  })
})

describe('a file that changed elsewhere', () => {
  it('is opened as it is now; the unsaved changes are put aside, and found again', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    await leaveUnsaved(desk, file)
    await writeFile(file, again)
    const services = desk.run()
    const { document, recents, report } = await start(services)
    expect(document).toMatchObject({ text: again, recovered: false })
    expect(report).toContain('“Rear (unsaved copy)”')
    const aside = recents.find(each => each.folder === null)!
    expect(aside).toMatchObject({ name: 'Rear (unsaved copy)', unsaved: true })
    const opened = await services.handlers.openFile({ token: aside.token })
    expect(opened).toMatchObject({ kind: 'document', document: { token: null, text: edited, recovered: true } })
    const next = await start(desk.run({ file }))
    expect(next.report).toBe(undefined)
    expect(next.recents).toHaveLength(2)
  })

  it('is simply opened when there was nothing unsaved', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const services = desk.run({ file })
    const { document } = await start(services)
    await services.handlers.keep(keepOf(document, document.text))
    await writeFile(file, again)
    const next = await start(desk.run())
    expect(next).toMatchObject({ document: { text: again, recovered: false } })
    expect(next.report).toBe(undefined)
    expect(next.recents).toHaveLength(1)
  })
})

describe('a file that has gone or is damaged', () => {
  it('leaves its kept copy, in no file, when it has gone', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    await leaveUnsaved(desk, file)
    await rm(file)
    const { document, report } = await start(desk.run())
    expect(document).toMatchObject({ token: null, text: edited, savedText: null, recovered: true })
    expect(report).toContain('not where it was')
  })

  it('is left as it is when damaged, and its last good copy is opened instead', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    await leaveUnsaved(desk, file)
    await truncate(file, 100)
    const services = desk.run()
    const { document, report } = await start(services)
    expect(document).toMatchObject({ token: null, text: edited, recovered: true })
    expect(report).toMatch(/“Rear” could not be opened: .* JSON/)
    expect((await readFile(file)).byteLength).toBe(100)
  })

  it('offers the version before the last save when nothing else was kept', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const services = desk.run({ file })
    const { document } = await start(services)
    const { key, token, basis } = document
    const saved = await services.handlers.save({ key, token: token!, basis, text: edited, replace: false })
    expect(saved.kind).toBe('saved')
    await writeFile(file, new Uint8Array([0x7b, 0xff, 0xfe]))
    const opened = await desk.run().handlers.start({})
    expect(opened.document).toMatchObject({ token: null, text: planText('A plan'), recovered: true })
    expect(opened.report).toContain('it is not text (UTF-8)')
  })

  it.each([
    ['is larger than a plan can be', async (path: string) => truncate(path, 21 * 1024 * 1024), 'larger than 20 MB'],
    ['is a folder', async (path: string) => rm(path).then(() => mkdir(path)), 'it is a folder'],
    [
      'is a link in a circle',
      async (path: string) => rm(path).then(() => symlink(path, path)),
      'its links lead in a circle',
    ],
  ])('is refused in words when it %s', async (_, spoil, words) => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const services = desk.run({ file })
    const { recents } = await start(services)
    await spoil(file)
    const opened = await services.handlers.openFile({ token: recents[0]!.token })
    expect(opened).toMatchObject({ kind: 'failed', reason: expect.stringContaining(words) })
  })
})

describe('the application’s own folder', () => {
  it('is told of, and gone without, when it cannot be written', async () => {
    const desk = await newDesk()
    await writeFile(desk.data, 'a file where the folder should be')
    const services = desk.run()
    const { document, report } = await start(services)
    expect(report).toMatch(/^Stopgap cannot write in its own folder.*: .*\.$/)
    const kept = await services.handlers.keep(keepOf(document, edited))
    expect(kept).toMatchObject({ kind: 'failed', reason: expect.stringContaining('could not be kept') })
    expect(await services.handlers.settings({ theme: 'dark' })).toEqual({ theme: 'dark' })
    expect(await services.handlers.recents({})).toEqual({ recents: [] })
  })

  it('keeps a damaged file of its own under another name, and says so', async () => {
    const desk = await newDesk()
    await leaveUnsaved(desk, await desk.put('Rear.stopgap'))
    const kept = join(desk.data, 'kept')
    const [copy] = await readdir(kept)
    for (const file of [join(desk.data, 'recent.json'), join(desk.data, 'settings.json'), join(kept, copy!)]) {
      await writeFile(file, '{"half":')
    }
    const { report } = await start(desk.run())
    expect(report).toContain('The list of recent plans was damaged')
    expect(report).toContain('The file of settings was damaged')
    expect(report).toContain('The kept copy of a plan was damaged')
    const asides = [...(await readdir(desk.data)), ...(await readdir(kept))].filter(name => name.includes('.damaged-'))
    expect(asides).toHaveLength(3)
  })

  it('follows a plan that is saved under another name', async () => {
    const desk = await newDesk()
    const services = desk.run()
    const { document } = await start(services)
    await services.handlers.keep(keepOf(document, edited))
    const folder = await services.handlers.folder({ token: null })
    if (folder.kind !== 'folder') throw new Error(folder.reason)
    const { key } = document
    const saved = await services.handlers.saveIn({
      key,
      token: document.token,
      folder: folder.token,
      name: 'New',
      text: edited,
      replace: false,
    })
    expect(saved).toMatchObject({ kind: 'saved', name: 'New' })
    const { document: next, recents } = await start(desk.run())
    expect(next).toMatchObject({ name: 'New', text: edited, savedText: edited, recovered: false })
    expect(recents).toMatchObject([{ name: 'New', unsaved: false }])
  })

  it('drops a kept copy the person does not want', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    await leaveUnsaved(desk, file)
    const services = desk.run()
    const { document } = await start(services)
    await services.handlers.forget({ key: document.key })
    const next = await start(desk.run())
    expect(next.document).toMatchObject({ text: planText('A plan'), recovered: false })
  })
})

describe('keeping', () => {
  it('refuses what could not be opened again', async () => {
    const services = (await newDesk()).run()
    const { document } = await start(services)
    expect(await services.handlers.keep(keepOf(document, '{}'))).toMatchObject({ kind: 'failed' })
  })

  it('is on the disk once settled, whatever is still under way', async () => {
    const desk = await newDesk()
    const services = desk.run({ file: await desk.put('Rear.stopgap') })
    const { document } = await start(services)
    void services.handlers.keep(keepOf(document, edited))
    await services.settled()
    const [copy] = readdirSync(join(desk.data, 'kept'))
    expect(JSON.parse(readFileSync(join(desk.data, 'kept', copy!), 'utf8')).text).toBe(edited)
  })
})

describe('a file from outside', () => {
  it('is shown first when the window has not asked yet, and told to it later', async () => {
    const desk = await newDesk()
    const told: unknown[] = []
    const services = desk.run({ tell: (...what) => told.push(what) })
    await services.openOutside(await desk.put('One.stopgap'))
    expect((await start(services)).document.name).toBe('One')
    await services.openOutside(await desk.put('Two.stopgap'))
    expect(told).toMatchObject([['opened', { kind: 'document', document: { name: 'Two' } }]])
    services.windowClosed()
    await services.openOutside(await desk.put('Three.stopgap'))
    expect(told).toHaveLength(1)
    expect((await start(services)).document.name).toBe('Three')
  })

  it('goes by where it is, through whatever link it was opened', async () => {
    const desk = await newDesk()
    await mkdir(join(desk.home, 'real'))
    const file = await desk.put(join('real', 'Rear.stopgap'))
    await symlink(join(desk.home, 'real'), join(desk.home, 'link'))
    await leaveUnsaved(desk, join(desk.home, 'link', 'Rear.stopgap'))
    const { document } = await start(desk.run({ file }))
    expect(document).toMatchObject({ text: edited, recovered: true })
    await rename(file, `${file}.old`)
    expect((await start(desk.run({ file: join(desk.home, 'link', 'Rear.stopgap') }))).document.text).toBe(edited)
  })
})
