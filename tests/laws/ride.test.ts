import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../core/corner/corner.ts'
import type { Terrain } from '../../core/plan/schema.ts'
import type { MeasuredCourse } from '../../core/ride/measured-road.ts'
import type { Ride, RideOutcome } from '../../core/ride/results.ts'
import { ride } from '../../core/ride/ride.ts'
import { type Course, roadOf } from '../../core/ride/terrain.ts'
import { allClose, close } from '../close.ts'
import { dampedCorner, linearCorner } from '../core/ride/corners.ts'
import { arbitraryCorner } from './arbitrary-corner.ts'
import { arbitraryTerrain } from './arbitrary-course.ts'

const runs = { numRuns: 30, seed: 47, endOnFailure: true }
function arrived(outcome: RideOutcome): Ride {
  if (!outcome.ok) throw new Error(`${outcome.reason} at ${outcome.time} s`)
  return outcome
}

/** What the road put in and the car brought along, less what everything took. */
const unaccounted = ({ work, broughtAlong }: Ride): number =>
  broughtAlong + work.road - work.tire - work.damper - work.springs - work.stop - work.ends

describe('a ride of any corner over any terrain', () => {
  it('gets to its end, in numbers, its shares whole and its peaks in order', () => {
    fc.assert(
      fc.property(arbitraryCorner(), arbitraryTerrain, (corner, terrain) => {
        const model = cornerModel(corner)
        const ridden = arrived(ride(model, terrain))
        const {
          share,
          work,
          trace,
          histogram,
          events,
          contactDependent: _,
          ok: __,
          dampingAssumed: ___,
          ...figures
        } = ridden
        const numbers = [
          ...Object.values(share),
          ...Object.values(work),
          ...Object.values(figures),
          ...events.flatMap(({ bottomed: ____, ...hit }) => Object.values(hit)),
        ]
        expect(numbers.filter(value => !Number.isFinite(value))).toEqual([])
        for (const moments of Object.values(trace)) expect(moments.every(Number.isFinite)).toBe(true)
        close(share.droop + share.coilover + share.engagement, 1, { rel: 1e-9 })
        close(
          histogram.reduce((sum, bar) => sum + bar, 0),
          1,
          { rel: 1e-9 },
        )
        for (const part of Object.values(share)) {
          expect(part).toBeGreaterThanOrEqual(0)
          expect(part).toBeLessThanOrEqual(1 + 1e-9)
        }
        expect(ridden.wheelMax).toBeGreaterThanOrEqual(ridden.wheelMin)
        expect(ridden.chassisAccelMax).toBeGreaterThanOrEqual(ridden.chassisAccelRms)
        expect(ridden.stopForceMax).toBeGreaterThanOrEqual(0)
        expect(trace.tireForce.every(force => force >= 0)).toBe(true)
        expect(trace.stopForce.every(force => force >= 0)).toBe(true)
        if (corner.stop === null) expect([ridden.hits, share.onStop, ridden.stopForceMax]).toEqual([0, 0, 0])
        if (ridden.bottoms === 0) expect(ridden.wheelMax).toBeLessThan(model.bump + 1e-4)
      }),
      runs,
    )
  })

  /** Works are added up along steps as long as positions allow: good to a thousandth of what passes through, and ten times tighter to ten times less. */
  it.each([
    [1, 1e-3, 0.5],
    [0.1, 1e-4, 0.05],
  ])(
    'has balanced books, tolerance %d: road work and what was brought along are all stored or dissipated',
    (tolerance, rel, abs) => {
      fc.assert(
        fc.property(arbitraryCorner(), arbitraryTerrain, (corner, terrain) => {
          const model = cornerModel(corner)
          const sample = roadOf(terrain, corner.tire.radius).duration / 500
          const ridden = arrived(ride(model, terrain, { tolerance, sample }))
          const { work, broughtAlong, trace } = ridden
          const through = Object.values(work).reduce((sum, part) => sum + Math.abs(part), Math.abs(broughtAlong))
          close(unaccounted(ridden), 0, { abs: rel * through + abs })
          const [from, to] = [trace.wheel[0]!, trace.wheel.at(-1)!]
          const held = cornerModel({ ...corner, stop: null, clearance: { bump: model.bump, droop: -model.droop } })
          // Past the ends of the travel springs go on as they stand there; the corner itself says nothing of that.
          if (Math.min(from, to) > model.droop && Math.max(from, to) < model.bump)
            close(work.springs, held.energy(to, 'fast') - held.energy(from, 'fast'), { abs: rel * through + abs })
          expect(work.damper).toBeGreaterThan(-abs)
          for (const { taken, returned } of ridden.events) {
            expect(returned).toBeLessThanOrEqual(taken + rel * through + abs)
            expect(taken).toBeGreaterThanOrEqual(0)
          }
        }),
        runs,
      )
    },
  )
})

describe('a ride', () => {
  const level: MeasuredCourse = {
    id: '',
    kind: 'measured',
    profile: { distance: [0, 20], height: [0.3, 0.3] },
    speed: 5,
  }

  /** To a tenth of a millimetre, and to what the edges of watches let go (modes.ts). */
  it('over level ground stays where the car stands, whatever holds it there', () => {
    fc.assert(
      fc.property(arbitraryCorner(), corner => {
        const { wheelMax, wheelMin, trace, chassisAccelMax } = arrived(ride(cornerModel(corner), level))
        expect(wheelMax - wheelMin).toBeLessThan(1e-4)
        expect(Math.max(...trace.chassis) - Math.min(...trace.chassis)).toBeLessThan(5e-4)
        expect(chassisAccelMax).toBeLessThan(0.5)
      }),
      runs,
    )
  })

  it('over a road turned over is turned over, in a car without ends, stop or damper the other way', () => {
    const model = cornerModel(linearCorner({ sprung: 300, unsprung: 50, spring: 20_000, damper: 1500, tire: 200_000 }))
    const profile = { distance: [0, 2, 2.5, 4, 7, 9, 12], height: [0, 0, 0.02, -0.01, 0.03, 0.01, 0] }
    const course = (sign: 1 | -1): Course => ({
      ...level,
      profile: { ...profile, height: profile.height.map(each => sign * each) },
    })
    // A wheel this small follows ups and downs alike to a hair.
    const small = cornerModel({ ...model.corner, tire: { ...model.corner.tire, radius: 1e-3 } })
    const [up, down] = [arrived(ride(small, course(1))), arrived(ride(small, course(-1)))]
    expect(up.share.air).toBe(0)
    expect(up.wheelMax).toBeGreaterThan(0.01)
    allClose(
      [...down.trace.wheel],
      [...up.trace.wheel].map(wheel => -wheel),
      { abs: 1e-4 },
    )
  })

  it('over one seed is one ride, and over another another', () => {
    const model = cornerModel(dampedCorner())
    const rough = (seed: number): Terrain => ({
      id: '',
      name: '',
      kind: 'rough',
      isoClass: 'E',
      speed: 10,
      duration: 3,
      seed,
    })
    expect(ride(model, rough(7))).toEqual(ride(model, rough(7)))
    expect(arrived(ride(model, rough(8))).wheelMax).not.toBe(arrived(ride(model, rough(7))).wheelMax)
  })

  const courses: readonly Terrain[] = [
    { id: 'whoops', name: '', kind: 'whoops', spacing: 6, height: 0.15, speed: 7, count: 4 },
    { id: 'landing', name: '', kind: 'landing', drop: 0.25 },
    { id: 'ledge', name: '', kind: 'ledge', height: 0.12, length: 1.5, speed: 4 },
    { id: 'rough', name: '', kind: 'rough', isoClass: 'E', speed: 8, duration: 5, seed: 3 },
  ]

  it.each(courses)('ten times tighter changes no figure by more than 1 %: $id', terrain => {
    const model = cornerModel(dampedCorner())
    const [asIs, tight] = [arrived(ride(model, terrain)), arrived(ride(model, terrain, { tolerance: 0.1 }))]
    expect(tight.evaluations).toBeGreaterThan(asIs.evaluations)
    expect([tight.hits, tight.bottoms, tight.contactDependent]).toEqual([
      asIs.hits,
      asIs.bottoms,
      asIs.contactDependent,
    ])
    for (const name of [
      'wheelMax',
      'wheelMin',
      'suspensionForceMax',
      'stopForceMax',
      'stopSpeedMax',
      'chassisAccelMax',
      'chassisAccelRms',
    ] as const)
      if (!(asIs.contactDependent as readonly string[]).includes(name))
        close(asIs[name], tight[name], { rel: 0.01 }, name)
    for (const name of ['droop', 'coilover', 'engagement', 'onStop', 'air'] as const)
      close(asIs.share[name], tight.share[name], { rel: 0.01 }, name)
  })
})
