import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { acceptedPlan, formatPlan } from '../../../core/plan/file-text.ts'
import { readPlan } from '../../../core/plan/parse.ts'

const seeds = join(import.meta.dirname, '../../../seeds')
const text = (name: string): string => readFileSync(join(seeds, name), 'utf8')

describe('a text that was accepted', () => {
  test.each(['new-chassis.stopgap', 'on-its-stops.stopgap', 'before-and-after.stopgap'])(
    'gives the plan that looking at it gives: %s',
    name => {
      const read = readPlan(text(name))
      expect(read).toEqual({ ok: true, plan: acceptedPlan(text(name)) })
      expect(acceptedPlan(formatPlan(acceptedPlan(text(name))))).toEqual(acceptedPlan(text(name)))
    },
  )

  test('with the mark some editors put in front is read all the same', () => {
    const own = text('before-and-after.stopgap')
    expect(acceptedPlan(`\uFEFF${own}`)).toEqual(acceptedPlan(own))
  })

  test.each([
    ['nothing', 'text that is not JSON'],
    ['{"format":"stopgap-plan","version":99}', '99, written by a newer Stopgap'],
    ['[]', 'a plan: a JSON object'],
  ])('that never was is not taken for a plan: %s', (wrong, said) => {
    expect(() => acceptedPlan(wrong)).toThrow(said)
  })
})
