import { circleArea, gasPressure } from '../forces/gas.ts'
import { chamberOf } from '../forces/stop.ts'
import type { Corner, HydraulicStop, Stop } from '../plan/schema.ts'
import { ATMOSPHERE, PSI } from '../units/constants.ts'
import type { Say } from '../units/saying.ts'

/** A corner whose stop is hydraulic. */
export type HydraulicCorner = Corner & { readonly stop: HydraulicStop }

export const isHydraulic = (corner: Corner): corner is HydraulicCorner => corner.stop?.kind === 'hydraulic'

/** Why a change that needs a hydraulic stop cannot be made here. @param needs what needs it, to the comma: `A spacer goes inside a hydraulic stop` */
export const notHydraulic = ({ stop }: Corner, needs: string): string =>
  `${needs}, and ${stop === null ? 'there is no stop' : 'this one is an elastomer'}.`

/** How far the stop can be pushed in, m. */
export const strokeOf = (stop: Stop): number =>
  stop.kind === 'hydraulic' ? stop.stroke : stop.curve.at(-1)!.deflection

/** Travel along the stop's axis from ride height at which it is closed, m. */
export const closesAt = (stop: Stop): number => stop.gap + strokeOf(stop)

/** Room left to the gas with the stop closed, m³. */
export const closedGasVolume = (stop: HydraulicStop): number =>
  stop.gasVolume - circleArea(stop.shaftDiameter) * stop.stroke

/** Gauge pressure with the stop closed in a hit, Pa. */
export const closedPressure = (stop: HydraulicStop): number =>
  gasPressure(chamberOf(stop), stop.stroke, 'fast') - ATMOSPHERE

/** A charge above this is more than usual, Pa: 400 psi, beyond which seals and bodies are in doubt; common practice. */
export const USUAL_CHARGE = 400 * PSI

/** What to look after in a stop as changed. */
export function stopNotes(stop: HydraulicStop, say: Say): string[] {
  const pressure = closedPressure(stop)
  const rated = stop.body?.ratedPressure
  const notes: string[] = []
  if (rated !== undefined && pressure > rated)
    notes.push(`Closed in a hit it reaches ${say(pressure, 'pressure')}; its body is rated ${say(rated, 'pressure')}.`)
  if (stop.charge > USUAL_CHARGE)
    notes.push(`A charge of ${say(stop.charge, 'pressure')} is more than usual: ask the maker of its seals and body.`)
  return notes
}
