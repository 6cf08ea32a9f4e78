import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import type { Axle, Corner, Terrain } from '../../../core/plan/schema.ts'
import { rideFindings } from '../../../core/ride/findings/findings.ts'
import type { RideFinding } from '../../../core/ride/findings/rule.ts'
import type { MeasuredCourse } from '../../../core/ride/measured-road.ts'
import { ride } from '../../../core/ride/ride.ts'
import type { Course } from '../../../core/ride/terrain.ts'
import { close } from '../../close.ts'
import { plainStop } from '../plain-corner.ts'
import { dampedCorner, straight } from './corners.ts'

function found(corner: Corner, course: Course): Record<string, RideFinding> {
  const axle: Axle = { id: 'rear', suspension: 'independent', track: 1.6, antiRollRate: 0, corner }
  const model = cornerModel(corner)
  const outcome = ride(model, course)
  if (!outcome.ok) throw new Error(outcome.reason)
  const findings = rideFindings(axle, model, course, outcome, 'metric')
  for (const finding of findings) expect([finding.axle, finding.course]).toEqual(['rear', course.id])
  return Object.fromEntries(findings.map(finding => [finding.id, finding]))
}

const whoops = (height: number, speed = 7, count = 6): Terrain => ({
  id: 'whoops',
  name: 'Washboard',
  kind: 'whoops',
  spacing: 5,
  height,
  speed,
  count,
})
const landing = (drop: number): Terrain => ({ id: 'lip', name: '', kind: 'landing', drop })
const held = plainStop({ compression: straight(500), rebound: straight(6000) })

describe('findings of a ride', () => {
  it('are none where nothing is wrong', () => {
    expect(found(dampedCorner({ stop: held }), whoops(0.06, 4))).toEqual({})
    expect(found(dampedCorner({ stop: null }), landing(0.02))).toEqual({})
  })

  it('come worst first', () => {
    const corner = dampedCorner({ stop: null })
    const model = cornerModel(corner)
    const outcome = ride(model, whoops(0.5, 12))
    if (!outcome.ok) throw new Error(outcome.reason)
    const axle: Axle = { id: 'front', suspension: 'independent', track: 1.6, antiRollRate: 0, corner }
    const all = rideFindings(axle, model, whoops(0.5, 12), outcome, 'inch').map(({ severity }) => severity)
    expect(all.length).toBeGreaterThan(1)
    expect(all).toEqual(
      all.toSorted((a, b) => ['danger', 'caution', 'note'].indexOf(a) - ['danger', 'caution', 'note'].indexOf(b)),
    )
  })
})

describe('it bottoms', () => {
  it('is said with how often and by what', () => {
    const { 'ride-bottoms': finding } = found(
      dampedCorner({ stop: held, clearance: { bump: 0.08, droop: null } }),
      landing(1),
    )
    expect(finding).toMatchObject({
      severity: 'danger',
      at: 0.08,
    })
    expect(finding!.remedy).toContain('or a smaller drop')
    expect(finding!.message).toMatch(/^On “lip” it bottoms (once|twice|\d+ times) \(chassis contact\)\.$/)
    expect(finding!.values.bottoms).toBeGreaterThan(0)
  })

  it('is not said of a wheel that only comes near', () => {
    expect(found(dampedCorner({ stop: held }), landing(0.1))['ride-bottoms']).toBeUndefined()
  })
})

describe('the tire leaves the ground', () => {
  it('is said from a fiftieth of the time on, and never of a landing, which begins in the air', () => {
    const { 'ride-leaves-ground': finding } = found(dampedCorner({ stop: held }), whoops(0.3, 10))
    expect(finding!.message).toMatch(/^On “Washboard” the tire is off the ground \d+ % of the time/)
    expect(finding!.values.air).toBeGreaterThan(0.02)
    expect(found(dampedCorner({ stop: held }), whoops(0.1, 5))['ride-leaves-ground']).toBeUndefined()
    expect(found(dampedCorner({ stop: held }), landing(0.5))['ride-leaves-ground']).toBeUndefined()
  })
})

describe('the stop kicks', () => {
  const undamped = plainStop({ charge: 4e5 })

  it('says what it gives back, and what was tried: rebound damping, more gas, less gas', () => {
    const { 'ride-kicks': finding } = found(dampedCorner({ stop: undamped }), whoops(0.2))
    expect(finding).toMatchObject({ severity: 'note', field: 'corner.stop.rebound' })
    const { share, shareWithRebound, shareWithMoreGas, shareWithLessGas } = finding!.values
    close(share!, 1, { abs: 0.01 })
    expect(shareWithRebound).toBeLessThan(0.9)
    for (const gas of [shareWithMoreGas, shareWithLessGas]) close(gas!, 1, { abs: 0.01 })
    expect(finding!.message).toContain('for the plan gives it no rebound damping')
    expect(finding!.remedy).toMatch(
      /^It would give back: with rebound damping at the stop of [\d,]+ N at [\d,]+ mm\/s \d+ %/,
    )
    expect(finding!.remedy).toMatch(/with 20 % more gas \d+ %.*; with 20 % less \d+ %/)
  })

  it('is a caution of a stop whose rebound is known and too weak, and nothing of one that holds back enough', () => {
    const weak = { ...undamped, rebound: straight(300) }
    expect(found(dampedCorner({ stop: weak }), whoops(0.2))['ride-kicks']).toMatchObject({ severity: 'caution' })
    const enough = { ...undamped, rebound: straight(9000) }
    expect(found(dampedCorner({ stop: enough }), whoops(0.2))['ride-kicks']).toBeUndefined()
  })

  it('is not said of touches nobody feels, nor of foam, whose own loss the plan does not know', () => {
    const touching = plainStop({ charge: 1000, gap: 0.02 })
    expect(found(dampedCorner({ stop: touching }), whoops(0.03, 4))['ride-kicks']).toBeUndefined()
    const foam = {
      kind: 'elastomer' as const,
      gap: 0.03,
      curve: [0, 1000, 6000].map((force, i) => ({ deflection: 0.04 * i, force })),
    }
    expect(found(dampedCorner({ stop: foam }), whoops(0.2))['ride-kicks']).toBeUndefined()
  })

  it('leaves out less gas where the stroke would not leave room for it', () => {
    const tight = plainStop({ charge: 4e5, gasVolume: Math.PI * 4 * 0.0254 ** 3 * 1.1 })
    const { 'ride-kicks': finding } = found(dampedCorner({ stop: tight }), whoops(0.2))
    expect(Object.keys(finding!.values)).not.toContain('shareWithLessGas')
    expect(finding!.remedy).not.toContain('% less')
  })
})

describe('the stop is still in at the next hit', () => {
  it('is said with how far, and what half the rebound damping would do', () => {
    const slow = plainStop({ rebound: straight(60_000) })
    const { 'ride-stop-still-in': finding } = found(dampedCorner({ stop: slow }), whoops(0.25, 9))
    expect(finding).toMatchObject({ severity: 'caution', where: 'stop' })
    expect(finding!.values.stillIn).toBeGreaterThan(0.0254 / 16)
    expect(finding!.values.withHalfRebound).toBeLessThanOrEqual(finding!.values.hits!)
    expect(found(dampedCorner({ stop: held }), whoops(0.25, 9))['ride-stop-still-in']).toBeUndefined()
  })
})

describe('it packs down', () => {
  const slow = dampedCorner({ stop: null }, 800, 16_000)

  it('is blamed on rebound once less of it was tried and let the wheel out again', () => {
    const { 'ride-packs-down': finding } = found(slow, whoops(0.08, 9, 12))
    expect(finding).toMatchObject({ severity: 'caution', field: 'corner.shock.rebound' })
    const { crept, withHalfRebound, withReboundAsCompression } = finding!.values
    expect(crept).toBeGreaterThan(0.015)
    expect(withHalfRebound).toBeLessThan(crept!)
    expect(withReboundAsCompression).toBeLessThanOrEqual(crept! / 2)
  })

  it('is not said of one that comes back, of assumed damping, nor of a course too short to tell', () => {
    expect(found(dampedCorner({ stop: null }, 1500, 1500), whoops(0.08, 9, 12))['ride-packs-down']).toBeUndefined()
    const assumed = { ...slow, shock: { ...slow.shock, compression: [] } }
    expect(found(assumed, whoops(0.08, 9, 12))['ride-packs-down']).toBeUndefined()
    expect(found(slow, whoops(0.08, 9, 3))['ride-packs-down']).toBeUndefined()
    const road: MeasuredCourse = {
      id: 'r',
      kind: 'measured',
      profile: { distance: [0, 2, 4], height: [0, 0.1, 0] },
      speed: 4,
    }
    expect(found(slow, road)['ride-packs-down']).toBeUndefined()
  })
})
