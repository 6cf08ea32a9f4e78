import type { Finding } from '../../budget/results.ts'
import { called, type RideRule, times } from './rule.ts'

/** A tire off the ground for less of the time than this is a skip nobody feels: common practice. */
const AIRBORNE = 0.02

export const bottoms: RideRule = ({ model, course, ride }): Finding | null => {
  if (ride.bottoms === 0) return null
  const { stop } = model.corner
  const by = model.bumpLimitedBy
  const milder = course.kind === 'landing' ? 'a smaller drop' : 'slower'
  const onStop = stop !== null && model.engagement !== null
  return {
    id: 'ride-bottoms',
    severity: 'danger',
    message: `On ${called(course)} it bottoms ${times(ride.bottoms)} (${by}).`,
    remedy: onStop
      ? `${stop.kind === 'hydraulic' ? 'More charge or less gas in the stop' : 'A stiffer stop'}, more compression damping, or ${milder}.`
      : `A bump stop that is met, more compression damping, or ${milder}.`,
    values: { bottoms: ride.bottoms, aMinute: (ride.bottoms / ride.duration) * 60, wheelMax: ride.wheelMax },
    field: stop?.kind === 'hydraulic' ? 'corner.stop.charge' : 'corner.shock.compression',
    at: model.bump,
    where: onStop ? 'stop' : 'budget',
  }
}

export const leavesGround: RideRule = ({ course, ride, say }): Finding | null => {
  const { air } = ride.share
  if (air < AIRBORNE || course.kind === 'landing') return null
  return {
    id: 'ride-leaves-ground',
    severity: 'note',
    message: `On ${called(course)} the tire is off the ground ${say(air, 'share')} of the time: it neither steers nor brakes then.`,
    remedy: 'Less rebound damping, a lighter wheel, or slower.',
    values: { air, seconds: air * ride.duration },
    field: 'corner.shock.rebound',
    at: ride.wheelMin,
    where: 'drawing',
  }
}
