import type { Axle, AxleId, Corner, UnitSystem } from '../../core/plan/schema.ts'
import type { RideFinding } from '../../core/ride/findings/rule.ts'
import type { CarOutcome, CarRide, CornerRide, RideTrace } from '../../core/ride/results.ts'
import type { Course } from '../../core/ride/terrain.ts'

/** What is driven: a corner by itself, or a corner of the whole car in heave and pitch, the wheels of both axles over the same road. */
export type Driven =
  | { readonly kind: 'corner'; readonly corner: Corner }
  | {
      readonly kind: 'car'
      readonly axles: readonly { readonly id: AxleId; readonly corner: Corner }[]
      /** m */
      readonly wheelbase: number
      /** Whose corner is asked about. */
      readonly axle: AxleId
    }

/** One ride to be worked out. */
export interface RideAsk {
  readonly kind: 'ride'
  readonly driven: Driven
  readonly terrain: Course
  /** Send back every moment as well, and not the figures alone. */
  readonly trace: boolean
}

/** What is worth saying of a ride: what it advises is tried, so this takes a few rides more. */
export interface FindingsAsk {
  readonly kind: 'findings'
  readonly driven: Driven
  /** The axle whose corner is asked about. */
  readonly axle: Axle
  readonly terrain: Course
  readonly units: UnitSystem
}

export type Ask = RideAsk | FindingsAsk

/** How the whole car moved at the moments of a ride, of both axles; heights in m, 0 with both tires just touching level road. */
export type CarTrace = Readonly<Record<AxleId, Pick<RideTrace, 'chassis' | 'wheel' | 'road'>>>

/** Every moment of a ride; its arrays change hands without being copied. */
export type Trace = RideTrace

export interface Rode extends Omit<CornerRide, 'trace'> {
  readonly ok: true
  readonly trace: Trace | null
  /** Both axles, where every moment of a whole car was asked for. */
  readonly car: CarTrace | null
  /** How far the body turned, nose down positive, rad; null where each axle moved by itself. */
  readonly pitch: { readonly least: number; readonly most: number } | null
}

/** What came of a ride: its figures, and every moment where that was asked for; or why it did not get to its end. */
export type Ridden = Rode | Exclude<CarOutcome, CarRide>

export type Answer =
  | { readonly kind: 'ride'; readonly ridden: Ridden }
  /** None where there is no ride to speak of. */
  | { readonly kind: 'findings'; readonly findings: readonly RideFinding[] }

/** From the page to a worker, and back. `id` says which question an answer belongs to; one that nobody waits for any more is dropped. */
export interface Question<A> {
  readonly id: number
  readonly ask: A
}

export type Reply<R> =
  | { readonly id: number; readonly answer: R }
  /** It could not be worked out at all: what the fault was. */
  | { readonly id: number; readonly fault: string }
