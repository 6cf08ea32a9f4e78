import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { axleBudget } from '../../core/budget/budget.ts'
import type { AxleFigures } from '../../core/budget/results.ts'
import type { Corner, Point } from '../../core/plan/schema.ts'
import { close } from '../close.ts'
import { arbitraryCorner } from './arbitrary-corner.ts'
import { between } from './arbitrary-linkage.ts'
import { scaled, withPoints } from './scaled.ts'

const runs = { numRuns: 60, seed: 41 }

const figures = (corner: Corner): AxleFigures =>
  axleBudget({ id: 'front', suspension: 'independent', track: 1.5, antiRollRate: 0, corner }, { units: 'metric' })

/** Every figure that scales, by what it scales with: places, forces, energies, rates, frequencies, shares. */
function byKind({
  travel,
  engagement,
  zones,
  crossover,
  mainSpring,
  shockLeftAtBump,
  ride,
  bump,
  ...rest
}: AxleFigures) {
  return {
    place: [
      travel.bump,
      travel.droop,
      engagement?.wheel ?? 9,
      engagement?.shock ?? 9,
      crossover ?? 9,
      mainSpring.leftAtRide,
      mainSpring.leftAtEngagement ?? 9,
      mainSpring.leftAtBump,
      shockLeftAtBump,
      rest.static.position,
      ...zones.map(zone => zone.length),
    ],
    force: [
      engagement?.force ?? 0,
      rest.static.springForce,
      rest.static.stopForce,
      rest.static.rideForce,
      rest.static.sprungWeight,
      bump.forceSlow,
      bump.forceFast,
      bump.stopForceFast,
    ],
    energy: zones.map(zone => zone.energy),
    rate: [ride.wheelRate],
    frequency: [ride.frequency, ride.frequencyOnTire],
    share: [engagement?.share ?? 0, ...zones.map(zone => zone.share), ride.motionRatio],
  }
}

type Kinds = ReturnType<typeof byKind>

/** Both give the same figures, each kind times its factor. A place that is not there stays so. */
function same(a: AxleFigures, b: AxleFigures, factor: Readonly<Record<keyof Kinds, number>>): void {
  const [first, second] = [byKind(a), byKind(b)]
  expect(b.travel.bumpLimitedBy).toBe(a.travel.bumpLimitedBy)
  expect(b.travel.droopLimitedBy).toBe(a.travel.droopLimitedBy)
  for (const kind of Object.keys(first) as (keyof Kinds)[]) {
    const scale = Math.max(1e-9, ...first[kind].map(Math.abs))
    first[kind].forEach((value, i) => {
      const wanted = kind === 'place' && value === 9 ? 9 : value * factor[kind]
      close(second[kind][i]!, wanted, { rel: 1e-8, abs: 1e-9 * scale * factor[kind] + 1e-11 }, `${kind} ${i}`)
    })
  }
}

const unchanged = { place: 1, force: 1, energy: 1, rate: 1, frequency: 1, share: 1 }

/** Where two limits, or a limit and the touch, fall within rounding of each other, rounding may decide which comes first. */
function apart(given: AxleFigures): boolean {
  const places = [...Object.values(given.limits), ...(given.engagement === null ? [] : [given.engagement.wheel])]
  const sorted = places.sort((a, b) => a - b)
  return sorted.every((place, i) => i === 0 || place - sorted[i - 1]! > 1e-9) && Math.abs(sorted[0] ?? 1) > 1e-9
}

const compared = (corner: Corner, other: Corner, factor: Readonly<Record<keyof Kinds, number>>): void => {
  const plain = figures(corner)
  fc.pre(apart(plain))
  same(plain, figures(other), factor)
}

describe('the budget', () => {
  it('of a car with everything it carries, its areas and its rates times a factor: same travel, forces times the factor', () => {
    fc.assert(
      fc.property(arbitraryCorner(), between(0.2, 5), (corner, force) => {
        const factor = { ...unchanged, force, energy: force, rate: force }
        compared(corner, scaled(corner, { length: 1, force }), factor)
      }),
      runs,
    )
  })

  it('of a car smaller in its lengths: travel and energy as its lengths, frequency as one over their root, forces the same', () => {
    fc.assert(
      fc.property(arbitraryCorner(), between(0.3, 1), (corner, length) => {
        const factor = {
          ...unchanged,
          place: length,
          energy: length,
          rate: 1 / length,
          frequency: 1 / Math.sqrt(length),
        }
        compared(corner, scaled(corner, { length, force: 1 }), factor)
      }),
      runs,
    )
  })

  const moves: readonly [string, (point: Point) => Point][] = [
    ['mirrored left to right', ([x, y, z]) => [x, -y, z]],
    ['mirrored front to back', ([x, y, z]) => [-x, y, z]],
    ['measured from another origin', ([x, y, z]) => [x + 1.25, y - 0.5, z + 0.75]],
    ['turned about the vertical', ([x, y, z]) => [0.6 * x - 0.8 * y, 0.8 * x + 0.6 * y, z]],
  ]
  it.each(moves)('of a car %s is the same', (_name, move) => {
    fc.assert(
      fc.property(arbitraryCorner('arm', 'axle'), corner => compared(corner, withPoints(corner, move), unchanged)),
      runs,
    )
  })

  it('of an arm does not hang on which pivot is named first, nor on the length of the stop axis', () => {
    fc.assert(
      fc.property(arbitraryCorner('arm'), between(0.1, 8), (corner, size) => {
        const { linkage } = corner
        if (linkage.kind !== 'arm') throw new TypeError(linkage.kind)
        const [x, y, z] = linkage.stopAxis
        const other = {
          ...linkage,
          pivot: [linkage.pivot[1], linkage.pivot[0]] as [Point, Point],
          stopAxis: [x * size, y * size, z * size] as Point,
        }
        compared(corner, { ...corner, linkage: other }, unchanged)
      }),
      runs,
    )
  })

  it('of springs above the main does not hang on their order', () => {
    fc.assert(
      fc.property(arbitraryCorner(), corner => {
        const { springs } = corner.springs
        fc.pre(springs.length === 3)
        const other = [springs[1]!, springs[0]!, springs[2]!]
        compared(corner, { ...corner, springs: { ...corner.springs, springs: other } }, unchanged)
      }),
      { ...runs, numRuns: 60 },
    )
  })
})
