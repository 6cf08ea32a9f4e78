import { cornerModel } from '../corner/corner.ts'
import type { Corner } from '../plan/schema.ts'
import { fits, usable } from '../spacer/fit.ts'
import type { TubeSize } from '../spacer/tube.ts'
import { INCH, PSI } from '../units/constants.ts'
import type { Change, Spring } from './change.ts'
import { carried } from './ride-height.ts'
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

/** Spacers are cut by the eighth, charges set by ten: common practice. */
const SPACER_STEP = INCH / 8
const CHARGE_STEP = 10 * PSI

/** Stroke a spacer leaves a stop at least: common practice. */
const STROKE_LEFT = INCH

/** Lowest and highest charge looked at: stops are charged near 200 psi, more for hard landings; common practice. */
const CHARGES = { least: 100 * PSI, most: 300 * PSI } as const

/**
 * What is usual for a corner: spacers by the eighth that leave an inch of stroke, of the tube inside already or the best of the sizes given,
 * and charges from 100 to 300 psi by ten. Preload where the car rides on its stop. No oil, shims, stops or springs: those are the user's own.
 */
export function usualRanges(corner: Corner, sizes: readonly TubeSize[]): Ranges {
  const nothing: Ranges = {
    spacers: [],
    tube: null,
    charges: [],
    oils: [],
    shims: [],
    stops: [],
    springs: [],
    preload: false,
  }
  if (!isHydraulic(corner)) return nothing
  const { stroke, shaftDiameter, body, spacer, charge } = corner.stop
  const inside = spacer === undefined ? null : { outerDiameter: spacer.outerDiameter, wall: spacer.wall }
  const tube = inside ?? fits(sizes, shaftDiameter, body?.bore ?? null).find(usable)?.finished ?? null
  const most = Math.min(USUAL_CHARGE, body?.ratedPressure ?? Infinity, Math.max(CHARGES.most, charge))
  return {
    ...nothing,
    spacers: tube === null ? [] : series(SPACER_STEP, stroke - STROKE_LEFT, SPACER_STEP),
    tube,
    charges: series(CHARGES.least, most, CHARGE_STEP),
    preload: corner.stop.gap <= 0,
  }
}

/** Oil taken out is measured by the quarter of a cubic inch, and no more than one is looked at: common practice. */
const OIL = { step: 0.25 * INCH ** 3, most: INCH ** 3 } as const

/** Coarser in spacers and charges, wider by oil: where the usual ranges reach no target, more gas with more charge may. */
export function widerRanges(corner: Corner, sizes: readonly TubeSize[]): Ranges {
  const usual = usualRanges(corner, sizes)
  const everyOther = (values: readonly number[]): number[] => values.filter((_, i) => i % 2 === 1)
  return {
    ...usual,
    spacers: everyOther(usual.spacers),
    charges: everyOther(usual.charges),
    oils: isHydraulic(corner) ? series(OIL.step, OIL.most, OIL.step) : [],
  }
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
