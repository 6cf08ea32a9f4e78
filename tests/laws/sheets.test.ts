import fc from 'fast-check'
import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import type { Plan } from '../../core/plan/schema.ts'
import type { Paper } from '../../renderer/sheets/page/paper.ts'
import { pageOf } from '../../renderer/sheets/page/paper.ts'
import { type SheetKind, type SheetRequest, usualAxle, usualPair } from '../../renderer/sheets/request.ts'
import { SheetContent, type Sides, sheetSides } from '../../renderer/sheets/Sheet.tsx'
import { overlapping, placedTexts } from '../renderer/sheets/placed.ts'
import { arbitraryPlan } from './arbitrary-plan.ts'
import { extremePlan } from './extreme.ts'

const KINDS: readonly SheetKind[] = ['customer', 'shop']
const PAPERS: readonly Paper[] = ['a4', 'letter']

/** What is wrong with a sheet to look at: text off the paper's printed part, lines over one another, text too small to read. */
function faults(request: SheetRequest, sides: Sides, kind: SheetKind): string[] {
  const { paper } = request
  const markup = renderToStaticMarkup(createElement(SheetContent, { kind, request, sides }))
  const texts = placedTexts(markup)
  const { width, height } = pageOf(paper, 0)
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
    ...(/NaN|Infinity|undefined/.test(markup) ? ['a value that is none'] : []),
  ]
}

describe('a sheet is one page with nothing cut off and nothing over anything else', () => {
  const onEverySheet = (plan: Plan): void => {
    const pair = usualPair(plan)
    const request = { plan, axle: usualAxle(plan, pair.before, pair.after), ...pair, date: '1 May 2026' }
    const sides = sheetSides({ ...request, paper: 'a4' })
    // Setups that have no axle in common are refused in words.
    if ('problem' in sides) {
      expect(sides.problem).toMatch(/has no (front|rear) axle/)
      return
    }
    for (const kind of KINDS)
      for (const paper of PAPERS) expect(faults({ ...request, paper }, sides, kind), `${kind}, ${paper}`).toEqual([])
  }

  it('whatever the plan', () => fc.assert(fc.property(arbitraryPlan(), onEverySheet), { numRuns: 20, seed: 81 }))

  it('however large or small its numbers', () => {
    let taken = 0
    fc.assert(
      fc.property(extremePlan(arbitraryPlan()), plan => {
        if (plan === null) return
        taken += 1
        onEverySheet(plan)
      }),
      { numRuns: 30, seed: 82 },
    )
    expect(taken).toBeGreaterThan(5)
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
      { numRuns: 10, seed: 83 },
    ))
})
