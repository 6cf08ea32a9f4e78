import type { System } from '../../../core/units/quantity.ts'
import type { RiddenSetup } from '../../charts/terrain/terrain-scene.ts'
import { onTape } from '../../charts/text/length-spans.ts'
import type { Ridden, Rode } from '../../workers/messages.ts'

/** Why a setup has no ride to show, and what to look at. */
export const noRideWords = (name: string, { reason, time }: Exclude<Ridden, Rode>): string =>
  reason === 'needs two axles'
    ? `${name} has one axle in the plan: there is no whole car to drive.`
    : reason === 'too many steps'
      ? `${name} could be followed for ${time.toFixed(1)} s only: it shakes faster than can be worked out. Look at tire rate, unsprung weight and damper curves.`
      : `${name} could be followed for ${time.toFixed(1)} s only: its forces change too suddenly there. Look at the damper curves and the stop.`

/** A car that stands on steel before it moves; null for one that stands on its springs. */
export function standsWords({ name, model, ride }: RiddenSetup, landing: boolean, system: System): string | null {
  const start = ride?.trace?.wheel[0]
  if (start === undefined || landing || onTape(model.bump - model.droop, system) === 0) return null
  if (start >= model.bump)
    return `${name} has no rest on its springs: it stands at full bump, on steel, before it moves. Check weights, spring rates and preload.`
  return start <= model.droop
    ? `${name} has no rest on its springs: they hold it at full droop before it moves. Check weights, spring rates and preload.`
    : null
}
