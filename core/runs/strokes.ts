import type { CornerModel } from '../corner/corner-model.ts'
import type { EvenRun } from './evenly.ts'

/** Strokes of one size: a whole one goes there and back. */
export interface Cycle {
  readonly range: number
  readonly count: 0.5 | 1
}

/** Places where values turn, with the first and the last. */
function reversals(values: ArrayLike<number>): number[] {
  const turned: number[] = []
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i]!
    const [before, last] = [turned.at(-2), turned.at(-1)]
    if (value === last) continue
    if (before !== undefined && last !== undefined && value > last === last > before) turned.pop()
    turned.push(value)
  }
  return turned
}

/** Rainflow counting of a history (ASTM E1049-85, section 5.4.4): small strokes are taken out of larger ones, and each counted by its size. */
export function rainflow(values: ArrayLike<number>): Cycle[] {
  const cycles: Cycle[] = []
  const open: number[] = []
  for (const turn of reversals(values)) {
    open.push(turn)
    while (open.length > 2) {
      const [first, second, third] = open.slice(-3) as [number, number, number]
      const range = Math.abs(second - first)
      if (Math.abs(third - second) < range) break
      const isStart = open.length === 3
      cycles.push({ range, count: isStart ? 0.5 : 1 })
      if (isStart) open.shift()
      else open.splice(-3, 2)
    }
  }
  for (let i = 1; i < open.length; i += 1) cycles.push({ range: Math.abs(open[i]! - open[i - 1]!), count: 0.5 })
  return cycles
}

/** Shares of the whole travel strokes are told apart by. */
export const STROKE_SHARES = [0.25, 0.5, 0.75] as const

/** Strokes of the wheel a minute that are longer than a quarter, a half and three quarters of the travel, there and back. */
export function strokesAMinute(
  { bump, droop }: Pick<CornerModel, 'bump' | 'droop'>,
  { step, stretches }: EvenRun,
): number[] {
  const cycles = stretches.flatMap(({ values }) => rainflow(values))
  const seconds = stretches.reduce((sum, { values }) => sum + (values.length - 1) * step, 0)
  return STROKE_SHARES.map(share => {
    const longer = cycles.filter(({ range }) => range > share * (bump - droop))
    return (longer.reduce((sum, { count }) => sum + count, 0) * 60) / seconds
  })
}
