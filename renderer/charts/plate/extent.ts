/** How far the plate's two axes reach. */
export interface PlateExtent {
  /** Widest wheel travel of the setups shown, m from ride height. */
  readonly bump: number
  readonly droop: number
  /** Furthest limit beyond full bump that should find room above it, m. */
  readonly reserve: number
  /** Largest force drawn, N, above 0. */
  readonly force: number
}

/** A scale that still fits is kept until it would leave more than this part of it empty. */
const EMPTY = 0.12
/** What outgrew its scale gets this part of the travel more than it needs, so that it does not outgrow it again at once. */
const GROWTH = 0.04

/**
 * The extent to draw to. While values change step by step the scale holds still, so that lines move against their ground and not the
 * ground under the lines: an extent held from before is kept while all of `now` fits in it and nearly fills it.
 */
export function heldExtent(held: PlateExtent | null, now: PlateExtent): PlateExtent {
  if (held === null) return now
  const { bump, droop, reserve, force } = now
  const travel = bump - droop
  const kept = held.bump - held.droop
  const fits = bump <= held.bump && droop >= held.droop
  const vertical =
    fits && reserve <= held.reserve && travel >= (1 - EMPTY) * kept && reserve >= held.reserve - EMPTY * kept
      ? held
      : {
          bump: bump > held.bump ? bump + GROWTH * travel : bump,
          droop: droop < held.droop ? droop - GROWTH * travel : droop,
          reserve: reserve > held.reserve ? reserve + GROWTH * travel : reserve,
        }
  const forceKept = force <= held.force && force >= (1 - EMPTY) * held.force
  if (vertical === held && forceKept) return held
  return {
    bump: vertical.bump,
    droop: vertical.droop,
    reserve: Math.max(vertical.reserve, vertical.bump),
    force: forceKept ? held.force : force > held.force ? force * (1 + GROWTH) : force,
  }
}
