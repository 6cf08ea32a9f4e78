import { mkdir, readFile, symlink, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { beforeEach, describe, expect, it } from 'vitest'
import { planSchema } from '../../../core/plan/schema.ts'
import { digest } from '../../../electron/services/plan-file.ts'
import { keepRun, openRun } from '../../../electron/services/runs-beside.ts'
import { type Shelves, shelvesIn } from '../../../electron/services/shelves.ts'
import { namesIn, newFolder } from '../folder.ts'

let home: string
let shelves: Shelves
let token: string

beforeEach(async () => {
  home = join(await newFolder(), 'home')
  await mkdir(home)
  shelves = shelvesIn(join(home, '..', 'data'))
  token = shelves.tokens.give({ kind: 'file', path: join(home, 'Rear 1.2.stopgap') })
})

const base64 = (text: string): string => Buffer.from(text).toString('base64')
const keep = (name: string, text: string) => keepRun({ token, name, base64: base64(text) }, shelves)
const open = (file: string, text = '') => openRun({ token, file, digest: digest(text) }, shelves)

describe('a run kept beside its plan', () => {
  it('writes over nothing: another run of the same name gets a number, the same run its own file', async () => {
    const first = await keep('Before', 'one')
    expect(first).toEqual({ kind: 'kept', file: 'Rear 1 2, Before.stopgap-run', digest: digest('one') })
    expect(await keep('Before', 'two')).toMatchObject({ file: 'Rear 1 2, Before 2.stopgap-run' })
    expect(await keep('Before', 'one')).toEqual(first)
    expect(await namesIn(home)).toEqual(['Rear 1 2, Before 2.stopgap-run', 'Rear 1 2, Before.stopgap-run'])
    expect(await readFile(join(home, 'Rear 1 2, Before.stopgap-run'), 'utf8')).toBe('one')
  })

  it.each(['../../etc/passwd', 'a\\b:c*?"<>|', '...', ' ', '車'.repeat(200), 'line\nbreak\u0000'])(
    'finds a file name for “%s” that a plan takes and that stays in the folder',
    async name => {
      const kept = await keep(name, name)
      if (kept.kind !== 'kept') throw new Error(kept.reason)
      expect(planSchema.shape.runs.unwrap().element.shape.file.safeParse(kept.file).success).toBe(true)
      expect(await namesIn(home)).toEqual([kept.file])
    },
  )

  it('says why it cannot be kept', async () => {
    const elsewhere = shelves.tokens.give({ kind: 'file', path: join(home, 'gone', 'Rear.stopgap') })
    const into = (place: string) => keepRun({ token: place, name: 'Before', base64: '' }, shelves)
    expect(await into(elsewhere)).toEqual({
      kind: 'failed',
      reason: 'The run “Before” could not be kept beside the plan: its folder has been moved, renamed or deleted.',
    })
    expect(await into('A'.repeat(22))).toMatchObject({ reason: expect.stringContaining('save the plan first') })
  })

  it('is looked for in the plan’s folder and nowhere else', async () => {
    const out = join(dirname(home), 'out.stopgap-run')
    await writeFile(out, 'secret')
    await symlink(out, join(home, 'link.stopgap-run'))
    await mkdir(join(home, 'runs'))
    await writeFile(join(home, 'runs', 'in.stopgap-run'), 'inside')
    const why = async (file: string) => {
      const read = await open(file)
      return 'reason' in read ? read.reason : read.kind
    }
    for (const file of ['link.stopgap-run', '../out.stopgap-run', 'runs/../../out.stopgap-run'])
      expect(await why(file)).toMatch(/it is not in the plan’s folder\.$/)
    expect(await why('runs')).toMatch(/it is not a file\.$/)
    expect(await why('none.stopgap-run')).toMatch(/moved, renamed or deleted\.$/)
    expect(await open('runs/in.stopgap-run', 'inside')).toEqual({ kind: 'run', base64: base64('inside') })
    expect(await open('runs/in.stopgap-run', 'before')).toMatchObject({ kind: 'changed', digest: digest('inside') })
  })
})
