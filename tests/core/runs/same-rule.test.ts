import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import { LEFT_BUMP, Meetings } from '../../../core/ride/meetings.ts'
import { ride } from '../../../core/ride/ride.ts'
import type { Course } from '../../../core/ride/terrain.ts'
import { rideAsRun } from '../../../core/runs/compare.ts'
import { runFigures } from '../../../core/runs/figures.ts'
import { close } from '../../close.ts'
import { plainStop } from '../plain-corner.ts'
import { dampedCorner, straight } from '../ride/corners.ts'

const named = { id: '', name: '' }
const courses: readonly (readonly [string, Course])[] = [
  ['whoops', { ...named, kind: 'whoops', spacing: 5, height: 0.25, speed: 7, count: 5 }],
  ['a hard landing', { ...named, kind: 'landing', drop: 4 }],
  ['rough ground', { ...named, kind: 'rough', isoClass: 'F', speed: 15, duration: 8, seed: 4 }],
]
const stops = [
  ['a stop that comes out at once', plainStop()],
  ['a stop whose rebound holds it back', plainStop({ compression: straight(1000), rebound: straight(60_000) })],
] as const

describe('a recorded run is counted by the rule of a ride', () => {
  it.each(courses.flatMap(([over, course]) => stops.map(([on, stop]) => ({ over, on, course, stop }))))(
    'over $over, on $on',
    ({ course, stop }) => {
      const model = cornerModel(dampedCorner({ stop }))
      const driven = ride(model, course, { sample: 5e-4 })
      if (!driven.ok) throw new Error(driven.reason)
      expect(driven.hits).toBeGreaterThan(0)
      const run = runFigures(model, rideAsRun(driven), [])
      expect({ hits: run.hits, bottoms: run.bottoms }).toEqual({ hits: driven.hits, bottoms: driven.bottoms })
      // Rows half a millisecond apart: each meeting and parting is known to that.
      close(run.share.onStop, driven.share.onStop, { abs: (driven.hits * 1e-3) / driven.duration })
      close(run.stopSpeedMax, driven.stopSpeedMax, { rel: 0.05 })
      for (const [i, hit] of run.events.entries()) {
        const { time, stillIn, deepest } = driven.events[i]!
        close(hit.time, time, { abs: 1e-3 }, `time of hit ${i}`)
        close(hit.stillIn, stillIn, { abs: 1.5e-3 }, `hit ${i}, still in`)
        close(hit.deepest, deepest, { abs: 2e-3 }, `hit ${i}, deepest`)
      }
    },
  )

  it('with some that bottom, and some that meet a stop still in', () => {
    const slow = cornerModel(dampedCorner({ stop: stops[1][1] }))
    const ridden = courses.map(([, course]) => ride(slow, course))
    expect(ridden.some(each => each.ok && each.bottoms > 0)).toBe(true)
    expect(ridden.some(each => each.ok && each.events.some(({ stillIn }) => stillIn > 5e-3))).toBe(true)
  })
})

describe('meetings', () => {
  const bumps = (...ways: readonly number[]) => {
    const meetings = new Meetings(LEFT_BUMP)
    for (const way of ways) {
      meetings.apart(way)
      if (way <= 0) meetings.meet()
    }
    return meetings.count
  }
  it('are new only after they were far enough apart', () => {
    expect(bumps(0.1, 0, 0.004, 0, 0.1)).toBe(1)
    expect(bumps(0.1, 0, 0.006, 0, 0.1)).toBe(2)
    expect(bumps(0.1, 0.05)).toBe(0)
  })
  it('that began before anybody looked are not counted', () => {
    const meetings = new Meetings(LEFT_BUMP)
    meetings.begin(true)
    expect([meetings.meet(), meetings.count]).toEqual([false, 0])
  })
})
