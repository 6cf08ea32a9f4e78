import { chargeAt, idealChargeAt, ROOM_TEMPERATURE } from '../forces/charge.ts'
import { compareGas, type GasComparison } from '../forces/real-gas.ts'
import { chamberOf } from '../forces/stop.ts'
import type { HydraulicStop } from '../plan/schema.ts'

/** A charge at one temperature, gauge, Pa: as nitrogen, null where its equation does not reach, and as an ideal gas. */
export interface ChargeRow {
  /** K. */
  readonly at: number
  readonly real: number | null
  readonly ideal: number
}

/** From a cold morning to a stop worked hard, K above the temperature it is set at: −20 to 100 °C where that is 20. */
const WARMER = [-40, -20, 0, 20, 40, 60, 80] as const

/** The charge of a stop, set at a temperature, as it warms and cools with the stop fully out. */
export const chargeByTemperature = ({ charge }: HydraulicStop, setAt = ROOM_TEMPERATURE): ChargeRow[] =>
  WARMER.map(more => {
    const at = setAt + more
    const real = chargeAt(charge, setAt, at)
    return { at, real: real.ok ? real.charge : null, ideal: idealChargeAt(charge, setAt, at) }
  })

/** A stop pushed in fast by a share of its stroke: nitrogen beside the ideal gas of n = 1.4. */
export interface SqueezeRow {
  /** Of the stroke, 0 to 1. */
  readonly share: number
  readonly gas: GasComparison
}

const SHARES = [0, 0.25, 0.5, 0.75, 0.9, 1] as const

/** Fast figures of a stop along its stroke, from the temperature it was set at. */
export const squeezeByStroke = (stop: HydraulicStop, setAt = ROOM_TEMPERATURE): SqueezeRow[] =>
  SHARES.map(share => ({ share, gas: compareGas(chamberOf(stop), share * stop.stroke, 'fast', setAt) }))
