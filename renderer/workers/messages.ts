import type { Corner, Terrain } from '../../core/plan/schema.ts'
import type { Ride, RideOutcome, RideTrace } from '../../core/ride/ride.ts'

/** One ride to be worked out. */
export interface RideAsk {
  readonly corner: Corner
  readonly terrain: Terrain
  /** Send back every moment as well, and not the figures alone. */
  readonly trace: boolean
}

/** Every moment of a ride; its arrays change hands without being copied. */
export type Trace = RideTrace

export type Rode = Omit<Ride, 'trace'> & { readonly trace: Trace | null }

/** What came of a ride: its figures, and every moment where that was asked for; or why it did not get to its end. */
export type Ridden = Rode | Exclude<RideOutcome, Ride>

/** From the page to a worker, and back. `id` says which question an answer belongs to; one that nobody waits for any more is dropped. */
export interface Question<A> {
  readonly id: number
  readonly ask: A
}

export type Reply<R> =
  | { readonly id: number; readonly answer: R }
  /** It could not be worked out at all: what the fault was. */
  | { readonly id: number; readonly fault: string }
