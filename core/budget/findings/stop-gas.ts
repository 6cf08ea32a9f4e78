import { gasPressure } from '../../forces/gas.ts'
import { chamberOf } from '../../forces/stop.ts'
import type { HydraulicStop } from '../../plan/schema.ts'
import { ATMOSPHERE } from '../../units/constants.ts'
import { chargeBelow } from '../../units/steps.ts'
import type { Finding } from '../results.ts'
import type { Rule } from './rule.ts'

/** A tenth either way shows what hangs on a gas volume; one that is only assumed may well be further off (core/tolerance/usual.ts). */
const VOLUME_DOUBT = 0.1

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

export const assumedVolume: Rule = ({ axle, model, figures, say }): Finding | null => {
  const { stop } = model.corner
  if (stop?.kind !== 'hydraulic' || !axle.assumed?.includes('corner.stop.gasVolume')) return null
  const pushed = figures.engagement === null ? null : model.parts(model.bump).stopCompression
  const ends = pushed === null ? null : endForces(stop, pushed)
  return {
    id: 'gas-volume-assumed',
    severity: 'note',
    message:
      ends === null
        ? `The stop’s gas volume, ${say(stop.gasVolume, 'volume')}, is assumed, not measured.`
        : `Gas volume is assumed; ${say(VOLUME_DOUBT, 'share')} either way, the stop ends at ${say(ends.least, 'force', { unit: false })} to ${say(ends.most, 'force')}.`,
    remedy: 'Fill it with oil and measure what goes in.',
    values: {
      gasVolume: stop.gasVolume,
      ...(ends !== null && { stopForceLeast: ends.least, stopForceMost: ends.most }),
    },
    field: 'corner.stop.gasVolume',
    at: model.bump,
    where: 'stop',
  }
}

/** Where the smaller volume is this near to what the shaft pushes aside, the force at the end says nothing. */
const NO_GAS_LEFT = 1.001

/** What a hit ends at with more and with less gas, N; null where less would leave none. @param pushed how far the shaft is in, m */
function endForces(stop: HydraulicStop, pushed: number): { least: number; most: number } | null {
  const chamber = chamberOf(stop)
  if (chamber.volume * (1 - VOLUME_DOUBT) <= chamber.area * pushed * NO_GAS_LEFT) return null
  const force = (share: number): number =>
    chamber.area * (gasPressure({ ...chamber, volume: chamber.volume * share }, pushed, 'fast') - ATMOSPHERE)
  return { least: force(1 + VOLUME_DOUBT), most: force(1 - VOLUME_DOUBT) }
}
