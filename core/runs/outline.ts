import type { EvenRun } from './evenly.ts'

/** What a run did in one of many equal parts of its time. */
export interface OutlinePart {
  /** When the part begins, s. */
  readonly time: number
  /** Least and most of the values in it. */
  readonly low: number
  readonly high: number
}

/**
 * A run as so many parts of its time, for a drawing far narrower than it has values; parts in which nothing was recorded are left out.
 * @param from, to the time outlined, s, to after from; @param columns how many parts, 1 or more
 */
export function outline({ step, stretches }: EvenRun, from: number, to: number, columns: number): OutlinePart[] {
  const width = (to - from) / columns
  const parts = new Map<number, { time: number; low: number; high: number }>()
  for (const { start, values } of stretches) {
    const first = Math.max(0, Math.ceil((from - start) / step))
    const end = Math.min(values.length, Math.floor((to - start) / step) + 1)
    for (let i = first; i < end; i += 1) {
      const column = Math.min(columns - 1, Math.floor((start + i * step - from) / width))
      const value = values[i]!
      const part = parts.get(column)
      if (part === undefined) parts.set(column, { time: from + column * width, low: value, high: value })
      else if (value < part.low) part.low = value
      else if (value > part.high) part.high = value
    }
  }
  return [...parts.values()]
}

/** Share of a step that rounding of times may take away. */
const ROUNDING = 1e-6

/** The value at a time, straight between two; null in a gap, before the first and after the last. @param time s */
export function wheelAt({ step, stretches }: EvenRun, time: number): number | null {
  for (const { start, values } of stretches) {
    const place = (time - start) / step
    const last = values.length - 1
    if (place < -ROUNDING || place > last + ROUNDING) continue
    const held = Math.min(last, Math.max(0, place))
    const before = Math.min(Math.max(0, last - 1), Math.floor(held))
    const after = values[Math.min(last, before + 1)]!
    return values[before]! + (held - before) * (after - values[before]!)
  }
  return null
}
