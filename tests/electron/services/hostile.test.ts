import { execFile } from 'node:child_process'
import { truncate, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { promisify } from 'node:util'
import { describe, expect, it, vi } from 'vitest'
import { answer } from '../../../electron/contract/answer.ts'
import { newDesk } from '../desk.ts'
import { newFolder } from '../folder.ts'
import { planText } from '../plan.ts'

vi.setConfig({ testTimeout: 120_000 })

const root = join(import.meta.dirname, '../../..')
const module = (path: string) => JSON.stringify(pathToFileURL(join(root, path)).href)
const run = promisify(execFile)
const plan = JSON.parse(planText('A plan')) as Record<string, unknown>
const title = (text: string) => planText('A plan').replace('"title": "A plan"', `"title": ${text}`)

/** What a file says when it is opened, as it goes to the window; fails when it is more than the contract lets through. */
async function opened(content: string | Uint8Array, fileName = 'Rear.stopgap') {
  const desk = await newDesk()
  const file = await desk.put(fileName)
  await writeFile(file, content)
  const { handlers, tokenFor } = desk.run()
  const faults: unknown[] = []
  const done = await answer(handlers, 'openFile', { token: await tokenFor(file) }, fault => faults.push(fault))
  expect(faults).toEqual([])
  if (done.kind === 'refused') throw new Error(done.sentence)
  return done.value as { kind: string; reason: string; document: { name: string; text: string } }
}

describe('a file of 100 MB', () => {
  it('is refused by its size, before it is read', async () => {
    const folder = await newFolder()
    const file = join(folder, 'large.stopgap')
    await writeFile(file, '{')
    await truncate(file, 100 * 1024 * 1024)
    const script = `
      const { readText, salvageAt } = await import(${module('electron/services/plan-file.ts')})
      const before = process.resourceUsage().maxRSS
      const read = [await readText(process.argv[1]), await salvageAt(process.argv[1])]
      process.stdout.write(JSON.stringify([read, process.resourceUsage().maxRSS - before]))`
    const { stdout } = await run(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', script, file], {
      cwd: root,
    })
    const [read, grown] = JSON.parse(stdout) as [unknown, number]
    expect(read).toEqual([{ kind: 'refused', why: 'it is larger than 20 MB, which no plan is' }, null])
    // Kilobytes: a fifth of the file, for whatever else the program does meanwhile.
    expect(grown).toBeLessThan(20 * 1024)
    const said = await run(process.execPath, ['--import', 'tsx', 'electron/cli/main.ts', 'check', file], {
      cwd: root,
    }).catch((failed: { stderr: string }) => failed.stderr)
    expect(said).toBe(`${file} could not be read: it is larger than 20 MB, which no plan is.\n`)
  })
})

describe('what unfolds in memory', () => {
  it.each([
    ['ten million numbers', `'{"a":[' + '0,'.repeat(9_900_000) + '0]}'`],
    ['lists in lists to the end of the file', `'['.repeat(9_900_000) + ']'.repeat(9_900_000)`],
    ['a number of 19 million digits', `'{"version":' + '9'.repeat(19_000_000) + '}'`],
    [
      'a text of 19 million signs',
      `JSON.stringify({ format: 'stopgap-plan', version: 1, title: 'x'.repeat(19_000_000) })`,
    ],
    ['a key of 19 million signs', `JSON.stringify({ ['k'.repeat(19_000_000)]: 1 })`],
  ])('%s is refused in a few words, and in little room', async (_, made) => {
    const script = `
      const { readPlan } = await import(${module('core/plan/parse.ts')})
      const read = readPlan(${made})
      process.stdout.write(JSON.stringify([read.ok, JSON.stringify(read.problems ?? '').length]))`
    const args = ['--max-old-space-size=320', '--import', 'tsx', '--input-type=module', '-e', script]
    const { stdout } = await run(process.execPath, args, { cwd: root })
    const [ok, length] = JSON.parse(stdout) as [boolean, number]
    expect(ok).toBe(false)
    expect(length).toBeLessThan(20_000)
  })
})

describe('odd files', () => {
  it.each([
    ['a key without end', JSON.stringify({ ...plan, ['k'.repeat(1_000_000)]: 1 }), /k{57}… is an unknown key/],
    [
      'a tolerance by a path without end',
      JSON.stringify({ ...plan, tolerances: { version: 1, values: { ['x'.repeat(1e6)]: 1 } } }),
      /tolerances/,
    ],
    ['zeros', `${planText('A plan').slice(0, 400)}\0\0\0\0`, /not JSON/],
    ['a text of two bytes a sign', Buffer.from(`\ufeff${planText('A plan')}`, 'utf16le'), /not text \(UTF-8\)/],
    ['a wrong byte', Buffer.concat([Buffer.from(planText('A plan')), Buffer.from([0xc3, 0x28])]), /not text \(UTF-8\)/],
    [
      'an overlong slash',
      Buffer.concat([Buffer.from(planText('A plan')), Buffer.from([0xc0, 0xaf])]),
      /not text \(UTF-8\)/,
    ],
    ['nothing', '', /not JSON/],
  ])('%s is refused by name', async (_, content, words) => {
    const { kind, reason } = await opened(content)
    expect(kind).toBe('failed')
    expect(reason).toMatch(words)
    expect(reason.length).toBeLessThan(1000)
  })

  it('says nothing that steers a terminal or a screen', async () => {
    const { reason } = await opened('\u001b]0;mine\u0007\u001b[2J{"format"')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
    expect(reason).not.toMatch(/[\u0000-\u001f\u007f-\u009f]/)
  })

  it.each([
    ['a mark of the beginning', `\ufeff${planText('A plan')}`],
    ['half a sign in its title', title('"\\ud800 half"')],
    ['signs for screens in its title', title('"\\u001b[31m red \\u0000"')],
    ['markup in its title', title('"<img src=x onerror=alert(1)>"')],
  ])('a plan with %s opens, and is saved as it was', async (_, content) => {
    const { kind, document } = await opened(content)
    expect(kind).toBe('document')
    expect(document.text).toBe(content.replace('\ufeff', ''))
  })

  it('that is called nothing but its ending goes by that', async () => {
    expect(await opened(planText('A plan'), '.stopgap')).toMatchObject({
      kind: 'document',
      document: { name: '.stopgap' },
    })
  })
})

it('a title with signs for screens is printed without them', async () => {
  const folder = await newFolder()
  const file = join(folder, 'car.stopgap')
  await writeFile(file, title('"\\u001b]0;mine\\u0007\\u001b[2J\\u009b31m car"'))
  const { stdout } = await run(process.execPath, ['--import', 'tsx', 'electron/cli/main.ts', 'budget', file], {
    cwd: root,
  })
  expect(stdout).toContain(' car')
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  expect(stdout).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/)
})
