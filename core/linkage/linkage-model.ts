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

/** How fast the motion ratios change with the wheel, 1/m. */
export interface RatioSlopes {
  readonly shock: number
  readonly stop: number
}

/** One way of moving shock and stop with the wheel. */
export interface LinkageModel {
  /** Lowest and highest wheel position the linkage can take, m; infinite where nothing in the linkage ends it. */
  readonly lowest: number
  readonly highest: number
  /** Shock and stop rise with the wheel all the way: neither ever turns back. */
  readonly rises: boolean
  /** @param wheel m from ride height; taken as the nearer end outside lowest..highest */
  at(wheel: number): LinkagePosition
  /** Slopes of the motion ratios at a wheel position; they jump at the knots, where that of the side asked for is given. */
  ratioSlopes(wheel: number, side: 'below' | 'above'): RatioSlopes
  /** Wheel positions where the slopes of the motion ratios jump (table rows), rising; empty for smooth linkages. */
  readonly knots: readonly number[]
  /** A point that moves with the arm or axle, at a wheel position; null where the plan knows no geometry. */
  readonly move: ((point: Point, wheel: number) => Point) | null
}
