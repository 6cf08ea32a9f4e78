import { cornerModel } from '../corner/corner.ts'
import type { ChosenRanges, Corner, Span } from '../plan/schema.ts'
import type { TubeSize } from '../spacer/tube.ts'
import { PSI } from '../units/constants.ts'
import type { Change, Spring } from './change.ts'
import { carried } from './ride-height.ts'
import { type Kept, type Shelf, tubeOf } from './shelf.ts'
import { isHydraulic } from './stop-in-corner.ts'
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

/** The values of a range, SI; none of one that is left as it is. */
export const valuesOf = (span: Span | null): number[] =>
  span === null ? [] : series(span.from, Math.min(span.to, span.from + span.step * (MOST_VALUES - 1)), span.step)

/** Whether a stop of the shelf is what the corner has already: putting it in changes nothing. */
function isThere({ stop }: Corner, other: LooseStop): boolean {
  if (stop?.kind !== 'hydraulic' || other.kind !== 'hydraulic') return false
  return (['stroke', 'shaftDiameter', 'charge', 'gasVolume'] as const).every(key => stop[key] === other[key])
}

/** The ranges of a corner as somebody chose them; parts by their ids, those that are on the shelf. What a stop has not is not changed on it. */
export function rangesOf(corner: Corner, chosen: ChosenRanges, shelf: Shelf): Ranges {
  const on = <Part>(kept: readonly Kept<Part>[], ids: readonly string[]): Part[] =>
    kept.filter(({ id }) => ids.includes(id)).map(({ part }) => part)
  const hydraulic = isHydraulic(corner)
  const stops = corner.stop === null ? [] : on(shelf.stops, chosen.stops).filter(stop => !isThere(corner, stop))
  const main = corner.springs.springs.at(-1)!
  const differs = ({ rate, freeLength, solidLength }: Spring): boolean =>
    rate !== main.rate || freeLength !== main.freeLength || solidLength !== main.solidLength
  const charged = hydraulic || stops.some(({ kind }) => kind === 'hydraulic')
  return {
    spacers: hydraulic ? valuesOf(chosen.spacers).filter(length => length > 0) : [],
    tube: tubeOf(corner, shelf),
    charges: charged ? valuesOf(chosen.charges) : [],
    oils: hydraulic ? valuesOf(chosen.oils).filter(out => out > 0) : [],
    shims: corner.stop === null ? [] : valuesOf(chosen.shims).filter(thickness => thickness > 0),
    stops,
    springs: on(shelf.springs, chosen.springs).filter(differs),
    preload: chosen.preload,
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
