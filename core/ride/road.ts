/** The road under one wheel as it passes: height in m, 0 where it starts, and how fast that rises, m/s. */
export interface Road {
  /** How long it is looked at, s. */
  readonly duration: number
  at(time: number): { readonly height: number; readonly rise: number }
  /** Times where height or rise breaks, s, rising. */
  readonly breaks: readonly number[]
  /** Longest step that cannot miss a feature of it, s. */
  readonly longestStep: number
}
