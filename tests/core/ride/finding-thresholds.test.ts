import { describe, expect, it } from 'vitest'
import { cornerModel } from '../../../core/corner/corner.ts'
import type { Axle, Corner, Terrain } from '../../../core/plan/schema.ts'
import { rideFindings } from '../../../core/ride/findings/findings.ts'
import type { CornerRide, Hit } from '../../../core/ride/results.ts'
import { ride } from '../../../core/ride/ride.ts'
import { GRAVITY, INCH } from '../../../core/units/constants.ts'
import { plainStop } from '../plain-corner.ts'
import { dampedCorner, straight } from './corners.ts'

/** Every bound beyond which a ride is worth a word, from both sides: a ride like a real one but for the figure the bound is about. */

const stop = plainStop({ compression: straight(500), rebound: straight(6000) })
const corner = dampedCorner({ stop })
const model = cornerModel(corner)
const axle: Axle = { id: 'rear', suspension: 'independent', track: 1.6, antiRollRate: 0, corner }
const course: Terrain = { id: 'whoops', name: '', kind: 'whoops', spacing: 5, height: 0.02, speed: 5, count: 6 }
const sprung = corner.cornerMass - corner.unsprungMass

const quiet = ((): CornerRide => {
  const outcome = ride(model, course)
  if (!outcome.ok) throw new Error(outcome.reason)
  return outcome
})()

const hit = (other: Partial<Hit>): Hit => ({
  ...{ time: 1, until: 1.1, speed: 1, stillIn: 0, deepest: 0.03, taken: 100, returned: 0, bottomed: false },
  ...other,
})

/** @param again what a ride with another corner comes to; the same when not given */
const ids = (
  other: Partial<CornerRide>,
  again: (corner: Corner) => Partial<CornerRide> = () => ({}),
  over: Terrain = course,
): string[] =>
  rideFindings(axle, model, over, { ...quiet, ...other }, 'metric', tried => ({
    ok: true,
    ...quiet,
    ...other,
    ...again(tried),
  })).map(({ id }) => id)

/** A wheel that stands, and stays so much further up once the course begins. */
function up(by: number): Pick<CornerRide, 'trace'> {
  const from = quiet.trace.wheel[0]!
  const wheel = quiet.trace.time.map(time => (time < 1 ? from : from + by))
  wheel[0] = from
  return { trace: { ...quiet.trace, wheel } }
}

describe('bounds of the findings of a ride', () => {
  it('the ride they are tried on has none', () => expect(ids({})).toEqual([]))

  it('bottoming once is enough', () => {
    expect(ids({ bottoms: 0 })).toEqual([])
    expect(ids({ bottoms: 1 })).toEqual(['ride-bottoms'])
  })

  it.each([
    [0.0199, []],
    [0.0201, ['ride-leaves-ground']],
  ])('off the ground %d of the time', (air, found) => {
    expect(ids({ share: { ...quiet.share, air } })).toEqual(found)
  })

  const lifted = (by: number): number => sprung * GRAVITY * by
  it.each([
    [0.69, 2 * INCH, []],
    [0.71, 2 * INCH, ['ride-kicks']],
    [0.9, 0.49 * INCH, []],
    [0.9, 0.51 * INCH, ['ride-kicks']],
  ])('a stop that gives back %d of what would lift the corner by %d m', (share, lift, found) => {
    const returned = lifted(lift)
    expect(ids({ events: [hit({ taken: returned / share, returned })] })).toEqual(found)
  })

  it.each([
    [0.99, []],
    [1.01, ['ride-stop-still-in']],
  ])('a stop met still %d sixteenths in', (sixteenths, found) => {
    expect(ids({ events: [hit({ stillIn: (sixteenths * INCH) / 16 })] })).toEqual(found)
  })

  describe('packing down', () => {
    const eased = (share: number, creep: number) => (tried: Corner) =>
      tried.shock.rebound === corner.shock.rebound ? {} : up(creep * share)

    it.each([
      [0.099, []],
      [0.101, ['ride-packs-down']],
    ])('by %d of bump travel', (share, found) => {
      const creep = share * model.bump
      expect(ids(up(creep), eased(0, creep))).toEqual(found)
    })

    it.each([
      [0.51, []],
      [0.49, ['ride-packs-down']],
    ])('where less rebound leaves %d of it', (left, found) => {
      const creep = 0.3 * model.bump
      expect(ids(up(creep), eased(left, creep))).toEqual(found)
    })

    it.each([
      [3, []],
      [4, ['ride-packs-down']],
    ])('over %d waves', (count, found) => {
      const creep = 0.3 * model.bump
      const end = 1 + (count * 5) / 5 + 2
      const time = quiet.trace.time.filter(moment => moment <= end)
      const { trace } = up(creep)
      const cut = (by: CornerRide): CornerRide => ({
        ...by,
        duration: end,
        trace: { ...by.trace, time, wheel: by.trace.wheel.subarray(0, time.length) },
      })
      const short = cut({ ...quiet, trace })
      const back = cut({ ...quiet, ...up(0) })
      expect(ids(short, () => back, { ...course, count } as Terrain)).toEqual(found)
    })
  })
})
