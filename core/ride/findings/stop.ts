import type { Finding } from '../../budget/results.ts'
import { circleArea } from '../../forces/gas.ts'
import type { Curve, HydraulicStop } from '../../plan/schema.ts'
import { GRAVITY, INCH } from '../../units/constants.ts'
import type { CornerRide, Hit } from '../results.ts'
import { StopInMotion } from '../stop-in-motion.ts'
import { called, type Ridden, type RideRule, times } from './rule.ts'

/** A stop that gives back more of what it takes throws the car: common practice. */
const KICKS = 0.7

/** What a hit gives back is felt when it could lift the sprung mass by this much, m: common practice. */
const FELT = INCH / 2

/** A stop this far in when it is met has not come out, m: less is nothing on a tape. */
const STILL_IN = INCH / 16

/** Gas is tried with so much more and less of it. */
const GAS = 0.2

/** Share of what the stop took that it gave back, over all hits. */
function returnedShare({ events }: CornerRide): number {
  const sum = (of: (hit: Hit) => number): number => events.reduce((total, hit) => total + of(hit), 0)
  const taken = sum(({ taken }) => taken)
  return taken > 0 ? sum(({ returned }) => returned) / taken : 0
}

const hardest = ({ events }: CornerRide): Hit | null =>
  events.reduce<Hit | null>((most, hit) => (most === null || hit.returned > most.returned ? hit : most), null)

/** Rebound damping that holds back half of the gas at the end of a hit, at the speed it came in with: a beginning, not a setting. */
function tryRebound(stop: HydraulicStop, { deepest, speed }: Hit): Curve {
  const force = new StopInMotion(stop).push(deepest) / 2
  return [
    { velocity: 0, force: 0 },
    { velocity: Math.max(speed, 0.1), force },
  ]
}

/** What another stop would make of the same course: the share it gives back, and how often the wheel bottoms. */
function tried({ axle, again }: Ridden, stop: HydraulicStop): { share: number; bottoms: number } | null {
  const outcome = again({ ...axle.corner, stop })
  return outcome.ok ? { share: returnedShare(outcome), bottoms: outcome.bottoms } : null
}

/** Whether a hydraulic stop throws the car back; what it gives back with rebound damping of its own, and with more and less gas, is tried, not guessed. */
export const kicks: RideRule = (ridden): Finding | null => {
  const { model, course, ride, say } = ridden
  const { stop, cornerMass, unsprungMass } = model.corner
  const worst = hardest(ride)
  if (stop?.kind !== 'hydraulic' || worst === null) return null
  const share = returnedShare(ride)
  const lift = worst.returned / ((cornerMass - unsprungMass) * GRAVITY)
  if (share <= KICKS || lift < FELT) return null
  const undamped = (stop.rebound?.length ?? 0) < 2
  const rebound = tryRebound(stop, worst)
  const damped = tried(ridden, { ...stop, rebound })
  const more = tried(ridden, { ...stop, gasVolume: stop.gasVolume * (1 + GAS) })
  const tight = stop.gasVolume * (1 - GAS)
  const less =
    tight > circleArea(stop.shaftDiameter) * stop.stroke ? tried(ridden, { ...stop, gasVolume: tight }) : null
  const bottoming = (count: number): string => (count > 0 ? `, bottoming ${times(count)}` : '')
  const told = (what: string, outcome: ReturnType<typeof tried>): string[] =>
    outcome === null ? [] : [`${what} ${say(outcome.share, 'share')}${bottoming(outcome.bottoms)}`]
  const { velocity, force } = rebound[1]!
  return {
    id: 'ride-kicks',
    severity: undamped ? 'note' : 'caution',
    message: `On ${called(course)} the stop gives back ${say(share, 'share')} of what it takes${undamped ? ', for the plan gives it no rebound damping' : ''}: the hardest hit throws this corner back with ${say(worst.returned, 'energy')}.`,
    remedy: `It would give back: ${[
      ...told(`with rebound damping at the stop of ${say(force, 'force')} at ${say(velocity, 'shaftSpeed')}`, damped),
      ...told(`with ${say(GAS, 'share')} more gas`, more),
      ...told(`with ${say(GAS, 'share')} less`, less),
    ].join('; ')}.`,
    values: {
      share,
      returned: worst.returned,
      ...(damped && { shareWithRebound: damped.share, reboundForce: force, reboundSpeed: velocity }),
      ...(more && { shareWithMoreGas: more.share }),
      ...(less && { shareWithLessGas: less.share }),
    },
    field: 'corner.stop.rebound',
    at: Math.min(model.bump, ride.wheelMax),
    where: 'stop',
  }
}

const still = ({ events }: CornerRide): Hit[] => events.filter(({ stillIn }) => stillIn > STILL_IN)

/** Whether the stop is met again before it has come all the way out. */
export const stillIn: RideRule = ({ axle, model, course, ride, say, again }): Finding | null => {
  const met = still(ride)
  const { stop } = axle.corner
  if (met.length === 0 || stop?.kind !== 'hydraulic' || stop.rebound === undefined) return null
  const most = Math.max(...met.map(hit => hit.stillIn))
  const half = stop.rebound.map(({ velocity, force }) => ({ velocity, force: force / 2 }))
  const other = again({ ...axle.corner, stop: { ...stop, rebound: half } })
  const left = other.ok ? still(other).length : null
  return {
    id: 'ride-stop-still-in',
    severity: 'caution',
    message: `On ${called(course)} the stop is met ${times(met.length)} before it has come out again, once still ${say(most, 'length')} in: the hit comes later and ends harder.`,
    remedy: `Less rebound damping at the stop${left === null ? '' : ` (with half of it ${left === 0 ? 'never' : times(left)})`}, or more charge.`,
    values: { hits: met.length, of: ride.hits, stillIn: most, ...(left !== null && { withHalfRebound: left }) },
    field: 'corner.stop.rebound',
    at: model.engagement ?? model.bump,
    where: 'stop',
  }
}
