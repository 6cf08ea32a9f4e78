/** The road under one wheel as it passes. */
export interface Road {
  /** How long it is looked at, s. */
  readonly duration: number
  /** m, 0 where it starts. */
  height(time: number): number
  /** How fast the height rises, m/s. */
  rise(time: number): number
  /** Times where height or rise breaks, s, rising. */
  readonly breaks: readonly number[]
  /** Longest step that cannot miss a feature of it between a time and the next break, s. */
  longestStep(from: number): number
}

/** Level road before and after an obstacle, s. */
export const LEAD_IN = 1
export const RUN_OUT = 2

/** A step no longer than this sees every motion of a car, s. */
export const LONGEST_STEP = 0.02
