import { describe, it } from 'vitest'
import { cornerModel } from '../../core/corner/corner.ts'
import type { Corner } from '../../core/plan/schema.ts'
import { ride } from '../../core/ride/ride.ts'
import { close } from '../close.ts'
import { linearCorner, straight } from '../core/ride/corners.ts'

const GRAVITY = 9.80665

/**
 * A mass that falls on a spring and damper: the tire, under a corner that cannot move. Nearly all of the mass is wheel, so that the
 * kilogram it carries hardly gives.
 */
function block(mass: number, rate: number, damping: number): Corner {
  const corner = linearCorner({ sprung: 1e-3 * mass, unsprung: 0.999 * mass, spring: 1000, damper: 0, tire: rate })
  return { ...corner, tire: { radius: 0.4, rate, damping }, clearance: { bump: 0, droop: 0 } }
}

function landed(corner: Corner, drop: number) {
  const outcome = ride(
    cornerModel(corner),
    { id: '', name: '', kind: 'landing', drop },
    { sample: 2e-4, tolerance: 0.1 },
  )
  if (!outcome.ok) throw new Error(outcome.reason)
  return outcome
}

/** Where a list has its largest value. */
const top = (values: Float64Array): number => values.reduce((best, value, i) => (value > values[best]! ? i : best), 0)

describe('a mass dropped on a spring', () => {
  /** δ = δst·(1 + √(1 + 2h/δst)): any text on strength of materials, such as J. M. Gere, Mechanics of Materials, ch. 2. 500 kg, 30 N/mm, half a metre. */
  it('goes as deep and pushes as hard as the closed form says', () => {
    const st = (500 * GRAVITY) / 30_000
    const deep = st * (1 + Math.sqrt(1 + 1 / st))
    close(deep, 0.59951545, { rel: 1e-8 })
    const { trace } = landed(block(500, 30_000, 0), 0.5)
    close(-Math.min(...trace.chassis), deep, { rel: 1e-4 })
    close(Math.max(...trace.tireForce), 17_985.46, { rel: 1e-4 })
  })

  it('let go just touching, goes exactly twice as deep as it would stand', () => {
    const { trace } = landed(block(500, 30_000, 0), 0)
    close(-Math.min(...trace.chassis), (2 * 500 * GRAVITY) / 30_000, { rel: 1e-4 })
  })

  /** The same with a damper of 2000 N·s/m: the damped oscillator's closed form from the touch on, ζ = 0.2582. */
  it('and damper goes as deep, and feels its largest force as early, as the closed form says', () => {
    const { trace } = landed(block(500, 30_000, 2000), 0.5)
    close(trace.tireForce[0]!, 6263.114, { rel: 1e-3 })
    close(Math.max(...trace.tireForce), 13_505.674, { rel: 1e-3 })
    close(trace.time[top(trace.tireForce)]!, 0.160164, { abs: 2e-3 })
    close(-Math.min(...trace.chassis), 0.41282935, { rel: 1e-3 })
    close(trace.time[top(trace.chassis.map(height => -height))]!, 0.229961, { abs: 1e-3 })
  })

  /** The same again with the suspension as the spring and the damper, on a wheel of a thousandth of the mass that takes its own small part. */
  it('lands the same on its suspension as on its tire', () => {
    const st = (500 * GRAVITY) / 30_000
    const plain = linearCorner({ sprung: 500, unsprung: 0.5, spring: 30_000, damper: 2000, tire: 1e7, travel: 0.9 })
    const corner: Corner = {
      ...plain,
      shock: { ...plain.shock, stroke: 0.9 + st, showing: 0.9, compression: straight(2000), rebound: straight(2000) },
      springs: { ...plain.springs, preload: 0 },
      tire: { radius: 0.4, rate: 1e7, damping: 3000 },
    }
    const { trace } = landed(corner, 0.5)
    close(Math.max(...trace.wheel) + st, 0.41282935, { rel: 4e-3 })
    close(Math.max(...trace.suspensionForce.subarray(20)), 13_505.674, { rel: 4e-3 })
  })
})

/**
 * Coefficient of restitution of a spring and damper that lets go when it pushes no more, not when it is as long again: the half wave ends
 * early, at tan ωt = −2ζ√(1 − ζ²)/(1 − 2ζ²). (T. Schwager and T. Pöschel, Coefficient of restitution and linear-dashpot model revisited, Granular Matter 9 (2007) 465.)
 */
const restitution = (zeta: number): number => {
  const root = Math.sqrt(1 - zeta * zeta)
  return Math.exp((-zeta / root) * (Math.PI - Math.atan2(2 * zeta * root, 1 - 2 * zeta * zeta)))
}

/** The same of one that pushes for half a wave from no force to no force: 0.729, 0.527, 0.163. (The same paper, after N. V. Brilliantov et al., 1996.) */
const ofHalfWave = (zeta: number): number => Math.exp((-Math.PI * zeta) / Math.sqrt(1 - zeta * zeta))

describe('a mass that bounces', () => {
  const mass = 500
  // So stiff that gravity has no say while it touches.
  const rate = 1e9
  const bouncing = (zeta: number, drop: number) => landed(block(mass, rate, 2 * zeta * Math.sqrt(rate * mass)), drop)

  it.each([
    [0.1, 0.7440794],
    [0.2, 0.57174003],
    [0.5, 0.29843606],
  ])(
    'with a damping ratio of %d comes off with its share of the speed: a tire that never pulls lets go at a force of zero',
    (zeta, share) => {
      close(restitution(zeta), share, { rel: 1e-7 })
      const { trace } = bouncing(zeta, 2)
      const apex = Math.max(...trace.chassis.subarray(10))
      // The part that is carried takes a little for itself.
      close(Math.sqrt(apex / 2), share, { rel: 6e-3 })
    },
  )

  /** Heights between touches, m: the first after the drop. */
  const apexes = ({ trace }: ReturnType<typeof landed>): { touches: number[]; heights: number[] } => {
    const { tireForce, chassis } = trace
    const again = [...tireForce.keys()].filter(i => i > 0 && tireForce[i]! > 0 && tireForce[i - 1]! === 0)
    const touches = [0, ...again]
    const heights = again.map((at, n) => Math.max(...chassis.subarray(touches[n]! + 15, at)))
    return { touches: touches.map(i => trace.time[i]!), heights }
  }

  // Met in flight, k·deflection + c·rate begins at a force of zero as well, so the two forces of zero are half a wave apart.
  it.each([
    [0.1, 0.72924761, 6e-3],
    [0.2, 0.5266206, 6e-3],
    [0.5, 0.16303353, 3e-2],
  ])('with a damping ratio of %d and met in flight keeps what half a wave leaves', (zeta, share, rel) => {
    close(ofHalfWave(zeta), share, { rel: 1e-7 })
    const [first, second] = apexes(bouncing(zeta, 2)).heights
    // The second touch of the one that keeps least is so slow that gravity has a little say.
    close(Math.sqrt(second! / first!), share, { rel })
  })

  /**
   * A ball let go from a metre that keeps 0.8 of its speed: tₙ = t₁·(1 + 2e(1 − eⁿ⁻¹)/(1 − e)), t₁ = √(2h/g), derived in any text on mechanics.
   * A landing begins at the touch and keeps more, so it is dropped lower by as much.
   */
  it('keeps time like a ball', () => {
    let [low, high] = [0.01, 0.5]
    for (let i = 0; i < 60; i += 1) {
      const middle = (low + high) / 2
      if (ofHalfWave(middle) > 0.8) low = middle
      else high = middle
    }
    const { touches, heights } = apexes(bouncing(low, (0.8 / restitution(low)) ** 2))
    // A touch lasts two milliseconds, and the kilogram that is carried takes 0.05 % of the speed each time.
    const wanted = [1.174161964955, 1.752210932317, 2.214650106207, 2.584601445319]
    for (const [i, time] of wanted.entries())
      close(touches[i + 1]! + 0.451600755752, time, { abs: 2.5e-3 * (i + 1) }, `bounce ${i + 2}`)
    close(heights[2]!, 0.262144, { rel: 4e-3 })
  })
})
