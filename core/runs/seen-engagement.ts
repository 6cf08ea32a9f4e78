/** Where a run itself shows pad and stop meet, or why it does not show it. */
export type SeenEngagement =
  | {
      readonly seen: true
      /** Wheel position, m from ride height, and the half-width of the 95 % interval about it, m. */
      readonly wheel: number
      readonly within: number
      /** Upward strokes through that place that it was told from. */
      readonly strokes: number
      /** How much less the wheel was speeding up just past it, m/s² (negative: the stop pushed back). */
      readonly jump: number
    }
  | {
      readonly seen: false
      readonly why: 'no stop' | 'too few rows a second' | 'too few strokes' | 'nothing stands out' | 'not told apart'
    }
