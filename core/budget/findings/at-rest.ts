import { cornerModel } from '../../corner/corner.ts'
import type { CornerModel } from '../../corner/corner-model.ts'
import { restingPosition } from '../../corner/static-position.ts'
import { INCH } from '../../units/constants.ts'
import { listed } from '../../units/saying.ts'
import type { Rule } from './rule.ts'

/** The finest mark a ride height is taken to, m: a tape's sixteenth. Nearer than this is agreement. */
const RIDE_HEIGHT_MARK = INCH / 16

/** From here on a ride height that disagrees is a caution, not a note, m: common practice. */
const RIDE_HEIGHT_FAR = INCH / 2

/** The stop carries weight while the car stands still. */
export const ridesOnStop: Rule = ({ model, figures, say, some }) => {
  const { engagement, static: rest } = figures
  if (engagement === null || rest.stopForce <= 0) return null
  const share = rest.stopForce / rest.sprungWeight
  const free = cornerModel({ ...model.corner, stop: null })
  const clear = restingPosition(free, rest.sprungWeight)
  const gap = free.linkage.at(clear).stop
  const settles = clear < free.bump
  return {
    id: 'rides-on-stop',
    severity: 'caution',
    message: `It rides on its stop, which carries ${some(rest.stopForce, 'force')}, ${some(share, 'share')} of the sprung weight.`,
    remedy: settles
      ? `More preload or rate, or a gap above ${say(gap, 'length')}.`
      : 'More preload or rate first: the springs alone do not hold it up.',
    values: { stopForce: rest.stopForce, share, engagement: engagement.wheel, gapToClear: gap },
    field: 'corner.stop.gap',
    at: Math.min(model.bump, Math.max(model.droop, engagement.wheel)),
    where: 'budget',
  }
}

/** The springs say it sits somewhere else than the tape does. */
export const offRideHeight: Rule = ({ model, figures, say }) => {
  const { position, rideForce, sprungWeight } = figures.static
  if (Math.abs(position) <= RIDE_HEIGHT_MARK) return null
  const over = rideForce - sprungWeight
  const clamped = position === model.bump || position === model.droop
  const much = say(Math.abs(over), 'force', { digits: 0 })
  const held = over > 0 ? `holds ${much} too much` : `lacks ${much}`
  const end = position > 0 ? 'full bump' : 'full droop'
  const place = clamped
    ? `it should sit at ${end}`
    : `it should sit ${say(Math.abs(position), 'length')} ${position < 0 ? 'higher' : 'lower'} than measured`
  const causes = explanations(model, over)
  const named = [
    `${much} ${over > 0 ? 'more' : 'less'} weight`,
    ...(causes.preload === null
      ? []
      : [`${say(Math.abs(causes.preload), 'length')} ${causes.preload > 0 ? 'more' : 'less'} preload`]),
    ...(causes.springs === null
      ? []
      : [`springs ${say(Math.abs(causes.springs), 'share')} ${causes.springs > 0 ? 'stiffer' : 'softer'}`]),
  ]
  return {
    id: 'off-ride-height',
    severity: clamped || Math.abs(position) > RIDE_HEIGHT_FAR ? 'caution' : 'note',
    message: `The corner ${held}: ${place}.`,
    remedy: `Weigh it and tape the shaft again: ${listed(named, 'or')} than entered would explain it.`,
    values: {
      position,
      forceOver: over,
      ...(causes.preload !== null && { preloadOff: causes.preload }),
      ...(causes.springs !== null && { springsOff: causes.springs }),
    },
    field: 'corner.springs.preload',
    at: position,
    where: 'forces',
  }
}

/** Springs further from their mark than this are other springs, not wrongly marked ones. */
const MARKED_WRONG = 0.3

/**
 * What each measurement alone would have to be off by to hold `over` N less at the wheel: preload in m, all spring rates as a share; null
 * where that alone is no likely slip of the tape or of the mark.
 */
function explanations(model: CornerModel, over: number): { preload: number | null; springs: number | null } {
  const ratio = model.linkage.at(0).shockRatio
  const preload = -over / (ratio * packRate(model))
  const springs = -over / model.forces(0, 'slow').springs
  return {
    preload: Number.isFinite(preload) && Math.abs(preload) < model.corner.shock.stroke ? preload : null,
    springs: Number.isFinite(springs) && Math.abs(springs) < MARKED_WRONG ? springs : null,
  }
}

/** Rate of the spring pack along the shock at ride height, N/m. */
function packRate(model: CornerModel): number {
  const step = 1e-4
  const ratio = model.linkage.at(0).shockRatio
  const force = (wheel: number): number =>
    model.forces(wheel, 'slow').springs / (model.linkage.at(wheel).shockRatio || 1)
  return (force(step / 2) - force(-step / 2)) / (ratio * step)
}
