import type { Finding } from '../../budget/results.ts'
import type { Corner, Curve } from '../../plan/schema.ts'
import type { CornerRide } from '../results.ts'
import { called, type Ridden, type RideRule } from './rule.ts'

/** A wheel that creeps up by more of its bump travel than this has packed down: common practice. */
const PACKED = 0.1

/** Rebound is to blame when no more of it than of compression lets the wheel come back by at least this share of what it crept. */
const COMES_BACK = 0.5

/** Less rebound is tried with this share of it. */
const EASED = 0.5

/** A course needs so many windows for anything to creep. */
const LEAST_WINDOWS = 4

/** Length of time a wheel's mean is taken over: one wave of whoops, a second elsewhere, s. */
const windowOf = ({ course }: Ridden): number => (course.kind === 'whoops' ? course.spacing / course.speed : 1)

/** Mean of a part of a list. */
function mean(values: ArrayLike<number>, from: number, to: number): number {
  let sum = 0
  for (let i = from; i < to; i += 1) sum += values[i]!
  return sum / Math.max(1, to - from)
}

/** When the course begins and ends to be uneven, s. */
const unevenFrom = ({ course }: Ridden): number => (course.kind === 'rough' ? 0 : 1)
const unevenUntil = ({ course, ride }: Ridden): number => (course.kind === 'rough' ? ride.duration : ride.duration - 2)

/** How far the mean of the wheel has come up over the last third of the course, from where it stood; null when it is too short to tell. */
function crept(ridden: Ridden, ride: CornerRide): number | null {
  const { time, wheel } = ride.trace
  const [from, until] = [unevenFrom(ridden), unevenUntil(ridden)]
  const windows = Math.floor((until - from) / windowOf(ridden))
  if (ridden.course.kind === 'landing' || windows < LEAST_WINDOWS) return null
  const last = Math.ceil(windows / 3) * windowOf(ridden)
  const index = (at: number): number => time.findIndex(moment => moment >= at)
  return mean(wheel, index(until - last), index(until)) - wheel[0]!
}

const withRebound = (corner: Corner, rebound: Curve): Corner => ({ ...corner, shock: { ...corner.shock, rebound } })

/** Whether the wheel creeps towards the stop hit after hit; blamed on rebound only where less of it is tried and lets the wheel out again. */
export const packsDown: RideRule = (ridden): Finding | null => {
  const { axle, model, course, ride, say, again } = ridden
  if (ride.dampingAssumed || model.bump <= 0) return null
  const creep = crept(ridden, ride)
  if (creep === null || creep < PACKED * model.bump) return null
  const { compression, rebound } = axle.corner.shock
  const left = (tried: Curve): number | null => {
    const other = again(withRebound(axle.corner, tried))
    return other.ok ? crept(ridden, other) : null
  }
  const matched = left(compression)
  if (matched === null || matched > creep * (1 - COMES_BACK)) return null
  const half = left(rebound.map(({ velocity, force }) => ({ velocity, force: force * EASED })))
  const written = (length: number): string => (length > 0 ? say(length, 'length') : 'nothing')
  const tried = half === null ? '' : `with half the rebound damping that is ${written(half)}, `
  return {
    id: 'ride-packs-down',
    severity: 'caution',
    message: `On ${called(course)} it packs down: hit after hit the wheel stays ${say(creep, 'length')} further up than it stands.`,
    remedy: `Rebound lets it out too slowly: ${tried}with no more of it than of compression ${written(matched)}.`,
    values: { crept: creep, ...(half !== null && { withHalfRebound: half }), withReboundAsCompression: matched },
    field: 'corner.shock.rebound',
    at: Math.min(model.bump, ride.trace.wheel[0]! + creep),
    where: 'budget',
  }
}
