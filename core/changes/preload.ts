import { springPack, springTravel } from '../forces/spring-pack.ts'
import { findRoot } from '../numerics/roots.ts'
import type { Corner, Springs } from '../plan/schema.ts'
import type { Say } from '../units/saying.ts'

/** Preload is solved to this, m: far below a thread, so that a change taken back gives the setup back. */
const FINE = 1e-14

/** Less than nothing by this much is nothing, m: sums of lengths round so far. */
const ROUNDING = 1e-12

const packTravel = ({ springs }: Springs): number => springs.reduce((sum, spring) => sum + springTravel(spring), 0)

/** How far the springs above the main are pressed at full extension, m. */
const aboveAtExtension = (springs: Springs): number =>
  springPack(springs)
    .each(springs.preload)
    .slice(0, -1)
    .reduce((sum, compression) => sum + compression, 0)

/**
 * The pack with its collar turned to another preload and its divider ring left where it is: the divider follows the collar down by what the
 * springs above it do not give, so the gap to the ring grows by that. Derived here.
 */
export function preloaded(springs: Springs, preload: number): Springs {
  if (springs.crossover === null || springs.springs.length === 1) return { ...springs, preload }
  const turned = { ...springs, preload, crossover: null }
  const before = aboveAtExtension({ ...springs, crossover: null })
  const gap = springs.crossover.gap + preload - springs.preload - (aboveAtExtension(turned) - before)
  return { ...springs, preload, crossover: { gap: gap > -ROUNDING ? Math.max(0, gap) : gap } }
}

/** Why a pack cannot be built; null when it can. */
export function cannotBe(springs: Springs, say: Say): string | null {
  const travel = packTravel(springs)
  const solid = springs.springs.find(spring => springTravel(spring) <= 0)
  if (solid !== undefined)
    return `A spring of ${say(solid.freeLength, 'length')} that is solid at ${say(solid.solidLength, 'length')} cannot work.`
  if (springs.preload > travel)
    return `A preload of ${say(springs.preload, 'length')} is more than the springs can give, ${say(travel, 'length')}.`
  if (springs.crossover !== null && springs.crossover.gap < 0)
    return `The divider would sit on its ring with the shock extended: move the ring ${say(-springs.crossover.gap, 'length')} up first.`
  return null
}

/**
 * Preload with which a pack pushes with a force, N along the shock, its shaft `moved` m in from ride height; null when none does. Rise and fall
 * of the force with preload are what the springs are good for, loose and bound there is no telling.
 */
export function pushing(
  corner: Corner,
  pack: (preload: number) => Springs,
  force: number,
  moved: number,
): number | null {
  const compression = corner.shock.stroke - corner.shock.showing + moved
  const over = (preload: number): number => springPack(pack(preload)).force(preload + compression) - force
  const root = findRoot(over, -corner.shock.stroke, packTravel(pack(0)), FINE)
  return root.found ? root.at : null
}
