import type { Corner, HydraulicStop } from '../plan/schema.ts'
import { CUT_TOLERANCE, type CutError, cutError, SQUARENESS } from './cut.ts'
import { type Fit, fits, usable } from './fit.ts'
import { type Strength, spacerStrength, type TubeSteel } from './strength.ts'
import { metalVolume, type TubeSize, tubeMass } from './tube.ts'

/** Everything a shop needs to make one spacer. SI. */
export interface CutList {
  readonly length: number
  /** Either way, m. */
  readonly tolerance: number
  /** Most an end may be off square, m across its face. */
  readonly squareness: number
  /** The tube chosen, and what must be done to it. */
  readonly tube: Fit
  /** Of the finished spacer, kg, and its metal, m³: the oil to leave out so that the gas keeps its closed volume. */
  readonly mass: number
  readonly oilLeftOut: number
  readonly steel: TubeSteel
  readonly strength: Strength
  /** What a cut at either end of the tolerance does. */
  readonly errors: readonly CutError[]
}

export type CutListed =
  | { readonly ok: true; readonly list: CutList }
  | { readonly ok: false; readonly tried: readonly Fit[] }

/**
 * The best of the sizes at hand for a spacer, and all that follows from it; or every size with why it does not do.
 * @param corner with the spacer in, as planned, and a hydraulic stop
 * @param length of the spacer, m
 * @param charge gauge, Pa, the highest the stop will have at full length
 */
export function cutList(
  corner: Corner & { readonly stop: HydraulicStop },
  length: number,
  sizes: readonly TubeSize[],
  steel: TubeSteel,
  charge: number = corner.stop.charge,
): CutListed {
  const { stop } = corner
  const tried = fits(sizes, stop.shaftDiameter, stop.body?.bore ?? null)
  const tube = tried.find(usable)
  if (tube === undefined) return { ok: false, tried }
  return {
    ok: true,
    list: {
      length,
      tolerance: CUT_TOLERANCE,
      squareness: SQUARENESS,
      tube,
      mass: tubeMass(tube.finished, length),
      oilLeftOut: metalVolume(tube.finished, length),
      steel,
      strength: spacerStrength(stop, tube.finished, length, steel, charge),
      errors: [-CUT_TOLERANCE, CUT_TOLERANCE].map(off => cutError(corner, off)),
    },
  }
}
