/**
 * How pad and stop stand to each other: `clear` of each other, the stop all the way out; `touching`; `resting` at the first touch, where
 * the stop carries what balance asks for, less than its step; `apart`, the stop still coming out behind a pad that left it.
 */
export type StopMode = 'clear' | 'touching' | 'resting' | 'apart'

/** What one corner is at until something happens to it. While these stand its motion is smooth. */
export interface Modes {
  stop: StopMode
  /** Past full bump or full droop. */
  end: 'none' | 'bump' | 'droop'
  /** Whether steel pushes: past the end it can let go on the way back. */
  endPushes: boolean
  ground: boolean
  /** The wheel moves up against the chassis. */
  bumping: boolean
  /** Which region of the corner's table the wheel is in: its rate jumps from one to the next. */
  region: number
}

/** Places of a corner's watches: each is below zero while nothing happens, and its turning to zero or more is what happens. */
export const WATCH = { stop: 0, stopAlso: 1, end: 2, endAlso: 3, ground: 4, turn: 5, region: 6 } as const
export const WATCHES = 7

/** A watch with nothing to watch. */
export const ASLEEP = -1

/**
 * What let go comes back only when it is past by so much, and the other way round: far more than a step may be off, far less than anybody
 * measures. Without it a part at rest on the very edge would be let go and caught again forever.
 */
export const EDGE = {
  /** m */
  apart: 1e-6,
  /** m/s */
  speed: 2e-5,
  /** Of steel, N. */
  steel: 5,
  /** Of tire and stop, N. */
  force: 0.5,
  /** A stop that pushes more at its touch throws a pad off, and holds it at rest otherwise: nothing is needed there, N. */
  step: 5,
} as const
