import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../core/corner/corner.ts'
import type { Corner, Terrain } from '../../core/plan/schema.ts'
import { ride } from '../../core/ride/ride.ts'
import { close } from '../close.ts'
import { plainCorner, plainStop } from '../core/plain-corner.ts'
import { straight } from '../core/ride/corners.ts'
import { odex } from './odex.ts'

/**
 * The same ride worked out again from its equations alone, with none of the program's own code but the plan's numbers: one spring, shock and stop
 * at the wheel, dampers straight in speed; hydraulic stop without dampers; E. Hairer and G. Wanner's ODEX at a tight tolerance.
 */
const area = (Math.PI / 4) * 0.03 ** 2
const squeezed = 1.6 * area * 0.1016
const corner: Corner = {
  ...plainCorner({ stop: plainStop({ gap: 0.06, shaftDiameter: 0.03, charge: 6e5, gasVolume: squeezed }) }),
  shock: { ...plainCorner().shock, compression: straight(1800), rebound: straight(3200) },
}
const model = cornerModel(corner)
const whoops = {
  id: '',
  name: '',
  kind: 'whoops',
  spacing: 6,
  height: 0.36,
  speed: 12,
  count: 3,
} as const satisfies Terrain
const drop = { id: '', name: '', kind: 'landing', drop: 1.3 } as const satisfies Terrain

const GRAVITY = 9.80665
const ATMOSPHERE = 101_325
const [sprung, unsprung] = [300, 50]
const { rate, freeLength, solidLength } = corner.springs.springs[0]!
const bump = 6 * 0.0254
const droop = -6 * 0.0254

function suspension(wheel: number, speed: number): number {
  const spring = rate * Math.min(freeLength - solidLength, Math.max(0, wheel - droop))
  const damper = speed > 0 ? 1800 * speed : 3200 * speed
  const pushed = Math.min(0.1016, wheel - 0.06)
  const stop =
    pushed < 0 ? 0 : area * ((6e5 + ATMOSPHERE) * (squeezed / (squeezed - area * pushed)) ** 1.4 - ATMOSPHERE)
  const steel = (past: number, into: number): number => (past > 0 ? Math.max(0, 2e7 * past + 2e4 * into) : 0)
  // Past the ends of the shock its spring goes on as it stands there.
  const held = Math.min(rate * (bump - droop), spring)
  return held + damper + stop + steel(wheel - bump, speed) - steel(droop - wheel, -speed)
}

function slopes(road: (time: number) => readonly [number, number]) {
  return (time: number, [zc = 0, vc = 0, zw = 0, vw = 0]: number[]): number[] => {
    const [height, rise] = road(time)
    const force = suspension(zw - zc, vw - vc)
    const { tire } = corner
    const ground = Math.max(0, tire.rate * (height - zw) + tire.damping * (rise - vw))
    return [vc, force / sprung - GRAVITY, vw, (ground - force) / unsprung - GRAVITY]
  }
}

const level = (): readonly [number, number] => [0, 0]
const waves = (time: number): readonly [number, number] => {
  const { spacing, height, speed, count } = whoops
  const turning = (2 * Math.PI * speed) / spacing
  const on = time - 1
  return on <= 0 || on >= (count * spacing) / speed
    ? [0, 0]
    : [(height / 2) * (1 - Math.cos(turning * on)), (height / 2) * turning * Math.sin(turning * on)]
}

/** ODEX, started anew every millisecond: it knows nothing of events. The state is that of the first time. */
function secondOpinion(road: typeof waves, start: readonly number[], times: readonly number[]): number[][] {
  const solver = odex(4)
  Object.assign(solver, { absoluteTolerance: 1e-9, relativeTolerance: 1e-9, maxSteps: 1e6, initialStepSize: 1e-6 })
  const f = slopes(road)
  let state = [...start]
  let before = times[0]!
  return times.map(time => {
    if (time > before) state = solver.solve(f, before, state, time).y
    before = time
    return state
  })
}

describe('a ride beside an independent solver', () => {
  it.each([
    ['over whoops, with touches and bottoming', whoops, waves],
    ['landing, with a touch and bottoming', drop, level],
  ])('%s', (_, terrain, road) => {
    const outcome = ride(model, terrain, { tolerance: 0.01, sample: 1e-3 })
    if (!outcome.ok) throw new Error(outcome.reason)
    expect(outcome.hits).toBeGreaterThan(0)
    expect(outcome.bottoms).toBeGreaterThan(0)
    const rest = (sprung * GRAVITY) / rate + droop
    const standing = -(350 * GRAVITY) / corner.tire.rate
    const fall = Math.sqrt(2 * GRAVITY * drop.drop)
    const start = terrain === drop ? [-droop, -fall, 0, -fall] : [standing - rest, 0, standing, 0]
    // A car at rest stays there: whoops begin after a second.
    const from = outcome.trace.time.findIndex(time => time >= (terrain === drop ? 0 : 1))
    const times = [...outcome.trace.time.subarray(from)].filter(time => time < 2.6)
    const other = secondOpinion(road, start, times)
    let worst = 0
    times.forEach((_time, i) => {
      worst = Math.max(worst, Math.abs(outcome.trace.wheel[from + i]! - (other[i]![2]! - other[i]![0]!)))
    })
    // A hundredth of a millimetre, as a ride promises; both have bottomed by then.
    close(worst, 0, { abs: 1e-5 }, 'wheel position apart')
    const deepest = Math.max(...other.map(([zc = 0, , zw = 0]) => zw - zc))
    expect(deepest).toBeGreaterThan(bump)
  })
})
