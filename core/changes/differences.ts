import { axleBudget } from '../budget/budget.ts'
import { cornerModel } from '../corner/corner.ts'
import type { Axle, Corner, UnitSystem } from '../plan/schema.ts'
import type { Quantity } from '../units/quantity.ts'
import { type Say, sayIn } from '../units/saying.ts'
import { isHydraulic, strokeOf } from './stop-in-corner.ts'

/** One thing two setups differ in, each side as it is written. */
export interface SetupDifference {
  readonly what: string
  readonly before: string
  readonly after: string
  /** `made`: somebody does it in the shop; `follows`: it comes of that. */
  readonly kind: 'made' | 'follows'
}

interface Figure {
  readonly what: string
  readonly quantity: Quantity
  readonly of: (corner: Corner) => number | null
}

const hydraulic =
  (of: (stop: Extract<Corner['stop'], { kind: 'hydraulic' }>) => number | null) =>
  (corner: Corner): number | null =>
    isHydraulic(corner) ? of(corner.stop) : null

const figure = (what: string, quantity: Quantity, of: Figure['of']): Figure => ({ what, quantity, of })

const MADE: readonly Figure[] = [
  figure(
    'spacer inside the stop',
    'length',
    hydraulic(({ spacer }) => spacer?.length ?? null),
  ),
  figure('stroke of the stop', 'length', ({ stop }) => (stop === null ? null : strokeOf(stop))),
  figure(
    'shaft of the stop',
    'length',
    hydraulic(({ shaftDiameter }) => shaftDiameter),
  ),
  figure('gap', 'length', ({ stop }) => stop?.gap ?? null),
  figure(
    'charge of the stop',
    'pressure',
    hydraulic(({ charge }) => charge),
  ),
  figure(
    'gas volume of the stop',
    'volume',
    hydraulic(({ gasVolume }) => gasVolume),
  ),
  figure('preload', 'length', ({ springs }) => springs.preload),
  figure('divider to ring', 'length', ({ springs }) => springs.crossover?.gap ?? null),
  figure('shaft showing', 'length', ({ shock }) => shock.showing),
]

const kindOf = ({ stop }: Corner): string =>
  stop === null ? 'none' : stop.kind === 'hydraulic' ? 'hydraulic' : 'elastomer'

const packOf = ({ springs: { springs } }: Corner, say: Say): string =>
  springs.map(({ rate, freeLength }) => `${say(rate, 'rate')}, ${say(freeLength, 'length')} free`).join(' + ')

const written = (value: number | null, quantity: Quantity, say: Say): string =>
  value === null ? 'none' : say(value, quantity)

/** What somebody does in the shop to get from one setup of an axle to the other. What reads the same on both sides is left out. */
export function madeDifferences(before: Axle, after: Axle, units: UnitSystem): SetupDifference[] {
  const say = sayIn(units)
  const [was, is] = [before.corner, after.corner]
  const all: readonly (readonly [string, string, string])[] = [
    ['stop', kindOf(was), kindOf(is)],
    ...MADE.map(
      ({ what, quantity, of }) => [what, written(of(was), quantity, say), written(of(is), quantity, say)] as const,
    ),
    ['springs', packOf(was, say), packOf(is, say)],
  ]
  return all.flatMap(([what, first, second]) =>
    first === second ? [] : [{ what, before: first, after: second, kind: 'made' as const }],
  )
}

/**
 * What differs between two setups of an axle, in words, in the order of the car: first what is done, then what follows from it. What reads
 * the same on both sides is left out.
 */
export function setupDifferences(before: Axle, after: Axle, units: UnitSystem): SetupDifference[] {
  const say = sayIn(units)
  const told = madeDifferences(before, after, units)
  const tell = (what: string, was: string, is: string): void => {
    if (was !== is) told.push({ what, before: was, after: is, kind: 'follows' })
  }
  const [was, is] = [before, after].map(axle => axleBudget(axle, { units }, cornerModel(axle.corner), say))
  const follows = (what: string, quantity: Quantity, of: (budget: ReturnType<typeof axleBudget>) => number | null) =>
    tell(what, written(of(was!), quantity, say), written(of(is!), quantity, say))
  follows('engagement', 'length', ({ engagement }) => engagement?.wheel ?? null)
  follows('share of bump on the coilover', 'share', ({ engagement }) => engagement?.share ?? null)
  follows('bump travel', 'length', ({ travel }) => travel.bump)
  tell('bump ends at', was!.travel.bumpLimitedBy, is!.travel.bumpLimitedBy)
  follows('force of the stop at full bump, in a hit', 'force', ({ bump }) => bump.stopForceFast)
  follows('shock shaft left at full bump', 'length', ({ shockLeftAtBump }) => shockLeftAtBump)
  return told
}
