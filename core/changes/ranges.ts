import { cornerModel } from '../corner/corner.ts'
import type { ChosenRanges, Corner, Span, UnitSystem } from '../plan/schema.ts'
import type { TubeSize } from '../spacer/tube.ts'
import { INCH, PSI } from '../units/constants.ts'
import { STEPS } from '../units/steps.ts'
import type { Change, Spring } from './change.ts'
import { carried } from './ride-height.ts'
import { type Kept, type Shelf, tubeOf } from './shelf.ts'
import { isHydraulic, USUAL_CHARGE } from './stop-in-corner.ts'
import { anotherStop, type LooseStop } from './stop-rules.ts'

/** What may be changed, as the user has it to hand. Lengths in m, pressures gauge in Pa. Nothing in a list: that is left as it is. */
export interface Ranges {
  /** Lengths of spacers, and the finished tube they are cut from; null where there is none that fits. */
  readonly spacers: readonly number[]
  readonly tube: TubeSize | null
  readonly charges: readonly number[]
  /** Oil taken out of the stop, besides what a spacer takes up, m³. */
  readonly oils: readonly number[]
  /** Thicknesses of pad shims. */
  readonly shims: readonly number[]
  /** Stops on the shelf, mounted to close where the present one does. */
  readonly stops: readonly LooseStop[]
  /** Main springs on the shelf, at the same ride height. */
  readonly springs: readonly Spring[]
  /** Preload may be turned to keep the ride height where a stop no longer carries part of the car. */
  readonly preload: boolean
}

/** Numbers from one to another by a step, both ends in, each a whole number of steps from the first. */
export const series = (from: number, to: number, step: number): number[] =>
  to < from ? [] : Array.from({ length: Math.floor((to - from) / step + 1e-9) + 1 }, (_, i) => from + i * step)

/** Values of one range beyond this many are not looked at: its step is too fine. */
export const MOST_VALUES = 200

const valuesOf = (span: Span | null): number[] =>
  span === null ? [] : series(span.from, Math.min(span.to, span.from + span.step * (MOST_VALUES - 1)), span.step)

/** The ranges of a corner as somebody chose them; parts by their ids, those that are on the shelf. What a stop has not is not changed on it. */
export function rangesOf(corner: Corner, chosen: ChosenRanges, shelf: Shelf): Ranges {
  const on = <Part>(kept: readonly Kept<Part>[], ids: readonly string[]): Part[] =>
    kept.filter(({ id }) => ids.includes(id)).map(({ part }) => part)
  const hydraulic = isHydraulic(corner)
  const stops = corner.stop === null ? [] : on(shelf.stops, chosen.stops)
  const charged = hydraulic || stops.some(({ kind }) => kind === 'hydraulic')
  return {
    spacers: hydraulic ? valuesOf(chosen.spacers).filter(length => length > 0) : [],
    tube: tubeOf(corner, shelf),
    charges: charged ? valuesOf(chosen.charges) : [],
    oils: hydraulic ? valuesOf(chosen.oils).filter(out => out > 0) : [],
    shims: corner.stop === null ? [] : valuesOf(chosen.shims).filter(thickness => thickness > 0),
    stops,
    springs: on(shelf.springs, chosen.springs),
    preload: chosen.preload,
  }
}

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

/** Charges nearer than this are one, Pa. */
const SAME_CHARGE = PSI / 100

/** Every combination of what may be changed, each as its changes in the order they are made; the first changes nothing. */
export function combinations(corner: Corner, ranges: Ranges): Change[][] {
  const stops = ranges.stops.flatMap(stop => anotherStop(corner, stop) ?? [])
  const main = corner.springs.springs.length - 1
  const now = isHydraulic(corner) ? corner.stop.charge : null
  const { tube } = ranges
  /** What may be done of one kind, nothing first. */
  const choices: readonly (readonly (Change | null)[])[] = [
    [null, ...stops],
    [null, ...(tube === null ? [] : ranges.spacers.map(length => ({ kind: 'spacer' as const, length, ...tube })))],
    [null, ...ranges.oils.map(out => ({ kind: 'oil' as const, added: -out }))],
    [null, ...ranges.shims.map(thickness => ({ kind: 'pad shim' as const, thickness }))],
    [
      null,
      ...ranges.charges
        .filter(charge => now === null || ranges.stops.length > 0 || Math.abs(charge - now) > SAME_CHARGE)
        .map(charge => ({ kind: 'charge' as const, charge })),
    ],
    [
      null,
      ...ranges.springs.map(spring => ({ kind: 'spring' as const, place: main, spring, keep: 'ride height' as const })),
    ],
    [null, ...(ranges.preload ? [{ kind: 'hold' as const, weight: carried(cornerModel(corner)) }] : [])],
  ]
  return choices.reduce<Change[][]>(
    (all, kind) => all.flatMap(made => kind.map(change => (change === null ? made : [...made, change]))),
    [[]],
  )
}
