import type { CornerModel } from '../corner/corner-model.ts'

/** Spacer that makes a stop show `wanted` of its shaft where it shows `shows` now, m; negative: it would have to show more than it can. */
export const lengthToShow = (shows: number, wanted: number): number => shows - wanted

/**
 * Spacer with which pad and stop meet at a wheel position, m: the pad's travel there less the gap. 0 or less: it is met there or later already.
 * Null without a stop.
 * @param wheel m from ride height, inside the travel
 */
export function lengthToEngageAt({ linkage, corner }: CornerModel, wheel: number): number | null {
  return corner.stop === null ? null : linkage.at(wheel).stop - corner.stop.gap
}

/** As `lengthToEngageAt`, for a share of bump travel on the coilover alone, 0 to 1. */
export const lengthForShare = (model: CornerModel, share: number): number | null =>
  lengthToEngageAt(model, share * model.bump)
