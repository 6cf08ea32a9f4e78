import type { Point } from '../plan/schema.ts'

/** Where shock and stop stand at one wheel position, both 0 at ride height, and how fast they move with the wheel. */
export interface LinkagePosition {
  /** Shock shaft movement, m, positive closing. */
  readonly shock: number
  /** Pad movement along the stop's axis, m, positive closing. */
  readonly stop: number
  /** Motion ratio of the shock, d(shock)/d(wheel). */
  readonly shockRatio: number
  /** Motion ratio of the stop, d(stop)/d(wheel). */
  readonly stopRatio: number
}

/** One way of moving shock and stop with the wheel. */
export interface LinkageModel {
  /** Lowest and highest wheel position the linkage can take, m; infinite where nothing in the linkage ends it. */
  readonly lowest: number
  readonly highest: number
  /** @param wheel m from ride height; taken as the nearer end outside lowest..highest */
  at(wheel: number): LinkagePosition
  /** Wheel positions where slopes change abruptly in their derivative (table rows), rising; empty for smooth linkages. */
  readonly knots: readonly number[]
  /** A point that moves with the arm or axle, at a wheel position; null where the plan knows no geometry. */
  readonly move: ((point: Point, wheel: number) => Point) | null
}
