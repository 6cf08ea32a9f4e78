import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { paragraph, underlined, WIDTH } from '../../../electron/cli/paragraph.ts'
import { table } from '../../../electron/cli/table.ts'

describe('a paragraph', () => {
  it('loses no letter and stays within the width, whatever the text', () =>
    fc.assert(
      fc.property(
        fc.array(fc.string({ unit: 'grapheme', maxLength: 200 }), { maxLength: 30 }),
        fc.nat(10),
        (words, indent) => {
          const text = words.join(' ')
          const set = paragraph(text, ' '.repeat(indent), ' '.repeat(indent + 2))
          const bare = (some: string) => some.replace(/[\s\p{C}]/gu, '')
          expect(bare(set)).toBe(bare(text))
          expect(set.split('\n').filter(line => [...line].length > WIDTH)).toEqual([])
          expect(set.endsWith('\n')).toBe(true)
        },
      ),
      { seed: 7 },
    ))

  it('keeps a number with its fraction and its unit', () =>
    expect(paragraph(`${'x'.repeat(70)} at 11 15/16 in, or so`)).toBe(`${'x'.repeat(70)} at\n11 15/16 in, or so\n`))
})

it('a heading has a line of its own length', () => expect(underlined('Proposed', '═')).toBe('Proposed\n════════\n'))

it('a table sets its first column left and the others right', () =>
  expect(
    table([
      ['', 'one', 'three'],
      ['lengths', '1 in', '2 in'],
    ]),
  ).toBe('            one  three\n  lengths  1 in   2 in\n'))

it('a table too wide for a terminal is set row by row', () =>
  expect(
    table([
      ['Force', 'springs', 'stop'],
      ['at rest', '1'.repeat(40), '2'.repeat(40)],
    ]),
  ).toBe(`  Force, at rest: springs ${'1'.repeat(40)}; stop\n    ${'2'.repeat(40)}\n`))
