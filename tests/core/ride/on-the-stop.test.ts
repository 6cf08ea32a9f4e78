import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import { restingPosition } from '../../../core/corner/static-position.ts'
import type { Terrain } from '../../../core/plan/schema.ts'
import type { Ride, RideOutcome } from '../../../core/ride/results.ts'
import { ride } from '../../../core/ride/ride.ts'
import { StopInMotion } from '../../../core/ride/stop-in-motion.ts'
import { close } from '../../close.ts'
import { plainStop } from '../plain-corner.ts'
import { dampedCorner, straight } from './corners.ts'

const arrived = (outcome: RideOutcome): Ride => {
  if (!outcome.ok) throw new Error(outcome.reason)
  return outcome
}
const whoops = (height: number, speed = 7): Terrain => ({
  id: '',
  name: '',
  kind: 'whoops',
  spacing: 5,
  height,
  speed,
  count: 5,
})

/** Force of a stop on a pad that far in and that fast, its dampers those of the way the pad moves. */
function force(stop: StopInMotion, travel: number, speed: number, closed = true): number {
  Object.assign(stop, { travel, speed })
  stop.look(speed >= 0, closed)
  return stop.held
}

describe('a stop in motion', () => {
  it('pushes with its gas and its damping, and comes out as fast as that holds back its gas', () => {
    const stop = new StopInMotion(plainStop({ compression: straight(1000), rebound: straight(4000) }))
    close(force(stop, 0.02, 0.5) - stop.push(0.02), 500, { rel: 1e-9 })
    close(stop.push(0.02) - force(stop, 0.02, -0.5), 2000, { rel: 1e-9 })
    const speed = stop.extensionSpeed(0.02)
    close(force(stop, 0.02, -speed), 0, { abs: 1e-6 })
    expect(stop.holdsBack).toBe(true)
  })

  it('without rebound of its own it never stays behind', () => {
    const stop = new StopInMotion(plainStop())
    expect([stop.holdsBack, stop.extensionSpeed(0.03)]).toEqual([false, 100])
  })

  it('past its end pushes as at its end, and foam no more than its last row', () => {
    const hydraulic = new StopInMotion(plainStop())
    expect(hydraulic.push(1)).toBe(hydraulic.push(4 * 0.0254))
    const curve = [
      { deflection: 0, force: 0 },
      { deflection: 0.03, force: 2000 },
    ]
    const foam = new StopInMotion({ kind: 'elastomer', gap: 0, curve })
    expect([foam.push(0.1), foam.step]).toEqual([2000, 0])
  })

  it('goes on smoothly where a step tries what the ride never gets to', () => {
    const foam = new StopInMotion({
      kind: 'elastomer',
      gap: 0,
      curve: [0, 0.01, 0.03].map(deflection => ({ deflection, force: 1e5 * deflection })),
    })
    for (const stop of [foam, new StopInMotion(plainStop({ compression: straight(1000), rebound: straight(4000) }))])
      for (const place of [0, stop === foam ? 0.03 : 4 * 0.0254]) {
        const d = 1e-6
        const [before, there, after] = [-d, 0, d].map(by => force(stop, place + by, 0, false))
        close(after! - there!, there! - before!, { rel: 1e-3 })
      }
    // Nor does its damping bend where the pad turns, until it has turned.
    const stop = new StopInMotion(plainStop({ compression: straight(1000), rebound: straight(4000) }))
    Object.assign(stop, { travel: 0.02, speed: -0.1 })
    stop.look(true, false)
    close(stop.push(0.02) - stop.held, 100, { rel: 1e-9 })
  })
})

describe('a car parked on the step of its stop', () => {
  // The springs carry 2600 N of 2942; the stop, met at ride height, pushes 2795 N at once.
  const corner = dampedCorner({ stop: plainStop({ gap: 0 }) })
  const parked = { ...corner, springs: { ...corner.springs, preload: 2600 / (200 * 175.126836) - 6 * 0.0254 } }
  const model = cornerModel(parked)

  it('rests at the step over level ground, its stop carrying what the springs leave over', () => {
    expect(restingPosition(model, 300 * 9.80665, 0, 'fast')).toBe(0)
    const { share, trace, hits, stopForceMax, work } = arrived(ride(model, whoops(0)))
    close(share.onStop, 1, { rel: 1e-9 })
    expect(hits).toBe(0)
    for (const force of [stopForceMax, trace.stopForce[0]!, trace.stopForce.at(-1)!])
      close(force, 300 * 9.80665 - 2600, { rel: 1e-3 })
    close(Math.max(...trace.wheel.map(Math.abs)), 0, { abs: 1e-9 })
    close(work.stop, 0, { abs: 1e-6 })
  })

  it('stays there on ripples the step can carry, and comes back to rest after larger ones, in a bounded number of steps', () => {
    const ripples = arrived(ride(model, whoops(0.004, 3)))
    expect(Math.max(...ripples.trace.wheel.map(Math.abs))).toBeLessThan(1e-6)
    const profile = { distance: [0, 1, 2, 30], height: [0, 0.1, 0, 0] }
    const larger = arrived(ride(model, { id: '', kind: 'measured', profile, speed: 4 }))
    expect(larger.hits).toBeGreaterThan(2)
    expect(larger.wheelMin).toBeLessThan(-0.01)
    expect(larger.hits).toBeLessThan(300)
    expect(larger.steps).toBeLessThan(3000)
    close(larger.trace.wheel.at(-1)!, 0, { abs: 1e-6 })
    // The car still heaves on its tire, which hardly damps.
    close(larger.trace.stopForce.at(-1)!, 300 * 9.80665 - 2600, { rel: 0.05 })
  })
})

describe('hits', () => {
  it('are told with their speed, how deep they went, and what the stop took and gave back', () => {
    const without = arrived(ride(cornerModel(dampedCorner()), whoops(0.25)))
    expect(without.hits).toBe(without.events.length)
    expect(without.hits).toBeGreaterThan(2)
    for (const { speed, deepest, taken, returned, stillIn, time, until } of without.events) {
      expect(speed).toBeGreaterThan(0)
      expect(deepest).toBeGreaterThan(0)
      expect(until).toBeGreaterThan(time)
      // Gas without damping gives back all it took; the books are good to a thousandth.
      close(returned, taken, { rel: 2e-3, abs: 1e-3 })
      expect(stillIn).toBe(0)
    }
    expect(without.stopSpeedMax).toBe(Math.max(...without.events.map(({ speed }) => speed)))
    const stop = plainStop({ rebound: straight(8000) })
    const damped = arrived(ride(cornerModel(dampedCorner({ stop })), whoops(0.25)))
    const share = (ridden: Ride): number =>
      ridden.events.reduce((sum, { returned }) => sum + returned, 0) /
      ridden.events.reduce((sum, { taken }) => sum + taken, 0)
    expect(share(damped)).toBeLessThan(0.8)
  })

  it('find the stop still in when it comes out too slowly, and then meet it later', () => {
    const slow = plainStop({ rebound: straight(60_000) })
    const { events } = arrived(ride(cornerModel(dampedCorner({ stop: slow })), whoops(0.25, 9)))
    const still = events.filter(({ stillIn }) => stillIn > 0.005)
    expect(still.length).toBeGreaterThan(0)
    for (const { stillIn, deepest } of still) expect(deepest).toBeGreaterThan(stillIn)
  })
})
