import { expect, test } from 'vitest'
import { INCH } from '../../../../core/units/constants.ts'
import { lengthSpans, onTape, spokenLength, spokenPosition } from '../../../../renderer/charts/text/length-spans.ts'
import { lineAscent, shortened } from '../../../../renderer/charts/text/span.ts'

const texts = (inches: number, size: number, options = {}): string[] =>
  lengthSpans(inches * INCH, 'inch', { size }, options).map(({ text }) => text)

test.each([
  [3.5, 24, ['3', '1', '⁄', '2']],
  [0.4375, 24, ['7', '⁄', '16']],
  [-0.4375, 24, ['−', '7', '⁄', '16']],
  [6, 24, ['6']],
  [0, 18, ['0']],
  [-0.01, 18, ['0']],
  [7.6875, 14.9, ['7 11/16']],
  [3.0625, 13, ['3 1/16']],
])('%f in at %f px reads as %j', (inches, size, wanted) => {
  expect(texts(inches, size)).toEqual(wanted)
})

test('a sign is shown where it is asked for, never on nothing', () => {
  expect(texts(6.5, 11, { sign: true, unit: true })).toEqual(['+6 1/2', 'in'])
  expect(texts(0.5, 20, { sign: true })).toEqual(['+', '1', '⁄', '2'])
  expect(texts(0.01, 20, { sign: true })).toEqual(['0'])
})

test('the numerator is raised and smaller, the denominator back on the line', () => {
  const [whole, over, , under] = lengthSpans(3.5 * INCH, 'inch', { size: 20 })
  expect([whole?.rise, over?.rise, under?.rise]).toEqual([0, 6, 0])
  expect(over?.size).toBeCloseTo(14, 9)
  expect(lineAscent([over!])).toBeGreaterThan(lineAscent([whole!]))
})

test('millimetres are whole, with their unit smaller', () => {
  const spans = lengthSpans(0.1505, 'metric', { size: 24 }, { unit: true })
  expect(spans.map(({ text }) => text)).toEqual(['151', 'mm'])
  expect(spans[1]!.size).toBeLessThan(spans[0]!.size)
})

test('positions go to the nearest mark of the tape, and nothing is never negative', () => {
  expect(onTape(3.4992 * INCH, 'inch')).toBeCloseTo(3.5 * INCH, 12)
  expect(onTape(0.23949, 'metric')).toBeCloseTo(0.239, 12)
  expect(Object.is(onTape(-1e-5, 'inch'), 0)).toBe(true)
})

test('what is spoken has words for sign and place', () => {
  expect(spokenLength(-0.4375 * INCH, 'inch')).toBe('minus 7/16 inches')
  expect(spokenPosition(6.5 * INCH, 'inch')).toBe('6 1/2 inches above ride height')
  expect(spokenPosition(-0.151, 'metric')).toBe('151 millimetres below ride height')
  expect(spokenPosition(0.0004, 'metric')).toBe('at ride height')
})

test('a name that does not fit is cut and says so', () => {
  const measure = (text: string) => text.length * 10
  expect(shortened('Proposed', { size: 10 }, 80, measure)).toBe('Proposed')
  expect(shortened('Proposed', { size: 10 }, 60, measure)).toBe('Propo…')
  expect(shortened('Proposed', { size: 10 }, 20, measure)).toBeNull()
})
