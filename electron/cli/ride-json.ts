import type { AxleOutcome, SetupRide } from '../../core/ride/plan-ride.ts'
import type { CornerRide } from '../../core/ride/results.ts'
import type { Course } from '../../core/ride/terrain.ts'

/** One axle's ride with exactly the keys other programs count on, in their order. */
const figuresJson = (ride: CornerRide) => ({
  duration: ride.duration,
  share: {
    droop: ride.share.droop,
    coilover: ride.share.coilover,
    engagement: ride.share.engagement,
    onStop: ride.share.onStop,
    air: ride.share.air,
  },
  hits: ride.hits,
  bottoms: ride.bottoms,
  wheelMax: ride.wheelMax,
  wheelMin: ride.wheelMin,
  suspensionForceMax: ride.suspensionForceMax,
  stopForceMax: ride.stopForceMax,
  stopSpeedMax: ride.stopSpeedMax,
  chassisAccelMax: ride.chassisAccelMax,
  chassisAccelRms: ride.chassisAccelRms,
})

/** A ride that did not get to its end has an `outcome` and the time it got to, s, and no figures. */
const outcomeJson = (outcome: AxleOutcome) =>
  outcome.ok ? figuresJson(outcome) : { outcome: outcome.reason, time: outcome.time }

/** The rides of a plan for programs: SI units, wheel positions in m from ride height; pitch of a whole car in rad, nose down positive. */
export const rideJson = (course: Course, setups: readonly SetupRide[]) => ({
  terrain: course.id,
  setups: setups.map(({ id, axles, pitch }) => ({
    id,
    axles: axles.map(axle => ({ id: axle.id, ...outcomeJson(axle.outcome) })),
    ...(pitch !== null && { pitchMin: pitch.least, pitchMax: pitch.most }),
  })),
})
