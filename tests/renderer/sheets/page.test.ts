import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lineWidth } from '../../../renderer/charts/text/span.ts'
import { OPEN_SANS } from '../../../renderer/sheets/font/open-sans.ts'
import { hatch } from '../../../renderer/sheets/hatch.ts'
import { broken, cut, printable, widthOf } from '../../../renderer/sheets/page/lines.ts'
import { list } from '../../../renderer/sheets/page/list.ts'
import { numberSpans } from '../../../renderer/sheets/page/number.ts'
import { advancesOf } from './font-advances.ts'

const look = { size: 12 }
const textOf = (lines: ReturnType<typeof broken>): string[] => lines.map(line => line.map(({ text }) => text).join(''))

describe('widths', () => {
  it.each([400, 600] as const)('are those of the font, weight %i', weight => {
    const { unitsPerEm, advances } = advancesOf(OPEN_SANS[weight])
    expect(unitsPerEm).toBe(2048)
    expect(advances.size).toBeGreaterThan(200)
    const letters = [...advances].filter(([letter]) => !/[\p{Cc}\ufeff\ufffd]/u.test(letter))
    expect(letters.filter(([letter, advance]) => widthOf(letter, 2048, weight) !== advance)).toEqual([])
  })

  it('leave room for letters of another font', () => {
    expect(widthOf('Ж漢', 10, 400)).toBe(20)
    expect(widthOf('🛠', 10, 400)).toBeGreaterThan(12)
  })
})

describe('a paragraph', () => {
  const words = fc.string({ unit: 'grapheme', maxLength: 300 })

  it('has no line wider than it may be, and loses no letter', () =>
    fc.assert(
      fc.property(words, fc.integer({ min: 40, max: 400 }), (text, width) => {
        const lines = broken([{ text }], look, width)
        for (const line of lines) expect(lineWidth(line, widthOf)).toBeLessThanOrEqual(width + 1e-6)
        const letters = (all: string): string => all.replace(/ /g, '')
        expect(letters(textOf(lines).join(''))).toBe(letters(printable(text)))
      }),
      { numRuns: 300, seed: 71 },
    ))

  it('breaks at blanks and hyphens, never between a number and its unit', () => {
    const breaks = (text: string, width: number): string[] => textOf(broken([{ text }], look, width))
    expect(breaks('torque and thread-locker', 115)).toEqual(['torque and thread-', 'locker'])
    expect(breaks('a stop of 1\u00a03/8\u00a0in', 70)).toEqual(['a stop of', '1\u00a03/8\u00a0in'])
  })

  it('says with dots that it was cut', () => {
    const lines = broken([{ text: 'one two three four five six seven' }], look, 60)
    const kept = cut(lines, 2, 60)
    expect(kept).toHaveLength(2)
    expect(textOf([...kept])[1]).toMatch(/…$/)
    expect(lineWidth(kept[1]!, widthOf)).toBeLessThanOrEqual(60)
    expect(cut(lines, lines.length, 60)).toBe(lines)
  })
})

describe('a list', () => {
  const options = { look, width: 300 }
  const shown = (block: ReturnType<typeof list>): number =>
    (block.height - list('Head', [], 'there', options).height) / 16.32
  const lines = ['a', 'b', 'c', 'd']

  it('leaves out whole lines that have no room, and counts the line that says so', () => {
    const whole = list('Head', lines, 'there', { ...options, gap: 0 })
    expect(shown(whole)).toBeCloseTo(4, 6)
    for (const room of [whole.height - 1, whole.height - 20, 30]) {
      const fitted = list('Head', lines, 'there', { ...options, gap: 0, room })
      expect(fitted.height).toBeLessThanOrEqual(Math.max(room, list('Head', ['x'], 'there', options).height))
    }
    expect(shown(list('Head', lines, 'there', { ...options, gap: 0, most: 3 }))).toBeCloseTo(3, 6)
  })
})

describe('a number', () => {
  const said = (text: string) =>
    numberSpans(text, { size: 20 }).map(each => [each.text, Math.round(each.size * 10) / 10])

  it.each([
    [
      '4\u00a03/8\u00a0in',
      [
        ['4', 20],
        ['3', 13.2],
        ['⁄', 18],
        ['8', 13.2],
        ['in', 13.2],
      ],
    ],
    [
      '1/16\u00a0in',
      [
        ['1', 13.2],
        ['⁄', 18],
        ['16', 13.2],
        ['in', 13.2],
      ],
    ],
    [
      'at least 17\u00a0in',
      [
        ['at least', 13.2],
        ['17', 20],
        ['in', 13.2],
      ],
    ],
    [
      'over 1,016\u00a0cm',
      [
        ['over', 13.2],
        ['1,016', 20],
        ['cm', 13.2],
      ],
    ],
    [
      '−2.5\u00a0mm',
      [
        ['−2.5', 20],
        ['mm', 13.2],
      ],
    ],
    ['nothing', [['nothing', 16]]],
  ])('%s is built of its parts', (text, parts) => expect(said(text)).toEqual(parts))
})

describe('hatching', () => {
  const area = { left: 10, right: 34, top: 20, bottom: 80 }
  const ends = (path: string) =>
    [...path.matchAll(/([ML])([-\d.]+) ([-\d.]+)/g)].map(([, , x, y]) => [Number(x), Number(y)] as const)

  it.each(['rising', 'falling'] as const)('%s, goes from edge to edge and never past it', way => {
    const points = ends(hatch(area, 7, [way]))
    expect(points.length).toBeGreaterThan(10)
    for (const [i, [x, y]] of points.entries()) {
      expect(x).toBeGreaterThanOrEqual(area.left)
      expect(x).toBeLessThanOrEqual(area.right)
      expect(y).toBeGreaterThanOrEqual(area.top - 0.01)
      expect(y).toBeLessThanOrEqual(area.bottom + 0.01)
      if (i % 2 === 1) {
        const [fromX, fromY] = points[i - 1]!
        expect((y - fromY) * (way === 'rising' ? -1 : 1)).toBeCloseTo(x - fromX, 1)
        const onEdge = (px: number, py: number): boolean =>
          [px - area.left, px - area.right, py - area.top, py - area.bottom].some(off => Math.abs(off) < 0.02)
        expect([onEdge(fromX, fromY), onEdge(x, y)]).toEqual([true, true])
      }
    }
  })

  it('of nothing is nothing', () => expect(hatch({ ...area, bottom: area.top }, 5, ['rising', 'falling'])).toBe(''))
})
