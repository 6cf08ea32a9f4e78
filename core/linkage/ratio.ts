import type { RatioLinkage } from '../plan/schema.ts'
import type { LinkageModel } from './linkage-model.ts'

/** Shock and stop move in fixed proportion to the wheel. Nothing in the linkage ends it. */
export function ratioLinkage({ shock, stop }: RatioLinkage): LinkageModel {
  return {
    lowest: -Infinity,
    highest: Infinity,
    at: wheel => ({ shock: shock * wheel, stop: stop * wheel, shockRatio: shock, stopRatio: stop }),
    ratioSlopes: () => ({ shock: 0, stop: 0 }),
    rises: true,
    knots: [],
    move: null,
  }
}
