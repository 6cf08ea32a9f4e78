import { readdir, readFile, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { faultLine, logIn } from '../../../electron/services/log.ts'
import { newFolder } from '../folder.ts'

describe('the log', () => {
  it('has a line for each thing, in order, each with its time', async () => {
    const folder = await newFolder()
    const log = logIn(join(folder, 'data'))
    await Promise.all(['one', 'two', 'three'].map(log.write))
    const lines = (await readFile(log.path, 'utf8')).trim().split('\n')
    expect(lines.map(line => line.replace(/^\d{4}-\d\d-\d\dT[\d:.]+Z /, ''))).toEqual(['one', 'two', 'three'])
  })

  it('stays small: the old one is kept beside a new one', async () => {
    const folder = await newFolder()
    const log = logIn(folder)
    for (let i = 0; i < 8; i++) await log.write('x'.repeat(80_000))
    expect((await readdir(folder)).sort()).toEqual(['log.old.txt', 'log.txt'])
    expect((await stat(log.path)).size).toBeLessThan(400_000)
  })

  it('does not end the program where it cannot be written', async () => {
    const folder = await newFolder()
    const inTheWay = logIn(folder)
    await inTheWay.write('a file now stands where a folder would')
    await expect(logIn(join(folder, 'log.txt')).write('lost')).resolves.toBeUndefined()
  })

  it('leaves out what a message quotes, and the folders a line of the program was in', () => {
    let torn: unknown
    try {
      JSON.parse('{"title": Hackberry}')
    } catch (error) {
      torn = error
    }
    const line = faultLine(torn)
    expect(line).toMatch(/^SyntaxError: /)
    expect(line).not.toContain('Hackberry')
    expect(line).toContain('log.test.ts')
    expect(line).not.toContain('/')
  })

  it('names a refusal of the system by its code, without the path', async () => {
    const error = await readFile('/nowhere/plan.stopgap').catch((refused: unknown) => refused)
    expect(faultLine(error)).toMatch(/^Error: the system says ENOENT/)
    expect(faultLine(error)).not.toContain('plan.stopgap')
  })
})
