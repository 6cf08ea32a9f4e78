import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyChange, applyChanges } from '../../core/changes/apply.ts'
import type { Change, Changed } from '../../core/changes/change.ts'
import { carried } from '../../core/changes/ride-height.ts'
import { closedEnergy, closedForce, spacerEffect } from '../../core/changes/spacer-effect.ts'
import { closesAt, type HydraulicCorner, isHydraulic, strokeOf } from '../../core/changes/stop-in-corner.ts'
import { cornerModel } from '../../core/corner/corner.ts'
import { parsePlan } from '../../core/plan/parse.ts'
import type { Corner, HydraulicStop, Linkage } from '../../core/plan/schema.ts'
import { sayIn } from '../../core/units/saying.ts'
import { allClose, close } from '../close.ts'
import { arbitraryCorner } from './arbitrary-corner.ts'
import { between } from './arbitrary-linkage.ts'

const say = sayIn('inch')
const runs = { numRuns: 250, seed: 41 }

/** Numbers of a corner in the order they stand in it, with everything else: to compare two corners number by number. */
function laidOut(value: unknown, numbers: number[] = [], rest: string[] = []): { numbers: number[]; rest: string[] } {
  if (typeof value === 'number') numbers.push(value)
  else if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))) {
      rest.push(key)
      laidOut(inner, numbers, rest)
    }
  else rest.push(String(value))
  return { numbers, rest }
}

function same(got: Corner, wanted: Corner, abs: number, rel = 0): void {
  const [a, b] = [laidOut(got), laidOut(wanted)]
  expect(a.rest).toEqual(b.rest)
  allClose(a.numbers, b.numbers, { abs, rel })
}

function done<Made extends { ok: boolean }>(made: Made): Extract<Made, { ok: true }> {
  if (!made.ok) throw new Error('reason' in made ? String(made.reason) : 'refused')
  return made as Extract<Made, { ok: true }>
}

/** Corners with a hydraulic stop, and a tube that slides over its shaft, by a share of its stroke. */
const withSpacer = fc
  .record({
    corner: arbitraryCorner().filter(isHydraulic),
    room: between(1e-4, 2e-3),
    wall: between(1e-3, 4e-3),
    share: between(0.01, 0.95),
  })
  .map(({ corner, room, wall, share }) => ({
    corner,
    spacer: {
      kind: 'spacer' as const,
      length: corner.stop.stroke * share,
      outerDiameter: corner.stop.shaftDiameter + room + 2 * wall,
      wall,
    },
  }))

describe('a spacer', () => {
  it('and its removal give back the setup, within 10⁻¹²', () => {
    fc.assert(
      fc.property(withSpacer, between(-1e-6, 1e-5), ({ corner, spacer }, more) => {
        for (const change of [spacer, { ...spacer, oilLeftOut: 1e-5 + more }]) {
          const put = applyChange(corner, change, say)
          if (put.ok) same(done(applyChange(put.corner, put.back, say)).corner, corner, 1e-12)
          else expect(put.reason).toMatch(/^Too much oil/)
        }
      }),
      runs,
    )
  })

  it('of two lengths is one of both, within 10⁻¹²', () => {
    fc.assert(
      fc.property(withSpacer, between(0.05, 0.95), ({ corner, spacer }, part) => {
        const [one, other] = [spacer.length * part, spacer.length * (1 - part)]
        const two = [
          { ...spacer, length: one },
          { ...spacer, length: other },
        ]
        same(done(applyChanges(corner, two, say)).corner, done(applyChange(corner, spacer, say)).corner, 1e-12)
      }),
      runs,
    )
  })

  it('leaves the closed position where it is, and engages as much later as it is long', () => {
    fc.assert(
      fc.property(withSpacer, ({ corner, spacer }) => {
        const effect = done(spacerEffect(corner, spacer, say))
        close(closesAt(effect.after.stop), closesAt(corner.stop), { abs: 1e-12 })
        close(effect.gap.after - effect.gap.before, spacer.length, { abs: 1e-12 })
        const { before, after } = effect.closesAtWheel
        expect(after === null).toBe(before === null)
        if (before !== null && after !== null) close(after, before, { abs: 1e-9 })
        const moved = effect.engagement
        // At the end of a linkage the stop goes on while the wheel stands still: there both may be at one place.
        if (moved.before !== null && moved.after !== null) expect(moved.after).toBeGreaterThanOrEqual(moved.before)
      }),
      runs,
    )
  })

  it('with as much oil left out as its metal takes up, leaves the gas the same room closed, and a gentler end', () => {
    fc.assert(
      fc.property(withSpacer, ({ corner, spacer }) => {
        const { after, force, energy } = done(spacerEffect(corner, spacer, say))
        const room = ({ stop }: HydraulicCorner) =>
          stop.gasVolume - (Math.PI / 4) * stop.shaftDiameter ** 2 * stop.stroke
        close(room(after), room(corner), { abs: 1e-15 })
        expect(force.after).toBeLessThan(force.before)
        expect(energy.after).toBeLessThan(energy.before)
      }),
      runs,
    )
  })

  it('is made up for: the charge, or the oil, gives back the force to 10⁻⁹, or the energy', () => {
    fc.assert(
      fc.property(withSpacer, ({ corner, spacer }) => {
        const { after, charge, oil, force, energy } = done(spacerEffect(corner, spacer, say))
        const charged = (to: number): HydraulicStop => ({ ...after.stop, charge: to })
        const oiled = (leftOut: number): HydraulicStop => {
          const put = done(applyChange(corner, { ...spacer, oilLeftOut: leftOut }, say)).corner
          if (!isHydraulic(put)) throw new Error('no hydraulic stop')
          return put.stop
        }
        const tight = { rel: 1e-9 }
        if (charge.sameForce.found) close(closedForce(charged(charge.sameForce.value)), force.before, tight)
        if (charge.sameEnergy.found) close(closedEnergy(charged(charge.sameEnergy.value)), energy.before, tight)
        if (oil.sameForce.found) close(closedForce(oiled(oil.sameForce.value)), force.before, tight)
        if (oil.sameEnergy.found) close(closedEnergy(oiled(oil.sameEnergy.value)), energy.before, tight)
        // More charge than the spacer asks for is always to be had in a car; and the force back is the same squeeze back.
        expect(charge.sameForce.found || force.before > 1e6).toBe(true)
      }),
      runs,
    )
  })
})

function carriesOnSprings(corner: Corner): boolean {
  const model = cornerModel(corner)
  return model.forces(0, 'slow').springs > 1 && model.parts(0).springs.at(-1)!.left > 1e-6
}

/** Shock and stop close all the way up: an arm that turns over has limits one way that it has not the other. */
function closesAllTheWay(corner: Corner): boolean {
  const { linkage, droop, bump } = cornerModel(corner)
  return Array.from({ length: 41 }, (_, i) => linkage.at(droop + ((bump - droop) * i) / 40)).every(
    ({ shockRatio, stopRatio }) => shockRatio > 0 && stopRatio > 0,
  )
}

/** Changes of every kind, sized to a corner; many of them cannot be made, which is a sentence, not an exception. */
const anyChange = (corner: Corner): fc.Arbitrary<Change> => {
  const { springs, stop } = corner
  const stroke = stop === null ? 0.05 : strokeOf(stop)
  const shaft = stop?.kind === 'hydraulic' ? stop.shaftDiameter : 0.03
  const place = fc.nat(springs.springs.length)
  return fc.oneof(
    fc
      .record({ length: between(0.1 * stroke, 1.2 * stroke), room: between(-1e-3, 2e-3), wall: between(1e-3, 5e-3) })
      .map(({ length, room, wall }) => ({
        kind: 'spacer' as const,
        length,
        outerDiameter: shaft + room + 2 * wall,
        wall,
      })),
    between(-0.05, 0.05).map(thickness => ({ kind: 'pad shim' as const, thickness })),
    between(-0.05, 0.05).map(away => ({ kind: 'move stop' as const, away })),
    between(-1e5, 5e6).map(charge => ({ kind: 'charge' as const, charge })),
    between(-1e-4, 1e-4).map(added => ({ kind: 'oil' as const, added })),
    fc.constant({ kind: 'stop' as const, stop: null }),
    fc
      .record({
        place,
        rate: between(5e3, 2e5),
        free: between(0.1, 0.5),
        keep: fc.constantFrom('ride height' as const, 'preload' as const),
      })
      .map(given => ({
        kind: 'spring' as const,
        place: given.place,
        spring: { name: '', rate: given.rate, freeLength: given.free, solidLength: given.free * 0.4 },
        keep: given.keep,
      })),
    between(-0.1, 0.4).map(preload => ({ kind: 'preload' as const, preload })),
    fc.option(between(-0.02, 0.2)).map(gap => ({ kind: 'crossover' as const, gap })),
    between(-0.1, 0.1).map(rise => ({ kind: 'ride height' as const, rise })),
    between(0.5, 1.5).map(share => ({ kind: 'hold' as const, weight: share * carried(cornerModel(corner)) })),
    fc.constant({ kind: 'settle' as const }),
  )
}

const cornerAndChange = (...kinds: readonly Linkage['kind'][]) =>
  arbitraryCorner(...kinds).chain(corner => anyChange(corner).map(change => ({ corner, change })))

const OF_SPRINGS = new Set<Change['kind']>(['spring', 'ride height', 'hold', 'preload', 'crossover', 'settle'])

const planWith = (corner: Corner): unknown => ({
  format: 'stopgap-plan',
  version: 1,
  title: '',
  notes: '',
  units: 'inch',
  vehicle: { name: '', wheelbase: 2.5, cgHeight: 0.7, rollAxisHeight: 0.2 },
  setups: [
    { id: 'a', name: '', axles: [{ id: 'rear', suspension: 'independent', track: 1.5, antiRollRate: 0, corner }] },
  ],
  loads: [],
  terrains: [],
})

describe('any change', () => {
  it('gives a corner a plan may have, or a sentence', () => {
    let made = 0
    fc.assert(
      fc.property(cornerAndChange(), ({ corner, change }) => {
        const changed: Changed = applyChange(corner, change, say)
        if (!changed.ok) {
          expect(changed.reason).toMatch(/^\p{Lu}.*[.]$/u)
          return
        }
        made += 1
        const parsed = parsePlan(planWith(changed.corner))
        expect(parsed.ok ? [] : parsed.problems).toEqual([])
      }),
      { ...runs, numRuns: 400 },
    )
    expect(made).toBeGreaterThan(100)
  })

  it('taken back gives back the setup, within 10⁻⁹; a table keeps the row it was measured anew from', () => {
    const compared = new Set<string>()
    fc.assert(
      fc.property(cornerAndChange('ratio', 'arm', 'axle'), ({ corner, change }) => {
        const there = applyChange(corner, change, say)
        if (!there.ok) return
        const back = applyChange(there.corner, there.back, say)
        if (there.corner.shock.showing !== corner.shock.showing) fc.pre(closesAllTheWay(corner))
        // Springs that are loose or bound at ride height carry the same at more than one preload.
        if (OF_SPRINGS.has(change.kind)) fc.pre([corner, there.corner].every(carriesOnSprings))
        if (change.kind === 'spring' && change.keep === 'preload' && !back.ok) return
        same(done(back).corner, corner, 1e-9, 1e-9)
        compared.add(change.kind)
      }),
      { ...runs, numRuns: 600 },
    )
    expect([...compared].sort()).toEqual(
      [
        'charge',
        'crossover',
        'hold',
        'move stop',
        'oil',
        'pad shim',
        'preload',
        'ride height',
        'settle',
        'spacer',
        'spring',
        'stop',
      ].sort(),
    )
  })

  it('of the ride height leaves what the car carries, and measures the travel from there', () => {
    fc.assert(
      fc.property(arbitraryCorner('ratio', 'arm', 'axle'), between(-0.05, 0.05), (corner, rise) => {
        const changed = applyChange(corner, { kind: 'ride height', rise }, say)
        if (!changed.ok) return
        const [was, is] = [cornerModel(corner), cornerModel(changed.corner)]
        // Coil bind comes sooner with more preload; everything else stays where it is on the car.
        fc.pre(was.bumpLimitedBy !== 'coil bind' && is.bumpLimitedBy !== 'coil bind')
        close(carried(is), carried(was), { rel: 1e-9, abs: 1e-6 })
        // Where the shock or stop ends it the search is good to 10⁻¹² of the part, more of the wheel where the motion ratio is small.
        close(is.bump - is.droop, was.bump - was.droop, { abs: 1e-7 })
        close(is.bump, was.bump + rise, { abs: 1e-7 })
      }),
      runs,
    )
  })
})
