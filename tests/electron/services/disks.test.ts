import { execFile } from 'node:child_process'
import { chmod, mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { promisify } from 'node:util'
import { describe, expect, it, vi } from 'vitest'
import { type Desk, newDesk } from '../desk.ts'
import { planText } from '../plan.ts'
import { saidApart } from './apart.ts'

vi.setConfig({ testTimeout: 120_000 })

const run = promisify(execFile)
const mine = planText('Mine')
const saveMine = `say(await handlers.save({ ...saveOf(rest[0]), replace: rest[1] === 'replace' }))`
const isRoot = process.getuid?.() === 0

async function opened(desk: Desk, file: string) {
  const services = desk.run({ file })
  const { document } = await services.handlers.start({})
  const { key, token, basis, name } = document
  return {
    services,
    document,
    save: () => services.handlers.save({ key, token: token!, text: mine, basis, replace: false }),
    keep: () => services.handlers.keep({ key, token, name, text: mine, basis, history: 'h' }),
  }
}

/** A real disk of `size`, in memory, for as long as the shell command runs; null where mounting is not allowed, and why. */
async function smallDisk(at: string, size: string): Promise<{ shell: string } | { why: string }> {
  const mount = `mount -t tmpfs -o size=${size} small "${at}"`
  try {
    await run('unshare', ['-rm', 'sh', '-c', mount])
    return { shell: `unshare -rm bash -c '${mount} && "$0" "$@"'` }
  } catch (error) {
    return {
      why: `a small disk cannot be mounted here: ${error instanceof Error ? error.message.split('\n')[0] : error}`,
    }
  }
}

describe('a full disk', () => {
  it('is said, and the earlier file stands', async ({ skip }) => {
    const desk = await newDesk()
    const stick = join(desk.home, 'stick')
    await mkdir(stick)
    const disk = await smallDisk(stick, '64k')
    if ('why' in disk) return skip(disk.why)
    const before = await desk.put('Rear.stopgap')
    const file = join(stick, 'Rear.stopgap')
    const script = `
      const { copyFileSync, readFileSync, readdirSync, statfsSync, writeFileSync } = await import('node:fs')
      copyFileSync(rest[1], rest[2])
      const again = await handlers.openFile({ token: await tokenFor(rest[2]) })
      const { bfree, bsize } = statfsSync(rest[3])
      writeFileSync(rest[3] + '/filler', Buffer.alloc((bfree - 1) * bsize))
      const { key, token, basis } = again.document
      say(await handlers.save({ key, token, basis, text: rest[0], replace: false }))
      say([readFileSync(rest[2], 'utf8'), readdirSync(rest[3]).sort()])`
    const long = JSON.stringify({ ...JSON.parse(mine), notes: 'n'.repeat(20_000) })
    const [saved, there] = await saidApart(desk, before, script, {
      more: [long, before, file, stick],
      shell: disk.shell,
    })
    expect(saved).toEqual({ kind: 'failed', reason: '“Rear” could not be saved: the disk is full.' })
    expect(there).toEqual([planText('A plan'), ['Rear.stopgap', 'filler']])
  })

  it('under our own folder is said when changes are kept, and a save goes on all the same', async ({ skip }) => {
    const desk = await newDesk()
    await mkdir(desk.data)
    const disk = await smallDisk(desk.data, '64k')
    if ('why' in disk) return skip(disk.why)
    const file = await desk.put('Rear.stopgap')
    const script = `
      const { statfsSync, writeFileSync } = await import('node:fs')
      const { bfree, bsize } = statfsSync(data)
      writeFileSync(data + '/filler', Buffer.alloc(bfree * bsize))
      say(await handlers.keep(keepOf(rest[0])))
      say(await handlers.save(saveOf(rest[0])))`
    const [kept, saved] = await saidApart(desk, file, script, { more: [mine], shell: disk.shell })
    expect(kept).toEqual({
      kind: 'failed',
      reason: 'The latest changes to “Rear” could not be kept: the disk is full. Save the plan.',
    })
    expect(saved).toMatchObject({
      kind: 'saved',
      report: expect.stringMatching(/^Stopgap cannot write in its own folder.*: the disk is full\.$/),
    })
    expect(await readFile(file, 'utf8')).toBe(mine)
  })

  it('that takes only a part of the file is said, and the earlier file stands', async ({ skip }) => {
    skip(process.platform === 'win32', 'Windows has no limit on the size of files to run into')
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const long = JSON.stringify({ ...JSON.parse(mine), notes: 'n'.repeat(90_000) })
    const [saved] = await saidApart(desk, file, saveMine, { more: [long], shell: 'ulimit -f 40; exec' })
    expect(saved).toEqual({
      kind: 'failed',
      reason: '“Rear” could not be saved: the disk does not take files of this size.',
    })
    expect(await readFile(file, 'utf8')).toBe(planText('A plan'))
    expect(await readdir(desk.home)).toEqual(['Rear.stopgap'])
  })
})

describe('a folder that cannot be written', () => {
  it('is said, and the earlier file stands', async ({ skip }) => {
    skip(process.platform === 'win32', 'Windows has no such folders')
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    await mkdir(desk.data)
    // Root may write anywhere, so what is tried is tried as nobody.
    const asNobody = isRoot ? 'process.setgid(65534); process.setuid(65534);' : ''
    if (isRoot) for (const folder of [dirname(desk.home), desk.home, desk.data]) await chmod(folder, 0o755)
    await chmod(desk.home, 0o555)
    await chmod(desk.data, 0o777)
    try {
      const [saved] = await saidApart(desk, file, `${asNobody} ${saveMine}`, { more: [mine] })
      expect(saved).toEqual({
        kind: 'failed',
        reason: expect.stringMatching(
          /^“Rear” could not be saved: (the file is read-only|this account may not write in its folder)\.$/,
        ),
      })
      await chmod(file, 0o666)
      const [again] = await saidApart(desk, file, `${asNobody} ${saveMine}`, { more: [mine] })
      expect(again).toEqual({
        kind: 'failed',
        reason: '“Rear” could not be saved: this account may not write in its folder.',
      })
    } finally {
      await chmod(desk.home, 0o755)
    }
    expect(await readFile(file, 'utf8')).toBe(planText('A plan'))
    expect(await readdir(desk.home)).toEqual(['Rear.stopgap'])
  })
})

describe('a drive that is gone', () => {
  it('is said when a plan on it is saved, its changes are kept, and it is found again when the drive is back', async () => {
    const desk = await newDesk()
    await mkdir(join(desk.home, 'stick'))
    const file = await desk.put(join('stick', 'Rear.stopgap'))
    const { services, document, save, keep } = await opened(desk, file)
    await rename(join(desk.home, 'stick'), join(desk.home, 'elsewhere'))
    expect(await keep()).toEqual({ kind: 'kept' })
    expect(await save()).toEqual({
      kind: 'failed',
      reason: '“Rear” could not be saved: its folder has been moved, renamed or deleted, or its disk taken out.',
    })
    const start = await desk.run({ file }).handlers.start({})
    expect(start.document).toMatchObject({ token: null, text: mine, recovered: true })
    expect(start.report).toContain('not where it was')
    await rename(join(desk.home, 'elsewhere'), join(desk.home, 'stick'))
    expect(await save()).toMatchObject({ kind: 'saved' })
    expect(await services.handlers.openFile({ token: document.token! })).toMatchObject({ document: { text: mine } })
  })

  it('a file that was removed meanwhile is written anew, and that is said', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const { save } = await opened(desk, file)
    await rm(file)
    expect(await save()).toMatchObject({
      kind: 'saved',
      report: 'The file of “Rear” had gone, so it was written anew where it was.',
    })
    expect(await readFile(file, 'utf8')).toBe(mine)
  })

  it('a file with a folder in its place is not replaced, whatever is asked', async () => {
    const desk = await newDesk()
    const file = await desk.put('Rear.stopgap')
    const { services, document } = await opened(desk, file)
    await rm(file)
    await mkdir(file)
    await writeFile(join(file, 'inside'), 'x')
    for (const replace of [false, true]) {
      const { key, token, basis } = document
      const done = await services.handlers.save({ key, token: token!, text: mine, basis, replace })
      expect(done).toEqual({ kind: 'failed', reason: '“Rear” could not be saved: it is a folder.' })
    }
    expect(await readdir(file)).toEqual(['inside'])
  })
})
