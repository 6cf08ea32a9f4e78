import { cornerModel } from '../../corner/corner.ts'
import { restingPosition } from '../../corner/static-position.ts'
import { INCH } from '../../units/constants.ts'
import type { Rule } from './rule.ts'

/** The finest mark a ride height is taken to, m: a tape's sixteenth. Nearer than this is agreement. */
const RIDE_HEIGHT_MARK = INCH / 16

/** From here on a ride height that disagrees is a caution, not a note, m: common practice. */
const RIDE_HEIGHT_FAR = INCH / 2

/** The stop carries weight while the car stands still. */
export const ridesOnStop: Rule = ({ model, figures, say }) => {
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
    message: `It rides on its stop, which carries ${say(rest.stopForce, 'force')}, ${say(share, 'share')} of the sprung weight.`,
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
export const offRideHeight: Rule = ({ model, figures, axle, say }) => {
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
  const corner = axle.corner
  const preload = -over / Math.abs(model.linkage.at(0).shockRatio || 1) / packRate(model)
  const suspects = Number.isFinite(preload) && Math.abs(preload) < corner.shock.stroke
  return {
    id: 'off-ride-height',
    severity: clamped || Math.abs(position) > RIDE_HEIGHT_FAR ? 'caution' : 'note',
    message: `The corner ${held}: ${place}.`,
    remedy: `Weigh it and tape the shaft again${suspects ? `; preload ${say(Math.abs(preload), 'length')} ${preload > 0 ? 'more' : 'less'} than entered would explain it` : '; check rates and motion ratio'}.`,
    values: { position, forceOver: over },
    field: 'corner.springs.preload',
    at: position,
    where: 'forces',
  }
}

/** Rate of the spring pack along the shock at ride height, N/m. */
function packRate(model: Parameters<Rule>[0]['model']): number {
  const step = 1e-4
  const ratio = model.linkage.at(0).shockRatio
  const force = (wheel: number): number =>
    model.forces(wheel, 'slow').springs / (model.linkage.at(wheel).shockRatio || 1)
  return (force(step / 2) - force(-step / 2)) / (ratio * step)
}
