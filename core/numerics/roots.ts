/** A function and its slope at one place. */
export interface ValueAndSlope {
  readonly value: number
  readonly slope: number
}

export type Root =
  | { readonly found: true; readonly at: number; readonly width: number }
  | { readonly found: false; readonly reason: 'same sign at both ends' | 'not converged' }

/**
 * A root of f between a and b by Brent's method (R. P. Brent, Algorithms for Minimization without Derivatives, 1973, ch. 4).
 * @param f continuous; f(a) and f(b) of opposite sign, or zero
 * @param tolerance widest bracket to stop at, in the unit of a and b, more than 0
 */
export function findRoot(f: (x: number) => number, a: number, b: number, tolerance: number): Root {
  let previous = a
  let best = b
  let fPrevious = f(a)
  let fBest = f(b)
  if (fPrevious === 0) return { found: true, at: a, width: 0 }
  if (fBest === 0) return { found: true, at: b, width: 0 }
  if (fPrevious > 0 === fBest > 0) return { found: false, reason: 'same sign at both ends' }
  let contra = previous
  let fContra = fPrevious
  let step = best - previous
  let lastStep = step
  for (let round = 0; round < 200; round += 1) {
    if (fBest > 0 === fContra > 0) {
      contra = previous
      fContra = fPrevious
      step = best - previous
      lastStep = step
    }
    if (Math.abs(fContra) < Math.abs(fBest)) {
      previous = best
      best = contra
      contra = previous
      fPrevious = fBest
      fBest = fContra
      fContra = fPrevious
    }
    const least = 2 * Number.EPSILON * Math.abs(best) + tolerance / 2
    const half = (contra - best) / 2
    if (fBest === 0 || Math.abs(half) <= least) return { found: true, at: best, width: Math.abs(contra - best) }
    if (Math.abs(lastStep) < least || Math.abs(fPrevious) <= Math.abs(fBest)) {
      step = half
      lastStep = half
    } else {
      const ratio = fBest / fPrevious
      let over: number
      let under: number
      if (previous === contra) {
        over = 2 * half * ratio
        under = 1 - ratio
      } else {
        const q = fPrevious / fContra
        const r = fBest / fContra
        over = ratio * (2 * half * q * (q - r) - (best - previous) * (r - 1))
        under = (q - 1) * (r - 1) * (ratio - 1)
      }
      if (over > 0) under = -under
      over = Math.abs(over)
      if (2 * over < Math.min(3 * half * under - Math.abs(least * under), Math.abs(lastStep * under))) {
        lastStep = step
        step = over / under
      } else {
        step = half
        lastStep = half
      }
    }
    previous = best
    fPrevious = fBest
    best += Math.abs(step) > least ? step : half > 0 ? least : -least
    fBest = f(best)
  }
  return { found: false, reason: 'not converged' }
}

/** Finest place a wheel position is known to: far below any tape, far above rounding of numbers near 1 m. */
export const POSITION_TOLERANCE = 1e-12

/** Longest look a search takes, m: shorter than any feature of a linkage; turning points inside a look are found by their slope. */
const LOOK = 0.01

/**
 * The first place, going from `from` towards `to`, where a smooth function is at least `target`: `from` itself if it is so there,
 * null when it never is. Where the slope turns inside a step the turning point is looked at too, so that a peak that only just
 * reaches the target is not stepped over.
 * @param f value and slope over a wheel position in m
 */
export function firstReaching(
  f: (x: number) => ValueAndSlope,
  target: number,
  from: number,
  to: number,
): number | null {
  let here = from
  let now = f(from)
  if (now.value >= target) return from
  const count = Math.ceil(Math.abs(to - from) / LOOK)
  for (let i = 1; i <= count; i += 1) {
    const next = i === count ? to : from + ((to - from) * i) / count
    const then = f(next)
    let end = then.value >= target ? next : null
    if (end === null && now.slope > 0 !== then.slope > 0) {
      const turn = findRoot(x => f(x).slope, here, next, POSITION_TOLERANCE)
      if (turn.found && f(turn.at).value >= target) end = turn.at
    }
    if (end !== null) {
      const root = findRoot(x => f(x).value - target, here, end, POSITION_TOLERANCE)
      return root.found ? root.at : end
    }
    here = next
    now = then
  }
  return null
}

/** Every place between `from` and `to` (rising) where a smooth function passes `target`, rising; as finely as `firstReaching` looks. */
export function crossings(f: (x: number) => ValueAndSlope, target: number, from: number, to: number): number[] {
  const found: number[] = []
  const down = (x: number): ValueAndSlope => {
    const { value, slope } = f(x)
    return { value: -value, slope: -slope }
  }
  let here = from
  let below = f(from).value < target
  for (let i = 0; i < 100; i += 1) {
    const next = below ? firstReaching(f, target, here, to) : firstReaching(down, -target, here, to)
    if (next === null || next >= to) break
    if (next > from) found.push(next)
    here = Math.max(next, here + 1e-9)
    below = f(here).value < target
  }
  return found
}
