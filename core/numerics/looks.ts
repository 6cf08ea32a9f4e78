import { findRoot, POSITION_TOLERANCE, type ValueAndSlope } from './roots.ts'

/** Longest look a search takes, m: shorter than any feature of a linkage; turning points inside a look are found by their slope. */
const LOOK = 0.01

/** A smooth function looked at once over a stretch, so closely that between neighbouring places it only rises or only falls. */
export interface Looks {
  readonly f: (x: number) => number
  /** Rising: every 10 mm, the ends, and every turning point. */
  readonly x: readonly number[]
  readonly y: readonly number[]
}

/**
 * Looks over a function of wheel position for the searches below.
 * @param f value and slope at a wheel position in m
 * @param from lower end, m; @param to upper end, m, above it
 */
export function lookOver(f: (x: number) => ValueAndSlope, from: number, to: number): Looks {
  const x: number[] = []
  const y: number[] = []
  const count = Math.max(1, Math.ceil((to - from) / LOOK))
  let before: ValueAndSlope | null = null
  for (let i = 0; i <= count; i += 1) {
    const place = i === count ? to : from + ((to - from) * i) / count
    const now = f(place)
    if (before !== null && before.slope > 0 !== now.slope > 0) {
      const turn = findRoot(at => f(at).slope, x.at(-1)!, place, POSITION_TOLERANCE)
      if (turn.found && turn.at > x.at(-1)! && turn.at < place) {
        x.push(turn.at)
        y.push(f(turn.at).value)
      }
    }
    x.push(place)
    y.push(now.value)
    before = now
  }
  return { f: at => f(at).value, x, y }
}

/** Index of the first look above `place`. */
function firstAbove(x: readonly number[], place: number): number {
  let low = 0
  let high = x.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (x[middle]! > place) high = middle
    else low = middle + 1
  }
  return low
}

/**
 * The first place, going from `from` towards `to` (up or down), where the function has come to `target`: is at least that, or at most that
 * when it is to `fall` there. `from` itself if it is so there; null when it never is. A peak that only just reaches is not stepped over.
 * @param from within the stretch looked over; @param to likewise
 */
export function firstReaching(looks: Looks, target: number, from: number, to: number, fall = false): number | null {
  const { f, x, y } = looks
  const there = (value: number): boolean => (fall ? value <= target : value >= target)
  if (there(f(from))) return from
  const step = to < from ? -1 : 1
  let here = from
  for (let i = step > 0 ? firstAbove(x, from) : firstAbove(x, from) - 1; ; i += step) {
    const look = x[i]
    const last = look === undefined || (step > 0 ? look >= to : look <= to)
    const next = last ? to : look
    if (there(last ? f(to) : y[i]!)) {
      const root = findRoot(at => f(at) - target, here, next, POSITION_TOLERANCE)
      return root.found ? root.at : next
    }
    if (last) return null
    here = next
  }
}

/** Every place from `from` up to `to` where the function passes `target`, up or down, rising; a touch from below counts twice. */
export function crossings(looks: Looks, target: number, from: number, to: number): number[] {
  const { f, x, y } = looks
  const found: number[] = []
  let here = from
  let below = f(from) < target
  for (let i = firstAbove(x, from); here < to; i += 1) {
    const look = x[i]
    const last = look === undefined || look >= to
    const next = last ? to : look
    const stillBelow = (last ? f(to) : y[i]!) < target
    if (below !== stillBelow) {
      const root = findRoot(at => f(at) - target, here, next, POSITION_TOLERANCE)
      if (root.found) found.push(root.at)
    }
    here = next
    below = stillBelow
  }
  return found
}
