import { damperCurve } from '../forces/damper.ts'
import { circleArea } from '../forces/gas.ts'
import type { HydraulicStop } from '../plan/schema.ts'
import { PSI } from '../units/constants.ts'
import { type Buckling, buckling } from './column.ts'
import { STEEL_DENSITY, type TubeSize, tubeSection } from './tube.ts'

/** Steels of drawn-over-mandrel tube, least yield stress-relieved, Pa (boyersteel.com, ASTM A513 T-5 DOM). */
export const TUBE_STEELS = { '1015': 50e3 * PSI, '1020': 55e3 * PSI, '1026': 65e3 * PSI } as const
export type TubeSteel = keyof typeof TUBE_STEELS

/** Modulus of elasticity of carbon steel, Pa: 29.7 million psi. */
const STEEL_MODULUS = 29.7e6 * PSI

/** Safety factor asked for against yield and buckling: 3, usual for machine parts under a load that is not well known (Faires, ch. 1 and 7). */
export const SAFETY = 3

/** Length of the solid steel shaft that is brought up short, over stroke and spacer: piston, pad and the part in the gland weigh no more. Assumed. */
const SHAFT_LENGTHS = 3

/**
 * Greatest load on an elastic bar that brings a mass up short: F = P + √(P² + k·m·v²), P the force that keeps pushing; from rest twice P
 * (½mv² + P·F/k = F²/2k; J. M. Gere, Mechanics of Materials, ch. 2).
 * @param push N, 0 or more; @param speed m/s it arrives at; @param mass kg; @param stiffness of the bar, N/m
 */
export const arrestingLoad = (push: number, speed: number, mass: number, stiffness: number): number =>
  push + Math.sqrt(push ** 2 + stiffness * mass * speed ** 2)

/** What a spacer stands when the stop tops out on it: the shaft comes out, and the tube is caught between piston and gland. N, Pa. */
export interface Strength {
  /** The gas alone, and the greatest load. */
  readonly gas: number
  readonly load: number
  /** At which the shaft arrives, m/s; null without a rebound curve that holds it back: then the load is that of gas let go at once, no more. */
  readonly speed: number | null
  readonly stress: number
  /** Infinite where nothing loads it. */
  readonly yieldFactor: number
  readonly buckling: Buckling
  readonly bucklingFactor: number
  /** Both factors at least `SAFETY`. */
  readonly enough: boolean
}

/**
 * Stress and buckling of a spacer at full extension, where alone it is loaded: the gas pushes, and the shaft arrives as fast as its rebound
 * damping lets the gas push it. Rigid but for the tube, no oil squeezed out between, ends free to turn: each the worse case.
 * @param stop as it is with the spacer in; @param tube as finished; @param length m
 * @param charge gauge, Pa, the highest it will have at full length: hot
 */
export function spacerStrength(
  stop: HydraulicStop,
  tube: TubeSize,
  length: number,
  steel: TubeSteel,
  charge: number = stop.charge,
): Strength {
  const section = tubeSection(tube)
  const yieldStrength = TUBE_STEELS[steel]
  const shaft = circleArea(stop.shaftDiameter)
  const gas = shaft * charge
  const arrives = damperCurve(stop.rebound ?? []).speed(gas)
  const speed = Number.isFinite(arrives) ? arrives : null
  const mass = STEEL_DENSITY * shaft * SHAFT_LENGTHS * (stop.stroke + length)
  const load = arrestingLoad(gas, speed ?? 0, mass, (STEEL_MODULUS * section.area) / length)
  const { area, gyration } = section
  const column = buckling({ area, gyration, length, yieldStrength, modulus: STEEL_MODULUS })
  const yieldFactor = (yieldStrength * area) / load
  const bucklingFactor = column.load / load
  const enough = yieldFactor >= SAFETY && bucklingFactor >= SAFETY
  return { gas, load, speed, stress: load / area, yieldFactor, buckling: column, bucklingFactor, enough }
}
