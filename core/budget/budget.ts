import { cornerModel } from '../corner/corner.ts'
import type { CornerModel } from '../corner/corner-model.ts'
import { restingPosition } from '../corner/static-position.ts'
import type { Axle, Plan } from '../plan/schema.ts'
import { GRAVITY } from '../units/constants.ts'
import { type Say, sayIn } from '../units/saying.ts'
import { findings } from './findings/findings.ts'
import type { AxleBudget, AxleFigures, Engagement, PlanBudget, Ride, StaticPosition, Zone, ZoneId } from './results.ts'

/** ∫F dw with fast gas between two wheel positions in m inside the travel, J; negative going down. The difference of closed forms, not a sum. */
export const energyBetween = (model: CornerModel, from: number, to: number): number =>
  model.energy(to, 'fast') - model.energy(from, 'fast')

/** Where the coilover zone ends, m: engagement, kept between ride height and full bump; full bump where no stop is met. */
const coiloverEnd = ({ bump, engagement }: CornerModel): number => Math.min(bump, Math.max(0, engagement ?? bump))

/** Share of bump travel from ride height on the coilover alone, 0 to 1. */
export const coiloverShare = (model: CornerModel): number => (model.bump === 0 ? 0 : coiloverEnd(model) / model.bump)

function zones(model: CornerModel): Zone[] {
  const { droop, bump } = model
  const divide = coiloverEnd(model)
  const zone = (id: ZoneId, from: number, to: number): Zone => ({
    id,
    from,
    to,
    length: to - from,
    share: id === 'droop' || bump === 0 ? 0 : (to - from) / bump,
    energy: energyBetween(model, from, to),
  })
  return [zone('droop', droop, 0), zone('coilover', 0, divide), zone('engagement', divide, bump)]
}

function engagementOf(model: CornerModel): Engagement | null {
  const { engagement, bump, droop } = model
  if (engagement === null) return null
  return {
    wheel: engagement,
    shock: model.linkage.at(engagement).shock,
    share: bump === 0 ? 0 : Math.max(0, engagement) / bump,
    force: model.forces(Math.max(engagement, droop), 'slow', 'below').total,
  }
}

/** Sprung weight on one wheel, N. */
export const sprungWeight = ({ corner }: CornerModel): number => (corner.cornerMass - corner.unsprungMass) * GRAVITY

function staticOf(model: CornerModel): StaticPosition {
  const weight = sprungWeight(model)
  const position = restingPosition(model, weight)
  const above = model.forces(position, 'slow', 'above')
  const below = model.forces(position, 'slow', 'below')
  // Parked on the step, the stop carries what balance asks for: what springs and gas leave over.
  const onStep = above.stop !== below.stop
  const left = weight - below.total
  return {
    position,
    springForce: above.springs,
    stopForce: onStep ? Math.min(above.stop, Math.max(0, left)) : above.stop,
    rideForce: model.forces(0, 'slow').total,
    sprungWeight: weight,
  }
}

/** √(k/m)/2π (any vibrations text, such as J. P. Den Hartog, Mechanical Vibrations, ch. 2). Rate in N/m, mass in kg above 0; Hz, 0 where the rate does not hold the mass up. */
const frequency = (rate: number, mass: number): number => Math.sqrt(Math.max(0, rate) / mass) / (2 * Math.PI)

function rideOf(model: CornerModel): Ride {
  const { corner, engagement, droop, bump } = model
  const mass = corner.cornerMass - corner.unsprungMass
  const rate = model.wheelRate(0, 'slow')
  const onTire = rate > 0 ? (rate * corner.tire.rate) / (rate + corner.tire.rate) : 0
  const within = engagement !== null && engagement > droop && engagement < bump
  return {
    motionRatio: model.linkage.at(0).shockRatio,
    wheelRate: rate,
    frequency: frequency(rate, mass),
    frequencyOnTire: frequency(onTire, mass),
    frequencyPastEngagement: within ? frequency(model.wheelRate(engagement, 'slow', 'above'), mass) : null,
  }
}

function figures(id: Axle['id'], model: CornerModel): AxleFigures {
  const { bump, droop, engagement } = model
  const mainLeft = (wheel: number): number => model.parts(wheel).springs.at(-1)!.left
  return {
    id,
    travel: {
      bump,
      droop: droop === 0 ? 0 : -droop,
      total: bump - droop,
      bumpLimitedBy: model.bumpLimitedBy,
      droopLimitedBy: model.droopLimitedBy,
    },
    limits: model.bumpLimits,
    engagement: engagementOf(model),
    zones: zones(model),
    crossover: model.crossover,
    mainSpring: {
      leftAtRide: mainLeft(0),
      leftAtEngagement: engagement === null ? null : mainLeft(Math.max(engagement, droop)),
      leftAtBump: mainLeft(bump),
    },
    shockLeftAtBump: model.parts(bump).shockLeft,
    static: staticOf(model),
    ride: rideOf(model),
    bump: {
      forceSlow: model.forces(bump, 'slow').total,
      forceFast: model.forces(bump, 'fast').total,
      stopForceFast: model.stopForce(bump, 'fast'),
    },
  }
}

/**
 * The budget of one axle's corner: zones, what is left where, static position, findings. SI throughout (results.ts).
 * @param model of `axle.corner`, if already at hand
 * @param plan for the units its findings speak in, and its targets
 * @param say writes the values in its findings, if not in the plan's units
 */
export function axleBudget(
  axle: Axle,
  plan: Pick<Plan, 'units' | 'targets'>,
  model: CornerModel = cornerModel(axle.corner),
  say: Say = sayIn(plan.units),
): AxleBudget {
  const found = figures(axle.id, model)
  // Not a spread: those are objects of a kind each, and whoever reads ten thousand of them pays for it.
  return Object.assign(found, { findings: findings(axle, model, found, plan, say) })
}

/** The budget of every setup and axle of a plan that parsePlan accepts. */
export const planBudget = (plan: Plan): PlanBudget => ({
  setups: plan.setups.map(setup => ({
    id: setup.id,
    axles: setup.axles.map(axle => axleBudget(axle, plan)),
  })),
})
