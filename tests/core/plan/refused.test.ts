import { describe, expect, it } from 'vitest'
import { parsePlan, readPlan } from '../../../core/plan/parse.ts'
import type { Problem } from '../../../core/plan/problem.ts'
import { wholePlan } from './whole-plan.ts'
import { withValue } from './with-value.ts'

const problems = (value: unknown): readonly Problem[] => {
  const read = parsePlan(value)
  return read.ok ? [] : read.problems
}

const FRONT = 'setups[0].axles[0].corner'
const REAR = 'setups[0].axles[1].corner'

describe('unknown keys', () => {
  const places = [
    '',
    'vehicle',
    'setups[0]',
    'setups[0].axles[0]',
    FRONT,
    `${FRONT}.shock`,
    `${FRONT}.shock.gas`,
    `${FRONT}.stop`,
    `${FRONT}.stop.body`,
    `${FRONT}.springs.springs[1]`,
    `${REAR}.stop.curve[1]`,
    `${REAR}.linkage.rows[0]`,
    'loads[0]',
    'loads[0].masses',
    'terrains[2]',
    'targets',
    'ranges',
    'ranges.front',
    'ranges.front.spacers',
    'runs[0]',
  ]
  it.each(places.flatMap(place => ['color', '__proto__', 'constructor', 'toString'].map(key => [key, place] as const)))(
    '%s in %s is refused by its path',
    (key, place) => {
      const text = JSON.stringify(withKey(place, 'KEY')).replace('"KEY"', JSON.stringify(key))
      const read = readPlan(text)
      expect(read.ok ? [] : read.problems).toEqual([
        {
          path: place === '' ? key : `${place}.${key}`,
          found: 'an unknown key',
          wanted: 'only the keys of the plan file',
        },
      ])
    },
  )

  /** The plan with one more key in a place. */
  function withKey(place: string, key: string): unknown {
    const path = place === '' ? key : `${place}.${key}`
    return withValue(path, { x: 1 })
  }
})

describe('what is no plan', () => {
  const refusedAt = (value: unknown): string[] => problems(value).map(({ path }) => path)
  it.each([
    ['nothing', undefined, ''],
    ['null', null, ''],
    ['a list', [], ''],
    ['a text', 'stopgap-plan', ''],
    ['a number', 3, ''],
    ['an empty object', {}, 'format'],
    ['another format', { ...wholePlan(), format: 'drawing' }, 'format'],
    ['a plan without version', { ...wholePlan(), version: undefined }, 'version'],
    ['version 0', { ...wholePlan(), version: 0 }, 'version'],
    ['version 1.5', { ...wholePlan(), version: 1.5 }, 'version'],
    ['a version as text', { ...wholePlan(), version: '1' }, 'version'],
  ])('%s is refused', (_what, value, path) => expect(refusedAt(value)).toEqual([path]))

  it('a version from the future is refused, with what to do', () => {
    expect(problems({ ...wholePlan(), version: 2 })).toEqual([
      {
        path: 'version',
        found: '2, written by a newer Stopgap',
        wanted: '1 or less: update Stopgap to open this plan',
      },
    ])
  })

  it.each([
    ['empty text', ''],
    ['half a file', JSON.stringify(wholePlan()).slice(0, 500)],
    ['two files in one', '{}{}'],
    ['a program', 'module.exports = {}'],
    ['bytes of a picture', '\u0089PNG\r\n\u001a\n'],
  ])('%s is refused as a whole', (_what, text) => {
    const read = readPlan(text)
    expect(read.ok ? [] : read.problems.map(({ path, wanted }) => ({ path, wanted }))).toEqual([
      { path: '', wanted: 'a plan saved by Stopgap' },
    ])
  })

  it('nesting without end is refused where it stands', () => {
    const deep = `${'['.repeat(20_000)}${']'.repeat(20_000)}`
    const text = JSON.stringify(withValue('title', 'DEEP')).replace('"DEEP"', deep)
    const read = readPlan(text)
    expect(read.ok ? [] : read.problems).toEqual([{ path: 'title', found: 'a list of 1', wanted: 'a text' }])
  })

  it('a number past all bounds is refused where it stands', () => {
    const text = JSON.stringify(withValue(`${FRONT}.tire.rate`, 'HUGE')).replace('"HUGE"', '1e999')
    const read = readPlan(text)
    expect(read.ok ? [] : read.problems.map(({ path }) => path)).toEqual([`${FRONT}.tire.rate`])
  })
})
