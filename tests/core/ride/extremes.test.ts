import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import type { Corner, Terrain } from '../../../core/plan/schema.ts'
import { ride } from '../../../core/ride/ride.ts'
import { plainStop } from '../plain-corner.ts'
import { dampedCorner, straight } from './corners.ts'

const head = { id: '', name: '' }
const terrains: readonly Terrain[] = [
  { ...head, kind: 'whoops', spacing: 4, height: 0.25, speed: 10, count: 3 },
  { ...head, kind: 'landing', drop: 1 },
  { ...head, kind: 'landing', drop: 100 },
  { ...head, kind: 'ledge', height: 0.15, length: 1, speed: 5 },
  { ...head, kind: 'ledge', height: 20, length: 0.001, speed: 200 },
  { ...head, kind: 'rough', isoClass: 'H', speed: 200, duration: 1, seed: 3 },
]
const gasOf = (share: number): number => Math.PI * 4 * 0.0254 ** 3 * share

const corners: readonly [string, Partial<Corner>][] = [
  ['a wheel without mass', { unsprungMass: 0 }],
  ['a tire hardly there', { tire: { radius: 0.4, rate: 1, damping: 0 } }],
  ['a tire of stone', { tire: { radius: 0.4, rate: 1e9, damping: 0 } }],
  ['no stop', { stop: null }],
  ['a stop already pushed in', { stop: plainStop({ gap: -0.05 }) }],
  ['a stop pushed all the way in', { stop: plainStop({ gap: -4 * 0.0254 }) }],
  ['a stop just touched', { stop: plainStop({ gap: 0 }) }],
  ['a stop without charge', { stop: plainStop({ charge: 0 }) }],
  ['a stop that comes out slowly', { stop: plainStop({ compression: straight(500), rebound: straight(50_000) }) }],
  ['a stop with hardly any gas', { stop: plainStop({ gasVolume: gasOf(1.000001) }) }],
  ['a stop of enormous charge', { stop: plainStop({ gap: 0.001, charge: 2e8 }) }],
  [
    'foam that gives way at first',
    {
      stop: { kind: 'elastomer', gap: 0.05, curve: [0, 0, 9000].map((force, i) => ({ deflection: 0.015 * i, force })) },
    },
  ],
  ['springs that top it out', { springs: { ...dampedCorner().springs, preload: 0.25 } }],
  ['no bump', { clearance: { bump: 0, droop: null } }],
  ['no travel at all', { clearance: { bump: 0, droop: 0 } }],
  [
    'springs that cannot hold it',
    {
      stop: null,
      springs: { ...dampedCorner().springs, springs: [{ name: '', rate: 100, freeLength: 0.5, solidLength: 0.1 }] },
    },
  ],
]

describe('extreme corners come through extreme terrains in numbers and in time', () => {
  it.each(corners)('%s', (_, other) => {
    const model = cornerModel(dampedCorner(other))
    for (const terrain of terrains) {
      const outcome = ride(model, terrain)
      if (!outcome.ok) throw new Error(`${terrain.kind}: ${outcome.reason} at ${outcome.time} s`)
      const { share, work, wheelMax, wheelMin, suspensionForceMax, chassisAccelMax, chassisAccelRms } = outcome
      const figures = [wheelMax, wheelMin, suspensionForceMax, chassisAccelMax, chassisAccelRms]
      expect(
        [...figures, ...Object.values(share), ...Object.values(work)].filter(value => !Number.isFinite(value)),
      ).toEqual([])
      expect(outcome.steps / outcome.duration).toBeLessThan(10_000)
    }
  })
})

describe('what cannot be followed ends with its reason', () => {
  const [whoops] = terrains

  it('a damper so steep that its wheel shakes faster than steps are allowed', () => {
    const outcome = ride(cornerModel(dampedCorner({}, 1e8, 1e8)), whoops!)
    expect(outcome).toMatchObject({ ok: false, reason: 'too many steps' })
  })

  it('one that jumps', () => {
    const wall = [
      { velocity: 0, force: 0 },
      { velocity: 1e-6, force: 1e8 },
    ]
    const { shock } = dampedCorner()
    const outcome = ride(cornerModel(dampedCorner({ shock: { ...shock, compression: wall, rebound: wall } })), whoops!)
    expect(outcome).toMatchObject({ ok: false, reason: 'step too short' })
  })
})

describe('a car that cannot rest inside its travel', () => {
  const level: Terrain = { ...head, kind: 'whoops', spacing: 5, height: 0, speed: 5, count: 1 }

  it('lies on full bump, which counts as bottoming and marks what hangs on steel', () => {
    const model = cornerModel(dampedCorner(corners.at(-1)![1]))
    const outcome = ride(model, level)
    expect(outcome).toMatchObject({ ok: true, bottoms: 1 })
    if (!outcome.ok) return
    expect(outcome.contactDependent).toContain('suspensionForceMax')
    expect(outcome.wheelMin).toBeGreaterThan(model.bump)
    expect(outcome.share.engagement + outcome.share.coilover).toBeCloseTo(1, 9)
  })

  it('hangs at full droop, which marks nothing: that hangs on no stiffness', () => {
    const model = cornerModel(dampedCorner({ springs: { ...dampedCorner().springs, preload: 0.25 } }))
    const outcome = ride(model, level)
    expect(outcome).toMatchObject({ ok: true, bottoms: 0, contactDependent: [] })
    if (outcome.ok) expect(outcome.wheelMax).toBeLessThan(model.droop)
  })
})
