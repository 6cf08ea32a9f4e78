import type { AxleSureness } from '../../../core/tolerance/steps.ts'

/** Where a line of the plate may well be, m of wheel travel: 90 of 100 trials lie within. */
export interface LineBand {
  readonly id: 'bump' | 'droop' | 'engagement' | 'static'
  readonly low: number
  readonly high: number
}

const LINES = [
  ['bump', 'travel.bump', 1],
  ['droop', 'travel.droop', -1],
  ['engagement', 'engagement.wheel', 1],
  ['static', 'static.position', 1],
] as const

/** The bands of the plate's lines; none for a line the axle has not. */
export const lineBands = ({ figures }: AxleSureness): LineBand[] =>
  LINES.flatMap(([id, figure, sign]): LineBand[] => {
    const found = figures.find(each => each.id === figure)
    if (found === undefined) return []
    const [low, high] = sign > 0 ? [found.low, found.high] : [-found.high, -found.low]
    return [{ id, low, high }]
  })
