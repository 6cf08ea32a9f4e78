import { once } from 'node:events'
import { mkdir, readdir, readFile, utimes, writeFile } from 'node:fs/promises'
import { hostname } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Reply } from '../../../electron/contract/contract.ts'
import type { OpenDocument, Opened } from '../../../electron/contract/shapes.ts'
import { keyOf } from '../../../electron/services/documents.ts'
import type { Services } from '../../../electron/services/services.ts'
import { type Desk, newDesk } from '../desk.ts'
import { planText } from '../plan.ts'
import { startApart } from './apart.ts'

const [mine, theirs] = [planText('Mine'), planText('Theirs')]
const alsoOpen = /^“Rear” is open in another window too\./

/** Windows of one run, and which of them are there. */
async function windowsOn(desk: Desk, file: string, ...names: string[]) {
  const here = new Set(names)
  const shared: [window: string | undefined, key: string][] = []
  const services = desk.run({
    isHere: window => here.has(window),
    tell: (name, payload, window) => {
      if (name === 'shared') shared.push([window, (payload as { key: string }).key])
    },
  })
  const open = async (name: string) => {
    const token = await services.tokenFor(file)
    return documentOf(await services.forWindow(name).openFile({ token }))
  }
  return { here, services, open, shared }
}

function documentOf(opened: Opened) {
  if (opened.kind !== 'document') throw new Error(opened.reason)
  return opened
}

const keep = (services: Services, window: string, document: OpenDocument, text: string) => {
  const { key, token, name, basis } = document
  return services.forWindow(window).keep({ key, token, name, text, basis, history: `history of ${window}` })
}

const save = (services: Services, window: string, document: OpenDocument, text: string): Promise<Reply<'save'>> => {
  const { key, token, basis } = document
  return services.forWindow(window).save({ key, token: token!, text, basis, replace: false })
}

describe('two windows of one Stopgap on one file', () => {
  it('keep their changes apart; the second is told, and both are found again', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const { services, open } = await windowsOn(desk, file, 'a', 'b')
    const [a, b] = [await open('a'), await open('b')]
    expect(a.report).toBe(undefined)
    expect(b.report).toMatch(alsoOpen)
    await keep(services, 'a', a.document, mine)
    await keep(services, 'b', b.document, theirs)
    expect((await readdir(join(desk.data, 'kept'))).length).toBe(2)

    const after = desk.run({ file })
    const next = await after.handlers.start({})
    expect(next.document).toMatchObject({ text: mine, history: 'history of a', recovered: true })
    expect(next.report).toMatch(/^A second window on “Rear” ended before it was saved\..*“Rear \(unsaved copy\)”\.$/)
    const aside = next.recents.find(each => each.folder === null)!
    const other = documentOf(await after.handlers.openFile({ token: aside.token }))
    expect(other.document).toMatchObject({ text: theirs, history: 'history of b' })
  })

  it('the first is told when the second comes, once, however often that one is loaded again', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const { here, services, open, shared } = await windowsOn(desk, file, 'a', 'b')
    const { document } = await open('a')
    await keep(services, 'a', document, mine)
    expect(shared).toEqual([])
    await open('b')
    expect(shared).toEqual([['a', document.key]])
    here.delete('b')
    here.add('b again')
    await open('b again')
    await keep(services, 'b again', document, theirs)
    expect(shared).toEqual([['a', document.key]])
  })

  it('so it is when the second comes by saving under that name, and is told so itself', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const { services, open, shared } = await windowsOn(desk, file, 'a', 'b')
    const { document } = await open('a')
    const second = services.forWindow('b')
    const { key } = documentOf(
      await second.openFile({ token: await services.tokenFor(await desk.put('Front.stopgap')) }),
    ).document
    const folder = await second.folder({ token: null })
    if (folder.kind !== 'folder') throw new Error(folder.reason)
    expect(shared).toEqual([])
    const saved = await second.saveIn({
      key,
      token: null,
      folder: folder.token,
      name: 'Rear',
      text: theirs,
      replace: true,
    })
    expect(saved).toMatchObject({ kind: 'saved', key: document.key, report: expect.stringMatching(alsoOpen) })
    expect(shared).toEqual([['a', document.key]])
  })

  it('neither overwrites what the other saved: the second is asked, and what it had is put aside when it takes theirs', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const { services, open } = await windowsOn(desk, file, 'a', 'b')
    const [a, b] = [await open('a'), await open('b')]
    await keep(services, 'b', b.document, mine)
    expect(await save(services, 'a', a.document, theirs)).toMatchObject({ kind: 'saved' })
    expect(await save(services, 'b', b.document, mine)).toMatchObject({ kind: 'changed', savedText: theirs })
    expect(await readFile(file, 'utf8')).toBe(theirs)
    const taken = await open('b')
    expect(taken.document).toMatchObject({ text: theirs, recovered: false })
    expect(taken.report).toContain('“Rear (unsaved copy)”')
    const { recents } = await services.forWindow('b').recents({})
    const token = recents.find(each => each.folder === null)!.token
    expect(documentOf(await services.forWindow('b').openFile({ token })).document.text).toBe(mine)
  })

  it('of two that save at the same moment one is asked', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const { services, open } = await windowsOn(desk, file, 'a', 'b')
    const [a, b] = [await open('a'), await open('b')]
    const done = await Promise.all([save(services, 'a', a.document, mine), save(services, 'b', b.document, theirs)])
    expect(done.map(({ kind }) => kind).sort()).toEqual(['changed', 'saved'])
  })

  it('a window that is loaded again has what it had, its history too, and is told nothing', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const { here, services, open } = await windowsOn(desk, file, 'a', 'b')
    const [a, b] = [await open('a'), await open('b')]
    await keep(services, 'a', a.document, mine)
    await keep(services, 'b', b.document, theirs)
    // The end of the old page is heard of a moment after the new one asks.
    setTimeout(() => here.delete('a'), 100)
    here.add('a again')
    const again = await open('a again')
    expect(again).toMatchObject({ document: { text: mine, history: 'history of a', recovered: true } })
    expect(again.report).toBe(undefined)
    here.delete('b')
    here.add('b again')
    expect(await open('b again')).toMatchObject({
      report: expect.stringMatching(alsoOpen),
      document: { text: theirs, history: 'history of b' },
    })
  })

  it('lets go of a file when another is opened, and when it closes', async () => {
    const desk = await newDesk()
    const [file, other] = [await desk.put('Rear.stopgap'), await desk.put('Front.stopgap')]
    const { services, open } = await windowsOn(desk, file, 'a', 'b', 'c')
    await open('a')
    documentOf(await services.forWindow('a').openFile({ token: await services.tokenFor(other) }))
    expect((await open('b')).report).toBe(undefined)
    await services.windowClosed('b')
    expect((await open('c')).report).toBe(undefined)
  })

  it('a plan in no file is shared no more than one in a file', async () => {
    const desk = await newDesk()
    const services = desk.run({ isHere: () => true })
    const first = await services.forWindow('a').start({})
    await keep(services, 'a', first.document, mine)
    const second = await services.forWindow('b').start({})
    expect(second.report).toMatch(/is open in another window too/)
    expect(second.document.text).toBe(mine)
    await keep(services, 'b', second.document, theirs)
    const next = await desk.run().handlers.start({})
    expect(next.document.text).toBe(mine)
    expect(next.recents.map(({ name }) => name)).toEqual(['First demo', 'First demo (unsaved copy)'])
  })
})

describe('two Stopgaps on one file', { timeout: 120_000 }, () => {
  it('the second is told, and after a kill the changes of both are there', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const other = startApart(
      desk,
      file,
      `say(await handlers.keep(keepOf((await lines.next()).value.replaceAll('|', '\\n'))))\nawait lines.next()`,
    )
    other.tell(mine.replaceAll('\n', '|'))
    expect(await other.next()).toEqual({ kind: 'kept' })
    const services = desk.run({ file })
    const { document, report } = await services.handlers.start({})
    expect(report).toMatch(alsoOpen)
    expect(document).toMatchObject({ text: planText('A plan'), recovered: false })
    await keep(services, 'window', document, theirs)
    other.child.kill('SIGKILL')
    await once(other.child, 'close')
    const next = await desk.run({ file }).handlers.start({})
    expect(next.document).toMatchObject({ text: mine, recovered: true })
    expect(next.report).toContain('“Rear (unsaved copy)”')
  })

  it('of two that save at the same moment one is asked, every time', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const script = `
      let basis = document.basis
      for (;;) {
        const line = (await lines.next()).value
        const now = await handlers.openFile({ token: document.token })
        say('ready')
        await lines.next()
        say((await handlers.save({ ...saveOf(line.replaceAll('|', '\\n')), basis: now.document.basis })).kind)
      }`
    const other = startApart(desk, file, script)
    const services = desk.run()
    const token = await services.tokenFor(file)
    for (let round = 0; round < 12; round += 1) {
      const [here, there] = [planText(`Here ${round}`), planText(`There ${round}`)]
      other.tell(there.replaceAll('\n', '|'))
      expect(await other.next()).toBe('ready')
      const { document } = documentOf(await services.handlers.openFile({ token }))
      other.tell('now')
      const done = await save(services, 'window', document, here)
      expect([done.kind, await other.next()].sort()).toEqual(['changed', 'saved'])
      expect(await readFile(file, 'utf8')).toBe(done.kind === 'saved' ? here : there)
    }
  })
})

describe('what an ended Stopgap left behind locks nothing', () => {
  it.each([
    ['of a program that has ended', (): unknown => ({ run: 'other', pid: 2 ** 22 + 7, machine: '' }), 0],
    [
      'of a program whose number another has now, not renewed for long',
      () => ({ run: 'other', pid: 1, machine: '' }),
      120,
    ],
    ['of another machine, not renewed for long', () => ({ run: 'other', pid: 1, machine: 'elsewhere' }), 120],
    ['half written long ago', () => '{"ru', 120],
  ])('a mark %s', async (_, content, seconds) => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    await mkdir(join(desk.data, 'open'), { recursive: true })
    const mark = join(desk.data, 'open', `${keyOf(file)}.json`)
    const made = content()
    const text =
      typeof made === 'string' ? made : JSON.stringify(made).replace('"machine":""', `"machine":"${hostname()}"`)
    await writeFile(mark, text)
    const then = new Date(Date.now() - seconds * 1000)
    await utimes(mark, then, then)
    expect((await desk.run({ file }).handlers.start({})).report).toBe(undefined)
  })

  it('while a live one is not passed over', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    await mkdir(join(desk.data, 'open'), { recursive: true })
    const mark = { run: 'other', pid: 1, machine: 'elsewhere' }
    await writeFile(join(desk.data, 'open', `${keyOf(file)}.json`), JSON.stringify(mark))
    expect((await desk.run({ file }).handlers.start({})).report).toMatch(alsoOpen)
  })
})
