import { chmod, mkdir, readFile, rm, symlink, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { Reply } from '../../../electron/contract/contract.ts'
import { writePlanFile } from '../../../electron/services/plan-file.ts'
import type { Services } from '../../../electron/services/services.ts'
import { newDesk } from '../desk.ts'
import { planText } from '../plan.ts'

const [mine, theirs] = [planText('Mine'), planText('Theirs')]

async function opened(fileName = 'Rear.stopgap') {
  const desk = await newDesk()
  const file = await desk.put(fileName)
  const services = desk.run({ file })
  const { document } = await services.handlers.start({})
  const save = (text: string, { basis = document.basis, replace = false } = {}) =>
    services.handlers.save({ key: document.key, token: document.token!, text, basis, replace })
  return { desk, file, services, document, save }
}

async function folderOf(services: Services, token: string | null = null) {
  const folder = await services.handlers.folder({ token })
  if (folder.kind !== 'folder') throw new Error(folder.reason)
  return folder
}

describe('save', () => {
  it('puts the text in the file, again and again', async () => {
    const { file, save } = await opened()
    const first = await save(mine)
    expect(first).toMatchObject({ kind: 'saved', name: 'Rear' })
    const second = await save(theirs, { basis: (first as Extract<Reply<'save'>, { kind: 'saved' }>).basis })
    expect(second.kind).toBe('saved')
    expect(await readFile(file, 'utf8')).toBe(theirs)
  })

  it('does not overwrite what somebody else wrote meanwhile, unless told to', async () => {
    const { file, save } = await opened()
    await writeFile(file, theirs)
    expect(await save(mine)).toMatchObject({ kind: 'changed', savedText: theirs })
    expect(await readFile(file, 'utf8')).toBe(theirs)
    expect((await save(mine, { replace: true })).kind).toBe('saved')
    expect(await readFile(file, 'utf8')).toBe(mine)
  })

  it('asks before it overwrites a file that was damaged meanwhile', async () => {
    const { file, save } = await opened()
    await writeFile(file, new Uint8Array([0xff, 0xff]))
    expect(await save(mine)).toMatchObject({ kind: 'changed', savedText: null })
    expect((await readFile(file)).byteLength).toBe(2)
  })

  it('is content when somebody else wrote the same', async () => {
    const { file, save } = await opened()
    await writeFile(file, mine)
    expect((await save(mine)).kind).toBe('saved')
  })

  it('makes the file anew when it was removed', async () => {
    const { file, save } = await opened()
    await rm(file)
    expect((await save(mine)).kind).toBe('saved')
    expect(await readFile(file, 'utf8')).toBe(mine)
  })

  it('never writes what is not a plan', async () => {
    const { file, save } = await opened()
    expect(await save('{"format":"stopgap-plan"}')).toMatchObject({
      kind: 'failed',
      reason: expect.stringContaining('version'),
    })
    expect(await readFile(file, 'utf8')).toBe(planText('A plan'))
  })

  it('says why it cannot: read-only, folder gone', async () => {
    const { desk, file, save } = await opened()
    await chmod(file, 0o444)
    expect(await save(mine)).toEqual({ kind: 'failed', reason: '“Rear” could not be saved: the file is read-only.' })
    expect(await readFile(file, 'utf8')).toBe(planText('A plan'))
    await rm(desk.home, { recursive: true })
    expect(await save(mine)).toEqual({
      kind: 'failed',
      reason: '“Rear” could not be saved: its folder has been moved, renamed or deleted, or its disk taken out.',
    })
  })

  it('puts the words of a full disk in the reply, and leaves the file alone', async () => {
    const { file } = await opened()
    const full = Object.assign(new Error('ENOSPC: no space left on device, write'), {
      code: 'ENOSPC',
      syscall: 'write',
    })
    const done = await writePlanFile(file, mine, null, true, () => Promise.reject(full))
    expect(done).toEqual({ kind: 'refused', why: 'the disk is full' })
    expect(await readFile(file, 'utf8')).toBe(planText('A plan'))
  })

  it('refuses a token of another run, and one that is no file', async () => {
    const { services, document } = await opened()
    const folder = await folderOf(services)
    for (const token of ['A'.repeat(22), folder.token]) {
      const { key, basis } = document
      const done = await services.handlers.save({ key, token, text: mine, basis, replace: true })
      expect(done).toMatchObject({ kind: 'failed', reason: expect.stringContaining('Save as') })
    }
  })
})

describe('save as', () => {
  it('asks the window to choose where there is no dialog', async () => {
    const { services, document } = await opened()
    expect(await services.handlers.saveAs({ key: document.key, token: document.token, name: 'B', text: mine })).toEqual(
      { kind: 'choose' },
    )
  })

  it('goes where the dialog says, adding the ending, but not over a file nobody asked about', async () => {
    const desk = await newDesk()
    let chosen: string | null = null
    const dialogs = { open: async () => chosen, save: async () => chosen, recording: async () => chosen }
    const { handlers } = desk.run({ dialogs })
    const { document } = await handlers.start({})
    const saveAs = () => handlers.saveAs({ key: document.key, token: document.token, name: 'B', text: mine })
    expect(await saveAs()).toEqual({ kind: 'cancelled' })
    expect(await handlers.open({})).toEqual({ kind: 'cancelled' })
    chosen = join(desk.home, 'B')
    expect(await saveAs()).toMatchObject({ kind: 'saved', name: 'B' })
    expect(await readFile(join(desk.home, 'B.stopgap'), 'utf8')).toBe(mine)
    expect(await saveAs()).toMatchObject({ kind: 'failed', reason: expect.stringContaining('there already') })
    chosen = join(desk.home, 'B.stopgap')
    expect(await saveAs()).toMatchObject({ kind: 'saved' })
    expect(await handlers.open({})).toMatchObject({ kind: 'document', document: { name: 'B', text: mine } })
  })
})

describe('the window’s own chooser', () => {
  it('shows folders and plans of the home, nothing hidden, nothing that leads out of it', async () => {
    const desk = await newDesk()
    await desk.put('b10.stopgap')
    await desk.put('b9.stopgap')
    await desk.put('notes.txt')
    await desk.put('.hidden.stopgap')
    await mkdir(join(desk.home, 'cars'))
    await symlink('/etc', join(desk.home, 'etc'))
    await symlink(desk.demos, join(desk.home, 'demos'))
    const services = desk.run()
    const folder = await folderOf(services)
    expect(folder.entries.map(({ kind, name }) => [kind, name])).toEqual([
      ['folder', 'cars'],
      ['plan', 'b9'],
      ['plan', 'b10'],
    ])
    expect(folder).toMatchObject({ name: 'Home', parent: null, unlisted: 0 })
    expect(folder.places[0]).toMatchObject({ name: 'Home', token: folder.token })
    expect(JSON.stringify(folder)).not.toContain(desk.home)
    const cars = await folderOf(services, folder.entries[0]!.token)
    expect(cars).toMatchObject({ name: 'cars', parent: folder.token, entries: [] })
    const plan = await services.handlers.openFile({ token: folder.entries[1]!.token })
    expect(plan).toMatchObject({ kind: 'document', document: { name: 'b9' } })
  })

  it('saves into a folder, asks before replacing, and comes back to it', async () => {
    const desk = await newDesk()
    await mkdir(join(desk.home, 'cars'))
    const services = desk.run()
    const { document } = await services.handlers.start({})
    const cars = (await folderOf(services)).entries[0]!.token
    const saveIn = (name: string, text: string, replace: boolean) =>
      services.handlers.saveIn({ key: document.key, token: document.token, folder: cars, name, text, replace })
    expect(await saveIn('Front', mine, false)).toMatchObject({ kind: 'saved', name: 'Front' })
    expect(await saveIn('Front.stopgap', theirs, false)).toEqual({ kind: 'exists', name: 'Front' })
    expect(await readFile(join(desk.home, 'cars', 'Front.stopgap'), 'utf8')).toBe(mine)
    expect(await saveIn('Front', theirs, true)).toMatchObject({ kind: 'saved' })
    expect(await saveIn('../up', theirs, true)).toMatchObject({ kind: 'failed', reason: expect.stringContaining('/') })
    expect((await folderOf(desk.run())).name).toBe('cars')
  })

  it('says so when a folder has gone', async () => {
    const desk = await newDesk()
    await mkdir(join(desk.home, 'cars'))
    const services = desk.run()
    const cars = (await folderOf(services)).entries[0]!.token
    await rm(join(desk.home, 'cars'), { recursive: true })
    expect(await services.handlers.folder({ token: cars })).toEqual({
      kind: 'failed',
      reason: '“cars” could not be opened: it has been moved, renamed or deleted.',
    })
  })
})
