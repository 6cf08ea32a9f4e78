import { expect, test } from 'vitest'
import { INCH } from '../../../core/units/constants.ts'
import { fieldTable, generic } from '../../../renderer/fields/field-table.ts'
import { refusalOf, unreadable, wantedAt } from '../../../renderer/fields/refusals.ts'
import { put } from '../../../renderer/state/edit.ts'
import { placeOf } from '../../../renderer/state/selectors.ts'
import { aStore } from '../some-files.ts'

/** What the field says when a value is put there that the plan does not take. */
function said(field: string, value: number, units: 'inch' | 'metric' = 'inch'): string {
  const store = aStore()
  const problems = put(store, 'try', field, value)
  if (problems.length === 0) throw new Error(`The plan took ${value} for ${field}.`)
  const place = placeOf(store.read(), field)
  const { wrong, right } = refusalOf(place, fieldTable[generic(field)]!, 'typed', problems, units)
  return `${wrong} ${right}`
}

test.each([
  [
    'corner.shock.showing',
    17 * INCH,
    'More than 14 in of stroke. Tape only the bright shaft, from the body to what it meets.',
  ],
  ['corner.stop.gap', -4 * INCH, 'Pushed in further than the stop goes. No less than −3 in.'],
  ['corner.cornerMass', 0, 'Too small. It takes more than 0 lb.'],
  ['corner.shock.stroke', -1, 'Too small. It takes more than 0 in.'],
  ['corner.shock.showing', -1, 'Too small. It takes 0 in or more.'],
  ['corner.stop.gap', 1e3, 'Too large. It takes 787 3/8 in or less.'],
  ['corner.stop.charge', 1e12, 'Too large. It takes 29,008 psi or less.'],
  [
    'corner.shock.stroke',
    6 * INCH,
    'It does not go with the shaft showing. Shaft showing would have to be no more than the stroke, 6 in.',
  ],
  [
    'corner.springs.springs.1.solidLength',
    40 * INCH,
    /^That cannot be\. Right would be less than the free length, .* in\.$/,
  ],
  [
    'corner.stop.gasVolume',
    1e-6,
    /^That cannot be\. Right would be more than what the shaft pushes aside over its stroke, 4\.45 cu in\.$/,
  ],
])('%s at %f says what is wrong and what would be right, in the units on screen', (field, value, sentence) => {
  expect(said(field, value)).toMatch(sentence)
})

test('the same in metric units', () => {
  expect(said('corner.shock.showing', 17 * INCH, 'metric')).toContain('More than 355.6 mm of stroke.')
})

test('a row of a table that does not rise is told in the units on screen', () => {
  const path = 'setups[0].axles[0].corner.linkage.rows[3].shock'
  const bound = { side: 'above', limit: 2 * INCH, of: 'the one before it' } as const
  const problem = { path, found: '0.04', wanted: 'more than the one before it, 0.0508', bound }
  expect(wantedAt(problem, 'inch')).toBe('more than the one before it, 2 in')
  expect(wantedAt(problem, 'metric')).toBe('more than the one before it, 50.8 mm')
  expect(wantedAt({ ...problem, path: 'setups[0].axles' }, 'inch')).toBe(problem.wanted)
})

test('an entry that is no measure is split into what is wrong and what would be right', () => {
  expect(unreadable('abc', 'Not a number. Enter 2 7/8, 2.875 or 73 mm.')).toEqual({
    text: 'abc',
    wrong: 'Not a number.',
    right: 'Enter 2 7/8, 2.875 or 73 mm.',
  })
})
