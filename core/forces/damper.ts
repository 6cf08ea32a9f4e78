import { type CubicPieces, cubicPieces } from '../numerics/cubic-pieces.ts'
import type { Curve } from '../plan/schema.ts'

/** Force of a damper one way, over speed, and back. */
export interface DamperCurve {
  /** Up to `fastest`, m/s, its pieces; `most` is the force there, N. Beyond it and below 0 the slopes go on. */
  readonly shape: CubicPieces
  readonly fastest: number
  readonly most: number
  readonly firstSlope: number
  readonly lastSlope: number
  /** N at a speed of 0 or more, m/s; beyond the last row its slope goes on. Below 0 its first slope does: where a step tries what it never gets to. */
  force(speed: number): number
  /** The same for loops: what `force` gives at `at` is left in `held`. */
  at: number
  readonly held: number
  look(): void
  /** Speed, m/s, at which it holds back `force` N (0 or more); infinite when it never does. */
  speed(force: number): number
}

class Damper implements DamperCurve {
  at = 0
  held = 0
  readonly shape: CubicPieces
  readonly fastest: number
  readonly most: number
  readonly firstSlope: number
  readonly lastSlope: number

  constructor(curve: Curve) {
    this.shape = cubicPieces(
      curve.map(row => row.velocity),
      curve.map(row => row.force),
    )
    const { velocity, force } = curve.at(-1)!
    this.fastest = velocity
    this.most = force
    this.firstSlope = this.shape.firstSlope
    this.lastSlope = Math.max(0, this.shape.lastSlope)
  }

  force(speed: number): number {
    this.at = speed
    this.look()
    return this.held
  }

  look(): void {
    const { at } = this
    if (at <= 0) this.held = this.firstSlope * at
    else if (at > this.fastest) this.held = this.most + this.lastSlope * (at - this.fastest)
    else this.held = this.shape.value(at)
  }

  speed(wanted: number): number {
    const { fastest, most, lastSlope } = this
    if (wanted < most) return this.shape.where(wanted)
    if (lastSlope > 0) return fastest + (wanted - most) / lastSlope
    return wanted > most || most === 0 ? Infinity : fastest
  }
}

const NOTHING: Curve = [
  { velocity: 0, force: 0 },
  { velocity: 1, force: 0 },
]

/** The rows of a curve that rises from (0, 0), joined by a curve that never overshoots them; one without rows holds back nothing. */
export const damperCurve = (curve: Curve): DamperCurve => new Damper(curve.length < 2 ? NOTHING : curve)
