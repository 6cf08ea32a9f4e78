import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../core/corner/corner.ts'
import type { Terrain } from '../../core/plan/schema.ts'
import { ride } from '../../core/ride/ride.ts'
import { close } from '../close.ts'
import { odex } from './odex.ts'
import { bump, corner, type Ground, landing, level, slopesOver, standing, waves, whoops } from './ride-equations.ts'

/** E. Hairer and G. Wanner's ODEX, started anew at every time: it knows nothing of events. The state is that of the first time. */
function secondOpinion(ground: Ground, start: readonly number[], times: readonly number[]): number[][] {
  const solver = odex(4)
  Object.assign(solver, { absoluteTolerance: 1e-9, relativeTolerance: 1e-9, maxSteps: 1e6, initialStepSize: 1e-6 })
  const slopes = slopesOver(ground)
  let state = [...start]
  let before = times[0]!
  return times.map(time => {
    if (time > before) state = solver.solve(slopes, before, state, time).y
    before = time
    return state
  })
}

const rough = whoops(0.36, 3)
const drop = { id: '', name: '', kind: 'landing', drop: 1.3 } as const satisfies Terrain

describe('a ride beside an independent solver', () => {
  it.each([
    // A car at rest stays there: whoops begin after a second.
    ['over whoops, with touches and bottoming', rough, waves(rough), standing(), 1],
    ['landing, with a touch and bottoming', drop, level, landing(drop.drop), 0],
  ])('%s', (_, terrain, ground, start, from) => {
    const outcome = ride(cornerModel(corner), terrain, { tolerance: 0.01, sample: 1e-3 })
    if (!outcome.ok) throw new Error(outcome.reason)
    expect(outcome.hits).toBeGreaterThan(0)
    expect(outcome.bottoms).toBeGreaterThan(0)
    const { time, wheel } = outcome.trace
    const first = time.findIndex(at => at >= from)
    const times = [...time.subarray(first)].filter(at => at < 2.6)
    const other = secondOpinion(ground, start, times).map(([zc = 0, , zw = 0]) => zw - zc)
    const apart = other.map((position, i) => Math.abs(wheel[first + i]! - position))
    // A hundredth of a millimetre, as a ride promises; both have bottomed by then.
    close(Math.max(...apart), 0, { abs: 1e-5 }, 'wheel position apart')
    expect(Math.max(...other)).toBeGreaterThan(bump)
  })
})
