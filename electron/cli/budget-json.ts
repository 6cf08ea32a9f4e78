import { planBudget } from '../../core/budget/budget.ts'
import type { AxleBudget } from '../../core/budget/results.ts'
import type { Plan } from '../../core/plan/schema.ts'

/** One axle with exactly the keys other programs count on, in their order; what only the window needs stays out. */
const axleJson = (axle: AxleBudget) => ({
  id: axle.id,
  travel: {
    bump: axle.travel.bump,
    droop: axle.travel.droop,
    total: axle.travel.total,
    bumpLimitedBy: axle.travel.bumpLimitedBy,
    droopLimitedBy: axle.travel.droopLimitedBy,
  },
  limits: axle.limits,
  engagement: axle.engagement && {
    wheel: axle.engagement.wheel,
    shock: axle.engagement.shock,
    share: axle.engagement.share,
    force: axle.engagement.force,
  },
  zones: axle.zones.map(({ id, from, to, length, share, energy }) => ({ id, from, to, length, share, energy })),
  crossover: axle.crossover,
  mainSpring: {
    leftAtRide: axle.mainSpring.leftAtRide,
    leftAtEngagement: axle.mainSpring.leftAtEngagement,
    leftAtBump: axle.mainSpring.leftAtBump,
  },
  shockLeftAtBump: axle.shockLeftAtBump,
  static: {
    position: axle.static.position,
    springForce: axle.static.springForce,
    stopForce: axle.static.stopForce,
    rideForce: axle.static.rideForce,
    sprungWeight: axle.static.sprungWeight,
  },
  ride: { motionRatio: axle.ride.motionRatio, wheelRate: axle.ride.wheelRate, frequency: axle.ride.frequency },
  bump: {
    forceSlow: axle.bump.forceSlow,
    forceFast: axle.bump.forceFast,
    stopForceFast: axle.bump.stopForceFast,
  },
  findings: axle.findings.map(({ id, severity, message, values }) => ({ id, severity, message, values })),
})

/** The budget of a plan for programs: SI units, wheel positions in m from ride height. */
export const budgetJson = (plan: Plan) => ({
  setups: planBudget(plan).setups.map(({ id, axles }) => ({ id, axles: axles.map(axleJson) })),
})
