import type { Change } from '../../../core/changes/change.ts'
import type { Shelf } from '../../../core/changes/shelf.ts'
import { isHydraulic } from '../../../core/changes/stop-in-corner.ts'
import { anotherStop } from '../../../core/changes/stop-rules.ts'
import type { Corner, UnitSystem } from '../../../core/plan/schema.ts'
import type { TubeSize } from '../../../core/spacer/tube.ts'
import { INCH } from '../../../core/units/constants.ts'
import type { Quantity } from '../../../core/units/quantity.ts'
import { nearestCharge, STEPS } from '../../../core/units/steps.ts'

/** A change made by hand, of one value. */
export interface ValueKind {
  readonly quantity: Quantity
  readonly ask: string
  readonly first: (corner: Corner, units: UnitSystem) => number
  readonly change: (corner: Corner, value: number, tube: TubeSize | null) => Change | null
}

/** A change that takes a part from the shelf. */
export interface PartKind {
  readonly parts: (shelf: Shelf) => readonly { readonly id: string; readonly name: string }[]
  readonly change: (corner: Corner, shelf: Shelf, id: string) => Change | null
}

export type HandKind = { readonly name: string } & (ValueKind | PartKind)

export type HandKindId =
  | 'spacer'
  | 'shim'
  | 'move'
  | 'stop'
  | 'charge'
  | 'oil'
  | 'spring'
  | 'preload'
  | 'crossover'
  | 'height'

const byValue = (kind: { readonly name: string } & ValueKind): HandKind => kind
const byPart = (kind: { readonly name: string } & PartKind): HandKind => kind

/** Tube a spacer is cut from where the shelf has none that fits: refused by the rule, in words. */
const NO_TUBE: TubeSize = { outerDiameter: 0, wall: 0 }

const charge = (corner: Corner): number => (isHydraulic(corner) ? corner.stop.charge : 0)

/** The changes that can be made by hand, in the order they are offered. */
export const HAND_KINDS: Readonly<Record<HandKindId, HandKind>> = {
  spacer: byValue({
    name: 'Spacer inside the stop',
    quantity: 'length',
    ask: 'Length of the spacer',
    first: () => INCH,
    change: (_, length, tube) => ({ kind: 'spacer', length, ...(tube ?? NO_TUBE) }),
  }),
  shim: byValue({
    name: 'Shim on the pad',
    quantity: 'length',
    ask: 'Thickness, negative to take off',
    first: (_, units) => 2 * STEPS[units].shim,
    change: (_, thickness) => ({ kind: 'pad shim', thickness }),
  }),
  move: byValue({
    name: 'Stop moved along its axis',
    quantity: 'length',
    ask: 'Away from the pad, negative towards it',
    first: (_, units) => 2 * STEPS[units].shim,
    change: (_, away) => ({ kind: 'move stop', away }),
  }),
  stop: byPart({
    name: 'Another stop from the shelf',
    parts: ({ stops }) => stops,
    change: (corner, { stops }, id) => {
      const kept = stops.find(each => each.id === id)
      return kept === undefined ? null : anotherStop(corner, kept.part)
    },
  }),
  charge: byValue({
    name: 'Charge',
    quantity: 'pressure',
    ask: 'Charge, stop at full length',
    first: (corner, units) => nearestCharge(charge(corner) + 2 * STEPS[units].charge, units),
    change: (_, value) => ({ kind: 'charge', charge: value }),
  }),
  oil: byValue({
    name: 'Oil level',
    quantity: 'volume',
    ask: 'Oil put in, negative taken out',
    first: (_, units) => -STEPS[units].oil,
    change: (_, added) => ({ kind: 'oil', added }),
  }),
  spring: byPart({
    name: 'Another main spring from the shelf',
    parts: ({ springs }) => springs,
    change: ({ springs: { springs: pack } }, { springs }, id) => {
      const kept = springs.find(each => each.id === id)
      return kept === undefined
        ? null
        : { kind: 'spring', place: pack.length - 1, spring: kept.part, keep: 'ride height' }
    },
  }),
  preload: byValue({
    name: 'Preload',
    quantity: 'length',
    ask: 'Preload at full extension',
    first: ({ springs }) => springs.preload,
    change: (_, preload) => ({ kind: 'preload', preload }),
  }),
  crossover: byValue({
    name: 'Divider to ring',
    quantity: 'length',
    ask: 'Gap at full extension',
    first: ({ springs }) => springs.crossover?.gap ?? INCH,
    change: (_, gap) => ({ kind: 'crossover', gap }),
  }),
  height: byValue({
    name: 'Ride height by preload',
    quantity: 'length',
    ask: 'Higher, negative lower',
    first: (_, units) => 2 * STEPS[units].shim,
    change: (_, rise) => ({ kind: 'ride height', rise }),
  }),
}
