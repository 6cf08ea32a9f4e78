import { polyline } from '../numerics/polyline.ts'
import type { Springs } from '../plan/schema.ts'

/** Springs in series on one coilover, and what they do at each compression of the whole pack. */
export interface SpringPack {
  /** Force in every spring, N, at a pack compression in m; 0 when loose, the bind force beyond bind. */
  force(compression: number): number
  /** Energy in the springs, J; 0 when loose. */
  energy(compression: number): number
  /** N/m; 0 when loose or bound; where it breaks, that of the side asked for. */
  rate(compression: number, side?: 'below' | 'above'): number
  /** Compression of each spring, m, listed as in the plan. */
  each(compression: number): readonly number[]
  /** Compressions where the rate breaks, rising; the first is 0 (loose below), the last the bind. */
  readonly corners: readonly number[]
  /** Pack compression at which no spring can move any more. */
  readonly bind: number
  /** Pack compression at which the springs above the main stop moving; null for a single spring. */
  readonly crossover: number | null
}

/** Corners closer than this are one, m: between two a rounding apart there is no rate to speak of. */
const NEAR = 1e-12

/** What is left of one spring between free and solid, m. */
export const springTravel = (spring: Springs['springs'][number]): number => spring.freeLength - spring.solidLength

/**
 * Springs in series carry one force; each stops at its solid length; those above the main (the last) also stop, together, once they have
 * compressed `crossover.gap` beyond what they were at full extension of the shock. So force is piecewise linear in compression: the corners
 * are found in order of force, nothing is iterated. Series springs: 1/k = Σ 1/kᵢ (any machine-design text, such as J. Y. Wong,
 * or V. B. Bhandari, Design of Machine Elements, ch. 10). Compressions in m, 0 or more; rates in N/m.
 */
export function springPack({ springs, preload, crossover }: Springs): SpringPack {
  const travel = springs.map(springTravel)
  const bindForce = springs.map((spring, i) => spring.rate * travel[i]!)
  const last = springs.length - 1
  const aboveAt = (force: number): number => {
    let sum = 0
    for (let i = 0; i < last; i += 1) sum += Math.min(force / springs[i]!.rate, travel[i]!)
    return sum
  }
  const freely = (force: number): number => aboveAt(force) + Math.min(force / springs[last]!.rate, travel[last]!)
  const byForce = [0, ...bindForce].sort((a, b) => a - b)
  /** Force at which a sum that rises piecewise linearly with force reaches an amount; infinite when it never does. */
  const forceAt = (sum: (force: number) => number, amount: number): number => {
    for (let i = 1; i < byForce.length; i += 1) {
      const [low, high] = [byForce[i - 1]!, byForce[i]!]
      const [atLow, atHigh] = [sum(low), sum(high)]
      if (amount <= atHigh && atHigh > atLow)
        return low + ((high - low) * Math.max(0, amount - atLow)) / (atHigh - atLow)
    }
    return Infinity
  }

  const forceExtended = preload > 0 ? Math.min(forceAt(freely, preload), byForce.at(-1)!) : 0
  const aboveBind = Math.max(0, ...bindForce.slice(0, last))
  const lockForce =
    last === 0
      ? Infinity
      : crossover === null
        ? aboveBind
        : Math.min(aboveBind, forceAt(aboveAt, aboveAt(forceExtended) + crossover.gap))
  const compressionAt = (force: number): number =>
    aboveAt(Math.min(force, lockForce)) + Math.min(force / springs[last]!.rate, travel[last]!)

  const lastForce = last === 0 ? bindForce[0]! : Math.max(lockForce, bindForce[last]!)
  // Those above that have not bound when they lock never do.
  const breaks = bindForce.filter((force, i) => i === last || force < lockForce)
  const forces = [...new Set([0, ...breaks, lockForce])].filter(force => force <= lastForce).sort((a, b) => a - b)
  const points: { compression: number; force: number }[] = []
  for (const force of forces) {
    const compression = compressionAt(force)
    const before = points.at(-1)
    if (before !== undefined && compression - before.compression < NEAR) continue
    points.push({ compression, force })
  }
  const curve = polyline(
    points.map(point => point.compression),
    points.map(point => point.force),
  )
  const force = (compression: number): number => curve.at(compression).value
  return {
    force,
    energy: compression => (compression <= 0 ? 0 : curve.integral(compression)),
    rate: (compression, side = 'above') => curve.at(compression, side).slope,
    each: compression => {
      const now = force(compression)
      return springs.map((spring, i) =>
        Math.min((i === last ? now : Math.min(now, lockForce)) / spring.rate, travel[i]!),
      )
    },
    corners: curve.x,
    bind: curve.x.at(-1)!,
    crossover: last === 0 ? null : compressionAt(lockForce),
  }
}
