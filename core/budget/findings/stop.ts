import type { Finding } from '../results.ts'
import { type Rule, SMALLEST } from './rule.ts'

/** Least share of bump travel the coilover should carry alone where the plan names no target: common practice. */
export const LEAST_COILOVER_SHARE = 0.4

/** A share this near its target meets it: less than anybody reads off. */
const SHARE_MARK = 0.005

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
