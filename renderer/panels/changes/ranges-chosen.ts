import { type Ranges, series, usualRanges } from '../../../core/changes/ranges.ts'
import { type Shelf, tubesOf } from '../../../core/changes/shelf.ts'
import type { Corner, UnitSystem } from '../../../core/plan/schema.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'

/** A range as a person sets it. SI. */
export interface Span {
  readonly from: number
  readonly to: number
  readonly step: number
}

/** What may be changed, as it was chosen on the page. */
export interface Chosen {
  /** Null: left as it is. */
  readonly spacers: Span | null
  readonly charges: Span | null
  readonly shims: Span | null
  readonly oils: Span | null
  /** Ids of the shelf. */
  readonly stops: readonly string[]
  readonly springs: readonly string[]
  readonly preload: boolean
}

const OIL_STEP = 0.25 * INCH ** 3

/** Steps the shop works in: spacers by the eighth, charges by ten psi; in metric by 2 mm and half a bar. Common practice. */
export const STEPS = {
  inch: { spacer: INCH / 8, charge: 10 * PSI, shim: INCH / 8, oil: OIL_STEP },
  metric: { spacer: 2e-3, charge: 0.5e5, shim: 2e-3, oil: 5e-6 },
} as const

const whole = (value: number, step: number): number => Math.round(value / step) * step

/** What is usual for a corner, to begin with. */
export function firstChosen(corner: Corner, shelf: Shelf, units: UnitSystem): Chosen {
  const usual = usualRanges(corner, tubesOf(shelf))
  const steps = STEPS[units]
  const span = (values: readonly number[], step: number): Span | null =>
    values.length === 0 ? null : { from: whole(values[0]!, step), to: whole(values.at(-1)!, step), step }
  return {
    spacers: span(usual.spacers, steps.spacer),
    charges: span(usual.charges, steps.charge),
    shims: null,
    oils: null,
    stops: [],
    springs: [],
    preload: usual.preload,
  }
}

/** Values of one range beyond this many are not looked at: its step is too fine. */
export const MOST_VALUES = 200

const valuesOf = (span: Span | null): number[] =>
  span === null ? [] : series(span.from, Math.min(span.to, span.from + span.step * (MOST_VALUES - 1)), span.step)

export function rangesOf(corner: Corner, chosen: Chosen, shelf: Shelf): Ranges {
  const on = <Part>(kept: readonly { readonly id: string; readonly part: Part }[], ids: readonly string[]): Part[] =>
    kept.filter(({ id }) => ids.includes(id)).map(({ part }) => part)
  return {
    spacers: valuesOf(chosen.spacers).filter(length => length > 0),
    tube: usualRanges(corner, tubesOf(shelf)).tube,
    charges: valuesOf(chosen.charges),
    oils: valuesOf(chosen.oils).filter(out => out !== 0),
    shims: valuesOf(chosen.shims).filter(thickness => thickness !== 0),
    stops: on(shelf.stops, chosen.stops),
    springs: on(shelf.springs, chosen.springs),
    preload: chosen.preload,
  }
}
