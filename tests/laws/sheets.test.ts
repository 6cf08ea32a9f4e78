import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Plan } from '../../core/plan/schema.ts'
import type { Paper } from '../../renderer/sheets/page/paper.ts'
import { pageOf } from '../../renderer/sheets/page/paper.ts'
import { type SheetKind, usualAxle, usualPair } from '../../renderer/sheets/request.ts'
import { sheetSvg } from '../../renderer/sheets/sheet-file.tsx'
import { overlapping, placedTexts } from '../renderer/sheets/placed.ts'
import { arbitraryPlan } from './arbitrary-plan.ts'
import { extremePlan } from './extreme.ts'

const KINDS: readonly SheetKind[] = ['customer', 'shop']
const PAPERS: readonly Paper[] = ['a4', 'letter']

/** What is wrong with a sheet to look at: text off the paper's printed part, lines over one another, text too small to read. */
function faults(plan: Plan, kind: SheetKind, paper: Paper): string[] {
  const pair = usualPair(plan)
  const made = sheetSvg({ plan, axle: usualAxle(plan, pair.before, pair.after), ...pair, paper, date: '1 May 2026' }, [
    kind,
  ])
  // An axle only one of the two setups has is refused in words.
  if (!made.ok) return /has no (front|rear) axle/.test(made.problem) ? [] : [made.problem]
  const { width, height } = pageOf(paper, 0)
  const texts = placedTexts(made.text)
  const edge = { side: 11.9, top: 9.9, bottom: 7.9 }
  const px = 96 / 25.4
  return [
    ...(texts.length < 30 ? [`only ${texts.length} lines`] : []),
    ...texts
      .filter(
        ({ left, right, top, bottom }) =>
          left < edge.side * px ||
          right > width - edge.side * px ||
          top < edge.top * px ||
          bottom > height - edge.bottom * px,
      )
      .map(({ text }) => `off the page: ${text}`),
    // A unit or the part of a fraction beside its number is smaller than any line.
    ...texts.filter(({ size }) => size < 10.5).map(({ text, size }) => `${size} px: ${text}`),
    ...overlapping(texts),
    ...(/NaN|Infinity|undefined/.test(made.text.replace(/base64,[^)]*/g, '')) ? ['a value that is none'] : []),
  ]
}

describe('a sheet is one page with nothing cut off and nothing over anything else', () => {
  const onEverySheet = (plan: Plan): void => {
    for (const kind of KINDS)
      for (const paper of PAPERS) expect(faults(plan, kind, paper), `${kind}, ${paper}`).toEqual([])
  }

  it('whatever the plan', () => fc.assert(fc.property(arbitraryPlan(), onEverySheet), { numRuns: 25, seed: 81 }))

  it('however large or small its numbers', () => {
    let taken = 0
    fc.assert(
      fc.property(extremePlan(arbitraryPlan()), plan => {
        if (plan === null) return
        taken += 1
        onEverySheet(plan)
      }),
      { numRuns: 40, seed: 82 },
    )
    expect(taken).toBeGreaterThan(8)
  })

  it('however long its names', () =>
    fc.assert(
      fc.property(arbitraryPlan(), fc.string({ unit: 'grapheme', minLength: 150, maxLength: 200 }), (plan, long) =>
        onEverySheet({
          ...plan,
          title: long,
          setups: plan.setups.map(setup => ({ ...setup, name: long })),
          loads: plan.loads.map(load => ({ ...load, name: long })),
        }),
      ),
      { numRuns: 15, seed: 83 },
    ))
})
