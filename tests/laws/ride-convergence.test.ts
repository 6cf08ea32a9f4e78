import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../core/corner/corner.ts'
import type { Terrain } from '../../core/plan/schema.ts'
import { ride } from '../../core/ride/ride.ts'
import { close } from '../close.ts'
import { plainStop } from '../core/plain-corner.ts'
import { dampedCorner, straight } from '../core/ride/corners.ts'
import { fixedSteps } from '../core/ride/fixed-steps.ts'

/** Time between places compared, s. */
const SAMPLE = 4e-3

const stop = plainStop({ gap: 0.04, charge: 5e5, compression: straight(800), rebound: straight(3000) })
const model = cornerModel(dampedCorner({ stop }))
const whoops: Terrain = { id: '', name: '', kind: 'whoops', spacing: 6, height: 0.2, speed: 9, count: 5 }
const landing: Terrain = { id: '', name: '', kind: 'landing', drop: 0.4 }

const apart = (a: ArrayLike<number>, b: ArrayLike<number>): number => {
  let worst = 0
  for (let i = 0; i < Math.min(a.length, b.length); i += 1) worst = Math.max(worst, Math.abs(a[i]! - b[i]!))
  return worst
}

function adaptive(terrain: Terrain, tolerance: number) {
  const outcome = ride(model, terrain, { tolerance, sample: SAMPLE })
  if (!outcome.ok) throw new Error(outcome.reason)
  return { wheel: outcome.trace.wheel, evaluations: outcome.evaluations, hits: outcome.hits }
}

describe.each([
  ['whoops', whoops],
  ['landing', landing],
] as const)('how a ride converges: %s', (_, terrain) => {
  const exact = adaptive(terrain, 1e-5)

  it('meets the stop on its way', () => expect(exact.hits).toBeGreaterThan(0))

  it('is good to a few hundredths of a millimetre as it is, and nearly as much better as it is asked to be tighter', () => {
    const [asIs, tight, tighter] = [1, 0.1, 0.01].map(tolerance => adaptive(terrain, tolerance))
    close(apart(asIs!.wheel, exact.wheel), 0, { abs: 3e-5 })
    close(apart(tight!.wheel, exact.wheel), 0, { abs: 1e-5 })
    close(apart(tighter!.wheel, exact.wheel), 0, { abs: 1e-6 })
    expect(tighter!.evaluations).toBeLessThan(4 * asIs!.evaluations)
  })

  /** Even steps of order 4 lose their order at every touch, which they see only at the end of a step. */
  it('needs no more than a tenth of the evaluations of even steps that come as near', () => {
    const asIs = adaptive(terrain, 1)
    const error = apart(asIs.wheel, exact.wheel)
    const lengths = [1e-3, 5e-4, 2e-4, 1e-4, 5e-5, 2e-5]
    const rows = lengths.map(length => ({ length, ...fixedSteps(model, terrain, length, SAMPLE) }))
    const near = rows.find(({ wheel }) => apart(wheel, exact.wheel) <= error)
    const needed = near?.evaluations ?? rows.at(-1)!.evaluations
    expect(asIs.evaluations * 10).toBeLessThanOrEqual(needed)
    // And they do come nearer: the two agree on where the ride goes.
    close(apart(rows.at(-1)!.wheel, exact.wheel), 0, { abs: 5e-5 })
  })
})
