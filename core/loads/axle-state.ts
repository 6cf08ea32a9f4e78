/** One side of an axle at rest under loads. Positions in m as wheel travel from ride height; forces in N as at the wheel. */
export interface SideState {
  readonly wheel: number
  /** Where shock and stop stand, as wheel travel: on a solid axle in roll not where the wheel does. */
  readonly atShock: number
  readonly atStop: number
  readonly springs: number
  readonly gas: number
  /** On the step: what balance asks of it, between nothing and what the step gives. */
  readonly stop: number
  /** What an end of the travel carries: positive at full bump, negative at full droop. */
  readonly end: number
}

/** An axle whose chassis stands at one roll angle. `outer` is the side that goes up as the angle grows. */
export interface AxleState {
  readonly outer: SideState
  readonly inner: SideState
  /** What both sides carry together, N. */
  readonly lift: number
  /** Moment against the roll, N·m. */
  readonly moment: number
  /** The inner wheel has left the ground. */
  readonly lifted: boolean
}

const mix = (a: number, b: number, share: number): number => (a === b ? a : a + (b - a) * share)

const mixSides = (a: SideState, b: SideState, share: number): SideState => ({
  wheel: mix(a.wheel, b.wheel, share),
  atShock: mix(a.atShock, b.atShock, share),
  atStop: mix(a.atStop, b.atStop, share),
  springs: mix(a.springs, b.springs, share),
  gas: mix(a.gas, b.gas, share),
  stop: mix(a.stop, b.stop, share),
  end: mix(a.end, b.end, share),
})

/**
 * Between two states a rounding apart: along a smooth force the rest of the way to balance; across a step the part of it that balance asks for.
 * @param share of the way from a to b, 0 to 1
 */
export const mixStates = (a: AxleState, b: AxleState, share: number): AxleState => ({
  outer: mixSides(a.outer, b.outer, share),
  inner: mixSides(a.inner, b.inner, share),
  lift: mix(a.lift, b.lift, share),
  moment: mix(a.moment, b.moment, share),
  lifted: a.lifted && b.lifted,
})
