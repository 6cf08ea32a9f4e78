import { cubicPieces } from '../numerics/cubic-pieces.ts'
import type { Curve } from '../plan/schema.ts'

/** Force of a damper one way, over speed, and back. */
export interface DamperCurve {
  /** N at a speed of 0 or more, m/s; beyond the last row its slope goes on. */
  force(speed: number): number
  /** Speed, m/s, at which it holds back `force` N (0 or more); infinite when it never does. */
  speed(force: number): number
}

/** The rows of a curve that rises from (0, 0), joined by a curve that never overshoots them; one without rows holds back nothing. */
export function damperCurve(curve: Curve): DamperCurve {
  if (curve.length < 2) return { force: () => 0, speed: () => Infinity }
  const shape = cubicPieces(
    curve.map(row => row.velocity),
    curve.map(row => row.force),
  )
  const { velocity: fastest, force: most } = curve.at(-1)!
  const beyond = Math.max(0, shape.lastSlope)
  return {
    force: speed => (speed <= fastest ? shape.value(speed) : most + beyond * (speed - fastest)),
    speed: wanted => {
      if (wanted < most) return shape.where(wanted)
      if (beyond > 0) return fastest + (wanted - most) / beyond
      return wanted > most ? Infinity : fastest
    },
  }
}
