import { ATMOSPHERE, INCH } from '../units/constants.ts'
import { type NitrogenState, nitrogenAt, nitrogenAtDensity } from './nitrogen.ts'

/** What becomes of a charge between the gauge and the car. Pressures gauge in Pa, volumes in m³, temperatures in K. */

/** 20 °C: where a charge is set when nobody says otherwise. */
export const ROOM_TEMPERATURE = 293.15

/** Ideal gas shut in: absolute pressure goes with absolute temperature. @param charge gauge, Pa, set at the temperature `setAt`, K; @returns gauge, Pa, at `at` */
export const idealChargeAt = (charge: number, setAt: number, at: number): number =>
  ((charge + ATMOSPHERE) * at) / setAt - ATMOSPHERE

export type ChargeAt = { readonly ok: true; readonly charge: number } | Extract<NitrogenState, { ok: false }>

/**
 * Nitrogen shut in a fixed volume at another temperature (nitrogen.ts). Of the ideal law it is within 0.7 % of gauge from 0 to 60 °C for
 * charges up to 300 psi set at 20 °C.
 * @param charge gauge, set at the temperature `setAt`
 */
export function chargeAt(charge: number, setAt: number, at: number): ChargeAt {
  const set = nitrogenAt(setAt, charge + ATMOSPHERE)
  if (!set.ok) return set
  const then = nitrogenAtDensity(at, set.density)
  return then.ok ? { ok: true, charge: then.pressure - ATMOSPHERE } : then
}

/** Volume of a hose, m³. @param bore m; @param length m, fittings and gauge counted as hose */
export const hoseVolume = (bore: number, length: number): number => (Math.PI / 4) * bore ** 2 * length

/** A gauge hose of two feet and 1/8 in bore, fittings included, m³: common practice. Measure yours. */
export const USUAL_HOSE = hoseVolume(INCH / 8, 24 * INCH)

/**
 * Charge left after a gauge with its hose was put on, filled from the stop, and taken off. What was in the hose at atmosphere stays, what
 * filled it is lost: (p₀ + patm)·V + patm·Vh = (p + patm)·(V + Vh), so p = p₀·V/(V + Vh), gauge. Ideal gas, given time to settle; derived here.
 * @param volume of gas in the stop; @param hose volume of hose and gauge; @param times it is done, 0 or more
 */
export const afterGauge = (charge: number, volume: number, hose: number, times = 1): number =>
  charge * (volume / (volume + hose)) ** times

/** Charge to start from so that `wanted` is left after the gauge has been put on and taken off `times` times. */
export const chargeBeforeGauge = (wanted: number, volume: number, hose: number, times = 1): number =>
  wanted / afterGauge(1, volume, hose, times)
