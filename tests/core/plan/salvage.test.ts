import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { formatPlan } from '../../../core/plan/file-text.ts'
import { readPlan } from '../../../core/plan/parse.ts'
import { type Salvaged, salvage } from '../../../core/plan/salvage.ts'
import { salvageWords } from '../../../core/plan/salvage-words.ts'
import { wholePlan } from './whole-plan.ts'

const plan = wholePlan()
const text = formatPlan(plan)

/** What is read of the text; fails where that is nothing. */
function read(damaged: string): Salvaged {
  const found = salvage(damaged)
  if (found === null) throw new Error('Nothing was read.')
  expect(readPlan(formatPlan(found.plan))).toEqual({ ok: true, plan: found.plan })
  return found
}

const said = (found: Salvaged) => salvageWords(found).join(' ')

describe('a damaged plan', () => {
  it('that lost its last bracket is whole', () => {
    const found = read(text.slice(0, text.lastIndexOf('}')))
    expect(found.plan).toEqual(plan)
    expect(said(found)).toBe('As far as can be told, nothing was lost.')
  })

  it('that lost one value has another in its place, marked as assumed, and all else as it was', () => {
    const found = read(text.replace(/"cornerMass": [\d.]+/, '"cornerMass": 4~0'))
    const [axle] = found.plan.setups[0]!.axles
    expect(axle!.assumed).toContain('corner.cornerMass')
    expect(said(found)).toMatch(
      /^Other values stand in for what was lost, .* assumed: corner weight \(“.*”, front\)\.$/,
    )
    const mended = structuredClone(found.plan)
    mended.setups[0]!.axles[0]!.corner.cornerMass = plan.setups[0]!.axles[0]!.corner.cornerMass
    mended.setups[0]!.axles[0]!.assumed = plan.setups[0]!.axles[0]!.assumed
    expect(mended).toEqual(plan)
  })

  it('marks a list that was cut short, though what is left of it could be one', () => {
    const cut = text.slice(0, text.indexOf('"rebound"'))
    const found = read(cut.slice(0, cut.lastIndexOf('{')))
    expect(said(found)).toMatch(/something of the compression curve|the compression curve/)
  })

  it('takes what is lost of one setup from the same end of the car in another', () => {
    const [first] = plan.setups
    const two = formatPlan({ ...plan, setups: [first!, { ...first!, id: 'second', name: 'Second' }] })
    const at = two.lastIndexOf('"stroke"')
    const found = read(`${two.slice(0, at)}${two.slice(at).replace(/"stroke": [\d.]+/, '"stroke": ?')}`)
    expect(found.plan.setups[1]!.axles.map(axle => axle.corner)).toEqual(first!.axles.map(axle => axle.corner))
  })

  it.each([
    ['a lost opening bracket', text.replace('"shock": {', '"shock": '), /the shock/],
    [
      'a lost closing bracket',
      text.replace(/\n {12}\},\n {12}"springs"/, '\n            ~,\n            "springs"'),
      /nothing was lost/,
    ],
    ['a lost line end', text.replace('\n', '\v'), /nothing was lost/],
    [
      'zeros where a block of the disk was lost',
      `${text.slice(0, 700)}${'\0'.repeat(512)}${text.slice(1212)}`,
      /stand in/,
    ],
    ['a title that is none', text.replace(/"title": "[^"]*"/, '"title": 5'), /title/],
    ['a load that is none', text.replace('"kind": "payload"', '"kind": "no such"'), /a load/],
    [
      'two setups of one name',
      text.replace(/"setups": \[/, `"setups": [${JSON.stringify(plan.setups[0])},`).slice(0, -3),
      /./,
    ],
  ])('with %s is read, and what was lost is said', (_, damaged, words) => expect(said(read(damaged))).toMatch(words))

  it('whose values contradict each other loses the part they are in', () => {
    const wrong = structuredClone(plan)
    wrong.setups[0]!.axles[0]!.corner.shock.showing = 19
    expect(said(read(formatPlan(wrong)))).toMatch(/the shock \(“/)
  })

  it.each([
    ['nothing', ''],
    ['a plan nothing is wrong with', text],
    ['the beginning of one', text.slice(0, 60)],
    ['a plan of a newer version', text.replace('"version": 1', '"version": 2')],
    ['other JSON', '{"setups": [{"name": "window"}], "a": [1, 2, 3]}'],
    ['a list', '[1, 2, 3]'],
    ['a picture', '\u0089PNG\r\n\u001a\n{"'],
    ['brackets without end', '{"setups":'.repeat(50_000)],
    ['lists without end', `{"setups": ${'[\n'.repeat(100_000)}`],
    ['keys that reach behind', '{"setups": [{"__proto__": {"x": 1}, "constructor": {"x": 1}}]}'],
  ])('%s gives nothing', (_, other) => expect(salvage(other)).toBeNull())

  it('does not take long over a file of megabytes', () => {
    const flood = `${text.slice(0, 3000)}${'"x": 1, '.repeat(500_000)}`
    expect(salvage(flood)).not.toBeNull()
    expect(salvage(`{"setups": "${'a\\u0041'.repeat(1_000_000)}`)).toBeNull()
    expect(salvage(`{"setups": [${'9'.repeat(5_000_000)}]}`)).toBeNull()
  })
})

it('every demo plan, cut in its last line, is read whole', () => {
  for (const name of ['before-and-after', 'new-chassis', 'on-its-stops']) {
    const demo = readFileSync(join(import.meta.dirname, '../../../seeds', `${name}.stopgap`), 'utf8')
    const whole = readPlan(demo)
    expect(read(demo.trimEnd().slice(0, -1)).plan).toEqual(whole.ok && whole.plan)
  }
})
