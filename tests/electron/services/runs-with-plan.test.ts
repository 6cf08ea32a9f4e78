import { mkdir, readFile, rm, symlink, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { beforeEach, describe, expect, it } from 'vitest'
import type { Plan } from '../../../core/plan/schema.ts'
import { digest } from '../../../electron/services/plan-file.ts'
import type { Services } from '../../../electron/services/services.ts'
import { type Desk, newDesk } from '../desk.ts'
import { namesIn } from '../folder.ts'
import { planText } from '../plan.ts'

const files = { before: 'Rear, Before.stopgap-run', after: 'runs/after.stopgap-run' } as const

/** A plan that names two runs. */
const withRuns = (): string => {
  const plan = JSON.parse(planText('With runs')) as Plan
  const setup = plan.setups[0]!.id
  plan.runs = [
    { id: 'run', name: 'Before', setup, file: files.before, digest: digest('one') },
    { id: 'run-2', name: 'After', setup, file: files.after, digest: digest('two') },
  ]
  return JSON.stringify(plan)
}

const none = { open: async () => null, recording: async () => null }

let desk: Desk
let services: Services
let cars: string

beforeEach(async () => {
  desk = await newDesk()
  cars = join(desk.home, 'cars')
  await mkdir(cars)
  await desk.put('Rear.stopgap', withRuns())
  await mkdir(join(desk.home, 'runs'))
  await writeFile(join(desk.home, files.before), 'one')
  await writeFile(join(desk.home, files.after), 'two')
  services = desk.run({ dialogs: { ...none, save: async () => join(cars, 'Rear.stopgap') } })
})

/** As the window does it, into the folder of cars. */
async function saveAs() {
  const opened = await services.handlers.openFile({ token: await services.tokenFor(join(desk.home, 'Rear.stopgap')) })
  if (opened.kind !== 'document') throw new Error(opened.reason)
  const { key, token, name, text } = opened.document
  const saved = await services.handlers.saveAs({ key, token, name, text })
  if (saved.kind !== 'saved') throw new Error(saved.kind)
  return saved
}

const read = async (token: string, file: string, text: string) => {
  const run = await services.handlers.openRun({ token, file, digest: digest(text) })
  return run.kind === 'missing' ? run.reason : Buffer.from(run.base64, 'base64').toString()
}

describe('a plan saved in another folder', () => {
  it('has its runs there too, where they were they stay, and nothing is told', async () => {
    const { token, report } = await saveAs()
    expect(report).toBe(undefined)
    expect(await read(token, files.before, 'one')).toBe('one')
    expect(await read(token, files.after, 'two')).toBe('two')
    expect(await readFile(join(desk.home, files.before), 'utf8')).toBe('one')
    expect(await namesIn(cars)).toEqual(['Rear, Before.stopgap-run', 'Rear.stopgap', 'runs'])
    expect((await saveAs()).report).toBe(undefined)
  })

  it('so it has by the window’s own chooser', async () => {
    const own = desk.run()
    const token = await own.tokenFor(join(desk.home, 'Rear.stopgap'))
    const folder = await own.handlers.folder({ token: null })
    if (folder.kind !== 'folder') throw new Error(folder.reason)
    const opened = await own.handlers.openFile({ token })
    if (opened.kind !== 'document') throw new Error(opened.reason)
    const { key, text } = opened.document
    const into = folder.entries.find(({ name }) => name === 'cars')!.token
    await own.handlers.saveIn({ key, token, folder: into, name: 'Copy', text, replace: false })
    expect(await readFile(join(cars, files.before), 'utf8')).toBe('one')
  })

  it('leaves another file of the name of a run as it is, and says so; the plan and the other run are there', async () => {
    await writeFile(join(cars, files.before), 'somebody’s')
    const { token, report } = await saveAs()
    expect(report).toMatch(/^The run “Before” did not come along: another file of that name is there already/)
    expect(report).not.toContain('After')
    expect(await readFile(join(cars, files.before), 'utf8')).toBe('somebody’s')
    expect(await read(token, files.after, 'two')).toBe('two')
  })

  it('takes along a run that changed since, as it is now, and says which was missing', async () => {
    await writeFile(join(desk.home, files.before), 'other')
    await rm(join(desk.home, files.after))
    const { token, report } = await saveAs()
    expect(report).toBe(
      'The run “After” did not come along: where it was kept, it could not be read: it has been moved, renamed or deleted.',
    )
    expect(await read(token, files.before, 'one')).toBe('other')
  })

  it('puts nothing outside its folder, whatever links are in it', async () => {
    const out = join(dirname(desk.home), 'out')
    await mkdir(out)
    await symlink(out, join(cars, 'runs'))
    expect((await saveAs()).report).toContain('The run “After” did not come along: its place leads out of the folder.')
    expect(await namesIn(out)).toEqual([])
  })

  it('says why the system would not have a run there', async () => {
    await writeFile(join(cars, 'runs'), 'a file where a folder should be')
    expect((await saveAs()).report).toMatch(/^The run “After” did not come along: .+\.$/)
  })

  it('touches nothing where the folder is the same', async () => {
    const names = await namesIn(desk.home)
    services = desk.run({ dialogs: { ...none, save: async () => join(desk.home, 'Second.stopgap') } })
    expect((await saveAs()).report).toBe(undefined)
    expect(await namesIn(desk.home)).toEqual([...names, 'Second.stopgap'].sort())
  })
})
