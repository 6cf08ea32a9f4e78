import type { LedgerSureness } from '../../../core/tolerance/ledger-sureness.ts'
import type { AxleSureness } from '../../../core/tolerance/steps.ts'

/** Where a line of the plate may well be, m of wheel travel: 90 of 100 trials lie within. */
export interface LineBand {
  readonly id: 'bump' | 'droop' | 'engagement' | 'static' | 'loaded'
  readonly low: number
  readonly high: number
}

const LINES = [
  ['bump', 'travel.bump', 1],
  ['droop', 'travel.droop', -1],
  ['engagement', 'engagement.wheel', 1],
  ['static', 'static.position', 1],
] as const

/** The bands of the plate's lines, and of where the counted loads put the wheel; none for a line the axle has not. */
export const lineBands = ({ figures }: AxleSureness, ledger: LedgerSureness | null = null): LineBand[] => [
  ...LINES.flatMap(([id, figure, sign]): LineBand[] => {
    const found = figures.find(each => each.id === figure)
    if (found === undefined) return []
    const [low, high] = sign > 0 ? [found.low, found.high] : [-found.high, -found.low]
    return [{ id, low, high }]
  }),
  ...(ledger?.bands ?? []).flatMap(({ id, low, high }): LineBand[] =>
    id === 'place' ? [{ id: 'loaded', low, high }] : [],
  ),
]
