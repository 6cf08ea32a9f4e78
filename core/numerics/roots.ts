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
 * @param fAtA, fAtB f(a) and f(b), where they are known
 */
export function findRoot(
  f: (x: number) => number,
  a: number,
  b: number,
  tolerance: number,
  fAtA = f(a),
  fAtB = f(b),
): Root {
  let previous = a
  let best = b
  let fPrevious = fAtA
  let fBest = fAtB
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
