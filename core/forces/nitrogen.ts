import { findRoot } from '../numerics/roots.ts'

/**
 * Nitrogen as it is: the short equation of state of R. Span and W. Wagner (Int. J. Thermophys. 24 (2003) 41, coefficients for nitrogen), as a
 * reduced Helmholtz energy of twelve terms, with the ideal part of a rigid rotor that vibrates (3364 K). Against the reference equation
 * (R. Span et al., J. Phys. Chem. Ref. Data 29 (2000) 1361) it is within 0.1 % of the compressibility factor from 0 to 100 °C up to
 * 1500 psi, and within 0.2 % of the pressure on an isentrope up to 33 MPa and 708 K: tests/published/real-gas.test.ts.
 * Temperatures in K, densities in mol/m³, pressures absolute in Pa.
 */

/** Molar gas constant of the equation, J/(mol·K). */
const R = 8.31451
const CRITICAL = { temperature: 126.192, density: 313.3e3 / 28.013 } as const

/** Coefficient, power of density, power of inverse temperature, power of density in the exponential (0: none). */
const TERMS: readonly (readonly [number, number, number, number])[] = [
  [0.92296567, 1, 0.25, 0],
  [-2.5575012, 1, 1.125, 0],
  [0.64482463, 1, 1.5, 0],
  [0.01083102, 2, 1.375, 0],
  [0.073924167, 3, 0.25, 0],
  [0.00023532962, 7, 0.875, 0],
  [0.18024854, 2, 0.625, 1],
  [-0.045660299, 5, 1.75, 1],
  [-0.1552106, 1, 3.625, 2],
  [-0.03811149, 4, 3.625, 2],
  [-0.031962422, 3, 14.5, 3],
  [0.015513532, 4, 12, 3],
]

/** Characteristic temperature of the vibration, K. */
const VIBRATION = 3364.011

/** Where the equation is used: far from liquid, and no hotter or denser than what it was compared with allows. */
const NITROGEN_RANGE = {
  temperature: { least: 230, most: 800 },
  pressure: { most: 60e6 },
  /** Reached only beyond the highest pressure of the range. */
  density: { most: 25_000 },
} as const

/** Finest temperature and density told apart, K and mol/m³: far below what the equation is good to. */
const FINE = { temperature: 1e-9, density: 1e-9 } as const

/** Residual Helmholtz energy over RT, and its derivatives times reduced density and times inverse reduced temperature. */
function residual(temperature: number, density: number): { energy: number; byDensity: number; byInverse: number } {
  const delta = density / CRITICAL.density
  const tau = CRITICAL.temperature / temperature
  let [energy, byDensity, byInverse] = [0, 0, 0]
  for (const [n, d, t, l] of TERMS) {
    const power = l === 0 ? 0 : delta ** l
    const term = n * delta ** d * tau ** t * Math.exp(-power)
    energy += term
    byDensity += term * (d - l * power)
    byInverse += term * t
  }
  return { energy, byDensity, byInverse }
}

/** Absolute pressure, Pa. @param temperature K; @param density mol/m³, 0 or more; both inside NITROGEN_RANGE */
export const nitrogenPressure = (temperature: number, density: number): number =>
  density * R * temperature * (1 + residual(temperature, density).byDensity)

/** Compressibility factor p/(ρRT); 1 for an ideal gas. Arguments as for `nitrogenPressure`. */
export const nitrogenCompressibility = (temperature: number, density: number): number =>
  1 + residual(temperature, density).byDensity

/** Entropy, J/(mol·K), from a fixed but arbitrary zero: only differences mean something. Arguments as for `nitrogenPressure`. */
export function nitrogenEntropy(temperature: number, density: number): number {
  const { energy, byInverse } = residual(temperature, density)
  const u = VIBRATION / temperature
  const vibration = u / Math.expm1(u) - Math.log(-Math.expm1(-u))
  return R * (2.5 * Math.log(temperature) + vibration - Math.log(density) + byInverse - energy)
}

/** Internal energy, J/mol, from a fixed but arbitrary zero. Arguments as for `nitrogenPressure`. */
export function nitrogenEnergy(temperature: number, density: number): number {
  const vibration = VIBRATION / Math.expm1(VIBRATION / temperature)
  return R * (2.5 * temperature + vibration + temperature * residual(temperature, density).byInverse)
}

export type NitrogenState =
  | { readonly ok: true; readonly temperature: number; readonly density: number; readonly pressure: number }
  | { readonly ok: false; readonly reason: 'temperature out of range' | 'pressure out of range' }

const OUT = {
  temperature: { ok: false, reason: 'temperature out of range' },
  pressure: { ok: false, reason: 'pressure out of range' },
} as const

const warm = (temperature: number): boolean =>
  temperature >= NITROGEN_RANGE.temperature.least && temperature <= NITROGEN_RANGE.temperature.most

/** The state at a temperature, K, and a density, mol/m³, or what about it is out of range. */
export function nitrogenAtDensity(temperature: number, density: number): NitrogenState {
  if (!warm(temperature)) return OUT.temperature
  if (!(density > 0 && density <= NITROGEN_RANGE.density.most)) return OUT.pressure
  const pressure = nitrogenPressure(temperature, density)
  return pressure <= NITROGEN_RANGE.pressure.most ? { ok: true, temperature, density, pressure } : OUT.pressure
}

/** The state at a temperature, K, and an absolute pressure, Pa: pressure rises with density everywhere above the critical temperature. */
export function nitrogenAt(temperature: number, pressure: number): NitrogenState {
  if (!warm(temperature)) return OUT.temperature
  if (!(pressure > 0 && pressure <= NITROGEN_RANGE.pressure.most)) return OUT.pressure
  const off = (density: number): number => nitrogenPressure(temperature, density) - pressure
  const root = findRoot(off, 0, NITROGEN_RANGE.density.most, FINE.density)
  return root.found ? { ok: true, temperature, density: root.at, pressure } : OUT.pressure
}

/**
 * The state after squeezing without heat leaving: the same entropy at `ratio` times the density.
 * @param from a state in range; @param ratio volume before over volume after, more than 0
 */
export function nitrogenSqueezed(from: Extract<NitrogenState, { ok: true }>, ratio: number): NitrogenState {
  const entropy = nitrogenEntropy(from.temperature, from.density)
  const density = from.density * ratio
  if (!(density > 0 && density <= NITROGEN_RANGE.density.most)) return OUT.pressure
  const off = (temperature: number): number => nitrogenEntropy(temperature, density) - entropy
  const { least, most } = NITROGEN_RANGE.temperature
  const root = findRoot(off, least, most, FINE.temperature)
  return root.found ? nitrogenAtDensity(root.at, density) : OUT.temperature
}
