import { mkdir, writeFile } from 'node:fs/promises'
import path from 'node:path'
import { describe, expect, it } from 'vitest'
import { formatPlan } from '../../../core/plan/file-text.ts'
import { planJsonSchema } from '../../../core/plan/json-schema.ts'
import { budgetJson } from '../../../electron/cli/budget-json.ts'
import { budgetText } from '../../../electron/cli/budget-text.ts'
import { newFolder } from '../folder.ts'
import { plainAxle, plainPlan, plainSetups, withCorner } from './plain-plan.ts'
import { ran } from './terminal.ts'

async function folderWith(files: Record<string, string | Uint8Array>): Promise<string> {
  const folder = await newFolder()
  for (const [name, text] of Object.entries(files)) await writeFile(path.join(folder, name), text)
  return folder
}

describe('check', () => {
  it('says what a plan holds when it can be used', async () => {
    const folder = await folderWith({ 'car.stopgap': formatPlan(plainSetups(plainAxle, plainAxle)) })
    expect(await ran(folder, 'check', 'car.stopgap')).toEqual({
      code: 0,
      out: 'car.stopgap is fine: 2 setups, 0 loads, 0 terrains.\n  “First” (front)\n  “Second” (front)\n',
      err: '',
    })
  })

  it('names every bad value by its path, what was found and what would be right', async () => {
    const bad = withCorner({ shock: { ...plainAxle.corner.shock, stroke: 0.1, showing: 0.2 }, cornerMass: 40 })
    const folder = await folderWith({ 'car.stopgap': formatPlan(plainSetups(plainAxle, bad)) })
    expect(await ran(folder, 'check', 'car.stopgap')).toEqual({
      code: 2,
      out: '',
      err: [
        'car.stopgap cannot be used: 2 values are not right.',
        '',
        'setups[1].axles[0].corner.unsprungMass',
        '  found:  45.3592 kg',
        '  wanted: less than what the tire carries, 40 kg',
        '',
        'setups[1].axles[0].corner.shock.showing',
        '  found:  0.2 m',
        '  wanted: no more than the stroke, 0.1 m',
        '',
      ].join('\n'),
    })
  })

  it('names an unknown key by its path', async () => {
    const odd = { ...plainPlan, setups: [{ ...plainPlan.setups[0], colour: 'red' }] }
    const folder = await folderWith({ 'car.stopgap': JSON.stringify(odd) })
    const { code, out, err } = await ran(folder, 'check', 'car.stopgap')
    expect([code, out]).toEqual([2, ''])
    expect(err).toContain('\nsetups[0].colour\n  found:  an unknown key\n')
  })
})

describe('budget', () => {
  it('prints the text for people', async () => {
    const folder = await folderWith({ 'car.stopgap': formatPlan(plainPlan) })
    expect(await ran(folder, 'budget', 'car.stopgap')).toEqual({ code: 0, out: budgetText(plainPlan), err: '' })
  })

  it.each([
    ['--json', 'car.stopgap'],
    ['car.stopgap', '--json'],
  ])('prints JSON for programs: %s %s', async (...args) => {
    const folder = await folderWith({ 'car.stopgap': formatPlan(plainPlan) })
    const { code, out, err } = await ran(folder, 'budget', ...args)
    expect([code, err]).toEqual([0, ''])
    expect(JSON.parse(out)).toEqual(budgetJson(plainPlan))
  })

  it('takes a path from anywhere', async () => {
    const folder = await folderWith({ 'car.stopgap': formatPlan(plainPlan) })
    const { code, out } = await ran('/', 'budget', path.join(folder, 'car.stopgap'))
    expect([code, out]).toEqual([0, budgetText(plainPlan)])
  })
})

describe('schema', () => {
  it('prints the JSON Schema of the plan file', async () => {
    const { code, out, err } = await ran('/', 'schema')
    expect([code, err]).toEqual([0, ''])
    expect(JSON.parse(out)).toEqual(planJsonSchema())
  })
})

describe('a plan that cannot be opened', () => {
  const cases: readonly [string, string | Uint8Array, RegExp][] = [
    [
      'is not JSON',
      '{"format": ',
      /the file as a whole\n {2}found: {2}text that is not JSON: it breaks off\n {2}wanted: a plan/,
    ],
    ['is empty', '', /text that is not JSON/],
    ['is other JSON', '[1, 2]', /the file as a whole\n {2}found: {2}a list of 2\n/],
    ['is from a newer Stopgap', JSON.stringify({ ...plainPlan, version: 9 }), /\nversion\n {2}found: {2}9, written by/],
    ['is not text', Uint8Array.of(0xff, 0xfe, 0x00), /^car\.stopgap could not be read: it is not text/],
  ]
  it.each(cases)('%s', async (_, content, complaint) => {
    const folder = await folderWith({ 'car.stopgap': content })
    for (const args of [['check'], ['budget'], ['budget', '--json']]) {
      const { code, out, err } = await ran(folder, ...args, 'car.stopgap')
      expect([code, out]).toEqual([2, ''])
      expect(err).toMatch(/^car\.stopgap c/)
      expect(err).toMatch(complaint)
    }
  })

  it('is not there', async () =>
    expect(await ran(await newFolder(), 'budget', 'gone.stopgap')).toEqual({
      code: 2,
      out: '',
      err: 'gone.stopgap could not be read: there is no such file.\n',
    }))

  it('is a folder', async () => {
    const folder = await newFolder()
    await mkdir(path.join(folder, 'plans'))
    expect(await ran(folder, 'check', 'plans')).toEqual({
      code: 2,
      out: '',
      err: 'plans could not be read: it is a folder.\n',
    })
  })
})

describe('a wrong command line', () => {
  const help = 'Run “stopgap --help” to see what there is.\n'
  it.each([
    [['budget'], "Missing required argument 'plan'.\n"],
    [['budget', 'a', 'b'], "Too many arguments for 'budget'. Expected 1 argument but got 2.\n"],
    [['schema', 'a'], "Too many arguments for 'schema'. Expected 0 arguments but got 1.\n"],
    [['budget', '--jsn', 'a'], "Unknown option '--jsn'. Did you mean --json?\n"],
    [['budgt', 'a'], "Unknown command 'budgt'. Did you mean budget?\n"],
  ])('%j is refused', async (args, complaint) =>
    expect(await ran('/', ...args)).toEqual({ code: 2, out: '', err: complaint + help }),
  )

  it('with nothing in it gets the help, on the error output', async () => {
    const { code, out, err } = await ran('/')
    expect([code, out]).toEqual([2, ''])
    expect(err).toBe((await ran('/', '--help')).out)
  })
})

describe('help', () => {
  it.each([['--help'], ['-h'], ['help']])('is given by %s, within 80 columns', async argument => {
    const { code, out, err } = await ran('/', argument)
    expect([code, err]).toEqual([0, ''])
    for (const command of ['check', 'budget', 'schema']) expect(out).toMatch(new RegExp(`^  ${command} `, 'm'))
    expect(out.split('\n').filter(line => line.length > 80)).toEqual([])
  })

  it('of one command names its options', async () => {
    const { code, out } = await ran('/', 'help', 'budget')
    expect([code, out]).toEqual([0, expect.stringContaining('--json')])
  })
})
