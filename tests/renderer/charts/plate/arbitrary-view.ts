import fc from 'fast-check'
import { axleBudget } from '../../../../core/budget/budget.ts'
import type { Finding } from '../../../../core/budget/results.ts'
import { cornerModel } from '../../../../core/corner/corner.ts'
import type { Corner } from '../../../../core/plan/schema.ts'
import type { System } from '../../../../core/units/quantity.ts'
import type { DemandSpan, DemandsView } from '../../../../renderer/charts/plate/demands.ts'
import type { PlateView } from '../../../../renderer/charts/plate/scene.ts'
import type { MeasureText } from '../../../../renderer/charts/text/span.ts'
import { arbitraryCorner } from '../../../laws/arbitrary-corner.ts'
import { between } from '../../../laws/arbitrary-linkage.ts'
import { sampleAxle } from '../sample-axles.ts'

const position = between(-0.4, 0.4)
const word = fc.string({ minLength: 1, maxLength: 14 })

const load: fc.Arbitrary<Omit<DemandSpan, 'id'>> = fc.record({
  label: word,
  short: word,
  tight: word,
  from: between(-0.02, 0.02),
  to: fc.option(position, { freq: 8 }),
  outcome: fc.constantFrom('settles' as const, 'rolls over' as const, 'needs two axles' as const),
  counted: fc.boolean(),
  assumed: fc.boolean(),
})

const demands: fc.Arbitrary<DemandsView> = fc
  .record({
    spans: fc.array(load, { maxLength: 9 }),
    together: fc.option(load),
    balance: fc.option(fc.record({ beforeStop: fc.option(position), beforeBump: position })),
    otherBalance: fc.option(fc.record({ beforeStop: fc.option(position), beforeBump: position })),
  })
  .map(({ spans, together, ...rest }) => ({
    spans: spans.map((span, index) => ({ id: `load-${index}`, ...span })),
    together: together === null ? null : { id: 'together', ...together },
    ...rest,
  }))

export const arbitraryFindings: fc.Arbitrary<Finding[]> = fc
  .array(
    fc.record({
      severity: fc.constantFrom('danger' as const, 'caution' as const, 'note' as const),
      where: fc.constantFrom(
        'drawing' as const,
        'budget' as const,
        'shock' as const,
        'main' as const,
        'stop' as const,
        'forces' as const,
      ),
      at: position,
    }),
    { maxLength: 12 },
  )
  .map(list =>
    list.map((finding, index) => ({
      ...finding,
      id: `finding-${index}`,
      message: 'Something is worth saying.',
      remedy: 'Measure again.',
      field: 'corner.stop.gap',
      values: {},
    })),
  )

/** What the plate is given of one corner. */
export function compiledCorner(corner: Corner, system: System) {
  const model = cornerModel(corner)
  return { model, budget: axleBudget({ ...sampleAxle, corner }, { units: system }, model) }
}

/** Any corner that a plan may hold, alone or beside another, with and without loads, in either system. */
export const arbitraryView: fc.Arbitrary<PlateView> = fc
  .record({
    corner: arbitraryCorner(),
    other: fc.option(fc.record({ name: fc.string({ maxLength: 40 }), corner: arbitraryCorner() })),
    demands: fc.option(demands),
    system: fc.constantFrom('inch' as const, 'metric' as const),
  })
  .map(({ corner, other, demands, system }) => ({
    ...compiledCorner(corner, system),
    other: other === null ? null : { name: other.name, ...compiledCorner(other.corner, system) },
    demands,
    system,
  }))

/** A font: so much of its size to every letter, wider when bold. */
export const evenFont =
  (share: number): MeasureText =>
  (text, size, weight) =>
    text.length * size * share * (weight === 600 ? 1.08 : 1)

/** From narrow to wider than any interface font. */
export const arbitraryFont: fc.Arbitrary<MeasureText> = between(0.42, 0.78).map(evenFont)

/** Window sizes from the smallest supported plate to a wall. */
export const arbitrarySize = fc.record({
  width: fc.integer({ min: 804, max: 3600 }),
  height: fc.integer({ min: 420, max: 2000 }),
})
