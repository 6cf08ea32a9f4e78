import { pchip } from '../numerics/pchip.ts'
import { findRoot } from '../numerics/roots.ts'
import type { Curve } from '../plan/schema.ts'

/** Force of a damper one way, over speed, and back. */
export interface DamperCurve {
  /** N at a speed of 0 or more, m/s; beyond the last row its slope goes on. */
  force(speed: number): number
  /** Speed, m/s, at which it holds back `force` N (0 or more); infinite when it never does. */
  speed(force: number): number
}

/** Finest speed told apart, m/s. */
const SPEED_TOLERANCE = 1e-9

/** The rows of a curve that rises from (0, 0), joined by a curve that never overshoots them; one without rows holds back nothing. */
export function damperCurve(curve: Curve): DamperCurve {
  if (curve.length < 2) return { force: () => 0, speed: () => Infinity }
  const shape = pchip(
    curve.map(row => row.velocity),
    curve.map(row => row.force),
  )
  const fastest = curve.at(-1)!
  const beyond = Math.max(0, shape.slopes.at(-1)!)
  const force = (speed: number): number =>
    speed <= fastest.velocity ? shape.at(speed).value : fastest.force + beyond * (speed - fastest.velocity)
  return {
    force,
    speed: wanted => {
      if (wanted >= fastest.force)
        return beyond > 0
          ? fastest.velocity + (wanted - fastest.force) / beyond
          : wanted > fastest.force
            ? Infinity
            : fastest.velocity
      const root = findRoot(speed => force(speed) - wanted, 0, fastest.velocity, SPEED_TOLERANCE)
      return root.found ? root.at : fastest.velocity
    },
  }
}
