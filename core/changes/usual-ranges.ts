import type { ChosenRanges, Corner, UnitSystem } from '../plan/schema.ts'
import { INCH, PSI } from '../units/constants.ts'
import { STEPS } from '../units/steps.ts'
import { MOST_VALUES, type Ranges, rangesOf, series, valuesOf } from './ranges.ts'
import { type Kept, type Shelf, tubeOf } from './shelf.ts'
import { isHydraulic, USUAL_CHARGE } from './stop-in-corner.ts'

/** Stroke a spacer leaves a stop at least: common practice. */
const STROKE_LEFT = INCH

/** Charges looked at, lowest and highest: stops are charged near 200 psi, more for hard landings; in bar as much, whole. Common practice. */
export const CHARGES = {
  inch: { least: 100 * PSI, most: 300 * PSI },
  metric: { least: 7e5, most: 21e5 },
} as const

/** A whole number of steps, no less than one, that does not go beyond. */
const within = (value: number, step: number): number => Math.floor(value / step + 1e-9) * step

/**
 * What is usual for a corner, in the steps of its own units: spacers that leave an inch of stroke where there is tube for them, and charges
 * from 100 to 300 psi. Preload where the car rides on its stop. No oil, shims, stops or springs: those are the user's own.
 */
export function usualChosen(corner: Corner, shelf: Shelf, units: UnitSystem): ChosenRanges {
  const nothing: ChosenRanges = {
    spacers: null,
    charges: null,
    oils: null,
    shims: null,
    stops: [],
    springs: [],
    preload: false,
  }
  if (!isHydraulic(corner)) return nothing
  const { stroke, body, charge, gap } = corner.stop
  const { spacer, charge: by } = STEPS[units]
  const longest = within(stroke - STROKE_LEFT, spacer)
  const { least, most } = CHARGES[units]
  const highest = within(Math.min(USUAL_CHARGE, body?.ratedPressure ?? Infinity, Math.max(most, charge)), by)
  return {
    ...nothing,
    spacers: longest < spacer || tubeOf(corner, shelf) === null ? null : { from: spacer, to: longest, step: spacer },
    charges: highest < least ? null : { from: least, to: highest, step: by },
    preload: gap <= 0,
  }
}

/** As `usualChosen`, as the ranges they come to. */
export const usualRanges = (corner: Corner, shelf: Shelf, units: UnitSystem): Ranges =>
  rangesOf(corner, usualChosen(corner, shelf, units), shelf)

/** Steps of oil taken out that are looked at: no more than a cubic inch or 20 cm³. Common practice. */
const OIL_STEPS = 4

/** Coarser in spacers and charges, wider by oil: where the usual ranges reach no target, more gas with more charge may. */
export function widerRanges(corner: Corner, shelf: Shelf, units: UnitSystem): Ranges {
  const usual = usualRanges(corner, shelf, units)
  const everyOther = (values: readonly number[]): number[] => values.filter((_, i) => i % 2 === 1)
  const { oil } = STEPS[units]
  return {
    ...usual,
    spacers: everyOther(usual.spacers),
    charges: everyOther(usual.charges),
    oils: isHydraulic(corner) ? series(oil, OIL_STEPS * oil, oil) : [],
  }
}

/** Combinations begun with where parts of somebody’s own are on the shelf: as many as are worked out while one looks. */
const BEGUN_WITH = 2000

/**
 * What to begin with for a corner where nobody has chosen: what is usual, and the stops and main springs of the user’s own shelf, if any. Then
 * spacers and charges go by larger steps, whole numbers of the usual ones, so that all of it can be looked at.
 */
export function firstChosen(corner: Corner, shelf: Shelf, units: UnitSystem): ChosenRanges {
  const usual = usualChosen(corner, shelf, units)
  const own = (kept: readonly Kept<unknown>[]): string[] => kept.flatMap(({ id, generic }) => (generic ? [] : [id]))
  const stops = corner.stop === null ? [] : own(shelf.stops)
  const springs = own(shelf.springs)
  const parts = (1 + stops.length) * (1 + springs.length) * (usual.preload ? 2 : 1)
  const coarser = (times: number): ChosenRanges => ({
    ...usual,
    spacers: usual.spacers && { ...usual.spacers, from: times * usual.spacers.step, step: times * usual.spacers.step },
    charges: usual.charges && { ...usual.charges, step: times * usual.charges.step },
    stops,
    springs,
  })
  let chosen = coarser(1)
  for (let times = 2; times < MOST_VALUES; times += 1) {
    const { spacers, charges } = chosen
    if (parts * (1 + valuesOf(spacers).length) * (1 + valuesOf(charges).length) <= BEGUN_WITH) break
    if (spacers !== null && times * usual.spacers!.step > spacers.to) break
    chosen = coarser(times)
  }
  return chosen
}
