import {
  afterGauge,
  chargeAt,
  chargeBeforeGauge,
  idealChargeAt,
  ROOM_TEMPERATURE,
  USUAL_HOSE,
} from '../forces/charge.ts'
import { compareGas, type GasComparison } from '../forces/real-gas.ts'
import { chamberOf } from '../forces/stop.ts'
import type { HydraulicStop, UnitSystem } from '../plan/schema.ts'
import type { Say } from '../units/saying.ts'

/** A stop worked hard over rough ground, K: 80 °C; common practice. Its seals set the limit, ask the maker. */
const HOT = ROOM_TEMPERATURE + 60

/** What the nitrogen of a stop does besides the ideal gas of the model. Pressures gauge, Pa; temperatures K. */
export interface NitrogenFacts {
  readonly setAt: number
  readonly hotAt: number
  /** The charge hot, as nitrogen and as an ideal gas; null where the equation does not reach. */
  readonly hot: { readonly real: number | null; readonly ideal: number }
  /** Closed in a hit from the temperature it was set at: ideal gas of n = 1.4 and nitrogen, and the difference. */
  readonly closing: GasComparison
  /** What is left of the charge once a gauge was put on and taken off, and what to set so that the charge is left. */
  readonly gauge: { readonly hose: number; readonly left: number; readonly setTo: number }
}

/** @param hose volume of hose and gauge, m³; the usual one when nobody measured theirs */
export function nitrogenFacts(
  stop: HydraulicStop,
  { setAt = ROOM_TEMPERATURE, hotAt = HOT, hose = USUAL_HOSE }: { setAt?: number; hotAt?: number; hose?: number } = {},
): NitrogenFacts {
  const { charge, gasVolume, stroke } = stop
  const hot = chargeAt(charge, setAt, hotAt)
  return {
    setAt,
    hotAt,
    hot: { real: hot.ok ? hot.charge : null, ideal: idealChargeAt(charge, setAt, hotAt) },
    closing: compareGas(chamberOf(stop), stroke, 'fast', setAt),
    gauge: {
      hose,
      left: afterGauge(charge, gasVolume, hose),
      setTo: chargeBeforeGauge(charge, gasVolume, hose),
    },
  }
}

const ABSOLUTE_ZERO = 273.15

/** 68 °F or 20 °C, as the plan reads. */
export const degrees = (kelvin: number, units: UnitSystem): string => {
  const celsius = kelvin - ABSOLUTE_ZERO
  const shown = Math.round(units === 'inch' ? (celsius * 9) / 5 + 32 : celsius)
  return `${shown < 0 ? '−' : ''}${Math.abs(shown)} ${units === 'inch' ? '°F' : '°C'}`
}

/** The facts in sentences, for a screen or a sheet. */
export function nitrogenWords(
  { setAt, hotAt, hot, closing, gauge }: NitrogenFacts,
  units: 'inch' | 'metric',
  say: Say,
): string[] {
  const rises = hot.real ?? hot.ideal
  const closed = closing.ok
    ? `Closed in a hit real nitrogen reaches ${say(closing.real.pressure, 'pressure')} absolute, ${say(Math.abs(closing.difference.pressure), 'share', { digits: 1 })} ${closing.difference.pressure < 0 ? 'less' : 'more'} than the ideal gas of the other figures, and pushes with ${say(closing.real.force, 'force')} instead of ${say(closing.ideal.force, 'force')}.`
    : 'Closed in a hit it goes beyond what is known of real nitrogen here; the other figures are those of an ideal gas.'
  return [
    `Set at ${degrees(setAt, units)}, the charge is ${say(rises, 'pressure')} at ${degrees(hotAt, units)}.`,
    closed,
    `A gauge with a hose of ${say(gauge.hose, 'volume')} takes it down to ${say(gauge.left, 'pressure')} when it is put on and taken off: set ${say(gauge.setTo, 'pressure')} first, or count the loss in.`,
  ]
}
