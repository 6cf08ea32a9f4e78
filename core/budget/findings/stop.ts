import { circleArea, gasPressure } from '../../forces/gas.ts'
import type { HydraulicStop } from '../../plan/schema.ts'
import { ATMOSPHERE, INCH } from '../../units/constants.ts'
import { chargeBelow } from '../../units/steps.ts'
import type { Finding } from '../results.ts'
import type { Rule } from './rule.ts'

/** Least share of bump travel the coilover should carry alone where the plan names no target: common practice. */
export const LEAST_COILOVER_SHARE = 0.4

/** A share this near its target meets it: less than anybody reads off. */
const SHARE_MARK = 0.005

/** Closer to the touch than this a change of spring rate falls together with it, m: common practice. */
const TOGETHER = INCH / 2

/** Less than this is nothing on a tape, m: half a sixteenth. */
const SMALLEST = INCH / 32

/** A tenth either way shows what hangs on a gas volume; one that is only assumed may well be further off (core/tolerance/usual.ts). */
const VOLUME_DOUBT = 0.1

export const littleCoilover: Rule = ({ model, figures, targets, say }): Finding | null => {
  const { engagement, travel } = figures
  const target = targets?.coiloverShare ?? LEAST_COILOVER_SHARE
  if (engagement === null || travel.bump === 0 || engagement.share >= target - SHARE_MARK) return null
  const wheel = target * travel.bump
  const gap = model.linkage.at(wheel).stop
  const stop = model.corner.stop!
  const longer = gap - stop.gap
  const spacer = stop.kind === 'hydraulic' && longer < stop.stroke
  const already = engagement.wheel <= 0
  return {
    id: 'little-coilover-travel',
    severity: 'caution',
    message: already
      ? `None of the ${say(travel.bump, 'length')} of bump is on the coilover alone: the stop is in from the start.`
      : `The stop engages early: ${say(engagement.share, 'share')} of bump travel is on the coilover, ${targets?.coiloverShare === undefined ? 'usual' : 'target'} ${say(target, 'share')}.`,
    remedy:
      figures.static.stopForce > 0
        ? 'First get it off its stop at rest; then give the stop more gap.'
        : `Engage at ${say(wheel, 'length', { sign: true })}: a gap of ${say(gap, 'length')}${spacer ? `, by a ${say(longer, 'length')} spacer inside the stop` : ''}.`,
    values: { share: engagement.share, target, gapNeeded: gap, gapMore: longer },
    field: 'corner.stop.gap',
    at: Math.min(model.bump, Math.max(model.droop, engagement.wheel)),
    where: 'budget',
  }
}

/** Less bump travel than this is none, m. */
const NO_TRAVEL = INCH / 16

export const noBumpTravel: Rule = ({ model, figures, say }): Finding | null => {
  if (figures.travel.bump >= NO_TRAVEL) return null
  return {
    id: 'no-bump-travel',
    severity: 'danger',
    message: `At ride height the wheel has ${figures.travel.bump === 0 ? 'no bump travel' : `${say(figures.travel.bump, 'length', { decimal: true, digits: 2 })} of bump travel`}: ${figures.travel.bumpLimitedBy} ends it.`,
    remedy: 'Tape gap and shaft showing again; if they are right, it must sit higher.',
    values: { bump: figures.travel.bump },
    field: 'corner.shock.showing',
    at: model.bump,
    where: 'drawing',
  }
}

/** A pad or shaft that moves the wrong way as the wheel rises: a sign slipped, or a part is drawn on the wrong side. */
export const worksBackwards: Rule = ({ model }): Finding | null => {
  const { shockRatio, stopRatio } = model.linkage.at(0)
  const stop = model.corner.stop !== null && stopRatio <= 0
  if (shockRatio > 0 && !stop) return null
  const part = shockRatio > 0 ? 'The pad moves away from the stop' : 'The shock opens'
  return {
    id: 'works-backwards',
    severity: 'danger',
    message: `${part} as the wheel rises: the budget cannot be right.`,
    remedy:
      shockRatio > 0
        ? 'Check the stop axis: it points the way the pad moves in bump.'
        : 'Check the mounts of the shock.',
    values: { shockRatio, stopRatio },
    field: 'corner.linkage',
    at: 0,
    where: 'drawing',
  }
}

/** A pad whose path turns away before the travel ends: above there the stop does nothing. Tables only rise; arms and axles can turn. */
export const leavesAgain: Rule = ({ model, figures, say }): Finding | null => {
  const { engagement } = figures
  if (engagement === null) return null
  const open = (wheel: number): boolean => (model.parts(wheel).stopGap ?? 0) > 0
  const ends = [...model.kinks.filter(kink => kink > engagement.wheel), model.bump]
  const leaves = ends.findIndex((end, i) => i > 0 && open((ends[i - 1]! + end) / 2))
  if (leaves < 0) return null
  const wheel = ends[leaves - 1]!
  return {
    id: 'pad-leaves-stop',
    severity: 'danger',
    message: `The pad leaves its stop again at ${say(wheel, 'length', { sign: true })}: its path turns away before bump ends.`,
    remedy: 'Move pad and stop so that the pad still rises at full bump.',
    values: { wheel },
    field: 'corner.linkage',
    at: wheel,
    where: 'drawing',
  }
}

export const neverMet: Rule = ({ model, figures, say, some }): Finding | null => {
  const { stop } = model.corner
  if (stop === null || figures.engagement !== null) return null
  const short = model.parts(model.bump).stopGap!
  return {
    id: 'stop-never-met',
    severity: 'danger',
    message: `The stop is never met: ${figures.travel.bumpLimitedBy} ends bump with ${some(short, 'length')} of gap left.`,
    remedy: `Bring the pad or stop at least ${say(Math.max(short, 2 * SMALLEST), 'length')} closer.`,
    values: { gapLeft: short, bump: model.bump },
    field: 'corner.stop.gap',
    at: model.bump,
    where: 'stop',
  }
}

export const openAtContact: Rule = ({ model, figures, some }): Finding | null => {
  const left = model.parts(model.bump).stopLeft
  const { bumpLimitedBy } = figures.travel
  const hard = bumpLimitedBy === 'chassis contact' || bumpLimitedBy === 'linkage end'
  if (!hard || left === null || figures.engagement === null || left < SMALLEST) return null
  const chassis = bumpLimitedBy === 'chassis contact'
  return {
    id: chassis ? 'stop-open-at-contact' : 'stop-open-at-linkage-end',
    severity: 'danger',
    message: `${chassis ? 'The chassis touches' : 'The linkage runs out'} with ${some(left, 'length')} of the stop still open.`,
    remedy: `A gap or pad shim ${some(left, 'length')} closer lets the stop end it.`,
    values: { stopLeft: left, bump: model.bump },
    field: chassis ? 'corner.clearance.bump' : 'corner.linkage',
    at: model.bump,
    where: 'stop',
  }
}

const chamberOf = (stop: HydraulicStop) => ({
  area: circleArea(stop.shaftDiameter),
  charge: stop.charge,
  volume: stop.gasVolume,
})

export const overRatedPressure: Rule = ({ model, figures, units, say }): Finding | null => {
  const { stop } = model.corner
  const pushed = model.parts(model.bump).stopCompression
  if (stop?.kind !== 'hydraulic' || figures.engagement === null || pushed === null) return null
  const rated = stop.body?.ratedPressure
  if (rated === undefined) return null
  const pressure = gasPressure(chamberOf(stop), pushed, 'fast') - ATMOSPHERE
  if (pressure <= rated) return null
  const squeeze = (pressure + ATMOSPHERE) / (stop.charge + ATMOSPHERE)
  const charge = (rated + ATMOSPHERE) / squeeze - ATMOSPHERE
  return {
    id: 'stop-over-rated-pressure',
    severity: 'danger',
    message: `Closed in a hit, the stop reaches ${say(pressure, 'pressure')}; its body is rated ${say(rated, 'pressure')}.`,
    remedy:
      charge > 0
        ? `Charge to ${say(chargeBelow(charge, units), 'pressure')} or less, or more gas volume.`
        : 'More gas volume (less oil): no charge is low enough.',
    values: { pressure, ratedPressure: rated, chargeAtRating: charge },
    field: 'corner.stop.charge',
    at: model.bump,
    where: 'stop',
  }
}

export const twoRateChanges: Rule = ({ model, figures, say, some }): Finding | null => {
  const { engagement, crossover } = figures
  const springs = model.corner.springs.springs
  if (engagement === null || springs.length < 2 || engagement.wheel >= model.bump) return null
  const touch = Math.max(engagement.wheel, model.droop)
  const name = springs[0]!.name === '' ? 'tender' : springs[0]!.name
  if (crossover === null)
    return {
      id: 'tender-working-at-engagement',
      severity: 'note',
      message: `The ${name} is still working when the stop is met, and never crosses over.`,
      remedy: 'Set the divider nearer its ring.',
      values: { engagement: engagement.wheel },
      field: 'corner.springs.crossover.gap',
      at: touch,
      where: 'forces',
    }
  if (crossover <= touch - TOGETHER) return null
  const apart = Math.abs(crossover - touch)
  const inside = crossover > touch
  return {
    id: 'crossover-at-engagement',
    severity: 'caution',
    message:
      apart < SMALLEST
        ? 'Crossover comes right at engagement: two rate changes together.'
        : inside
          ? `The ${name} still works at engagement: crossover comes ${say(crossover - touch, 'length')} later, two rate changes together.`
          : `Crossover comes ${say(touch - crossover, 'length')} before engagement: two rate changes together.`,
    remedy: `Set the divider ${some((crossover - touch + TOGETHER) * Math.abs(model.linkage.at(touch).shockRatio), 'length')} nearer its ring.`,
    values: { crossover, engagement: engagement.wheel },
    field: 'corner.springs.crossover.gap',
    at: crossover,
    where: 'forces',
  }
}

export const assumedVolume: Rule = ({ axle, model, figures, say }): Finding | null => {
  const { stop } = model.corner
  if (stop?.kind !== 'hydraulic' || !axle.assumed?.includes('corner.stop.gasVolume')) return null
  const pushed = model.parts(model.bump).stopCompression
  const chamber = chamberOf(stop)
  if (
    figures.engagement === null ||
    pushed === null ||
    chamber.volume * (1 - VOLUME_DOUBT) <= chamber.area * pushed * 1.001
  )
    return {
      id: 'gas-volume-assumed',
      severity: 'note',
      message: `The stop's gas volume, ${say(stop.gasVolume, 'volume')}, is assumed, not measured.`,
      remedy: 'Fill it with oil and measure what goes in.',
      values: { gasVolume: stop.gasVolume },
      field: 'corner.stop.gasVolume',
      at: model.bump,
      where: 'stop',
    }
  const force = (share: number): number =>
    chamber.area * (gasPressure({ ...chamber, volume: chamber.volume * share }, pushed, 'fast') - ATMOSPHERE)
  const [least, most] = [force(1 + VOLUME_DOUBT), force(1 - VOLUME_DOUBT)]
  return {
    id: 'gas-volume-assumed',
    severity: 'note',
    message: `Gas volume is assumed; ${say(VOLUME_DOUBT, 'share')} either way, the stop ends at ${say(least, 'force', { unit: false })} to ${say(most, 'force')}.`,
    remedy: 'Fill it with oil and measure what goes in.',
    values: { gasVolume: stop.gasVolume, stopForceLeast: least, stopForceMost: most },
    field: 'corner.stop.gasVolume',
    at: model.bump,
    where: 'stop',
  }
}

export const assumedShockVolume: Rule = ({ axle, model, say }): Finding | null => {
  const { gas } = model.corner.shock
  if (gas === null || !axle.assumed?.includes('corner.shock.gas.volume')) return null
  return {
    id: 'shock-gas-volume-assumed',
    severity: 'note',
    message: `The shock's gas volume, ${say(gas.volume, 'volume')}, is assumed, not measured.`,
    remedy: 'Take it from the body and reservoir, or measure it.',
    values: { gasVolume: gas.volume },
    field: 'corner.shock.gas.volume',
    at: model.bump,
    where: 'shock',
  }
}
