import type { Corner } from '../plan/schema.ts'
import type { TubeSize } from '../spacer/tube.ts'
import type { Say } from '../units/saying.ts'
import type { Spring } from './change.ts'
import type { Kept, Shelf } from './shelf.ts'
import type { LooseStop } from './stop-rules.ts'

export type PartKind = keyof Shelf
export type KeptOf<Kind extends PartKind> = Shelf[Kind][number]

/** The shelf with a part in the place of the one of its id, or before all others. */
export const withPart = <Kind extends PartKind>(shelf: Shelf, kind: Kind, kept: KeptOf<Kind>): Shelf => {
  const list: readonly Kept<unknown>[] = shelf[kind]
  const known = list.some(({ id }) => id === kept.id)
  return { ...shelf, [kind]: known ? list.map(each => (each.id === kept.id ? kept : each)) : [kept, ...list] }
}

export const withoutPart = (shelf: Shelf, kind: PartKind, id: string): Shelf => {
  const list: readonly Kept<unknown>[] = shelf[kind]
  return { ...shelf, [kind]: list.filter(each => each.id !== id) }
}

/** Both shelves on one: a part brought takes the place of the one of its id, the others come before what is there. */
export function together(shelf: Shelf, brought: Shelf): Shelf {
  const of = <Part>(there: readonly Kept<Part>[], come: readonly Kept<Part>[]): Kept<Part>[] => {
    const known = new Set(there.map(({ id }) => id))
    const by = new Map(come.map(each => [each.id, each]))
    return [...come.filter(({ id }) => !known.has(id)), ...there.map(each => by.get(each.id) ?? each)]
  }
  return {
    stops: of(shelf.stops, brought.stops),
    springs: of(shelf.springs, brought.springs),
    tubes: of(shelf.tubes, brought.tubes),
  }
}

/** The stop of a corner as it goes on the shelf: without its gap, and without a record of what is inside. */
export function stopOf({ stop }: Corner): LooseStop | null {
  if (stop === null) return null
  if (stop.kind === 'elastomer') {
    const { gap: _, ...loose } = stop
    return loose
  }
  const { gap: _, spacer: __, ...loose } = stop
  return loose
}

/** `3 in hydraulic stop, 1 1/4 in shaft, 200 psi`. */
export const stopWords = (stop: LooseStop, say: Say): string =>
  stop.kind === 'elastomer'
    ? `elastomer stop, ${say(stop.curve.at(-1)!.deflection, 'length')}, ${say(stop.curve.at(-1)!.force, 'force')} there`
    : `${say(stop.stroke, 'length')} hydraulic stop, ${say(stop.shaftDiameter, 'length')} shaft, ${say(stop.charge, 'pressure')}`

/** `350 lb/in, 16 in free, 5 3/4 in solid`. */
export const springWords = ({ rate, freeLength, solidLength }: Spring, say: Say): string =>
  `${say(rate, 'rate')}, ${say(freeLength, 'length')} free, ${say(solidLength, 'length')} solid`

/** `1 1/2 in by 0.120 in wall`. */
export const tubeWords = ({ outerDiameter, wall }: TubeSize, say: Say): string =>
  `${say(outerDiameter, 'length')} by ${say(wall, 'length', { decimal: true })} wall`
