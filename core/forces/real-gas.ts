import { ATMOSPHERE } from '../units/constants.ts'
import { type GasChamber, type GasLaw, gasEnergy, gasForce, gasPressure } from './gas.ts'
import {
  type NitrogenState,
  nitrogenAt,
  nitrogenAtDensity,
  nitrogenEnergy,
  nitrogenEntropy,
  nitrogenSqueezed,
} from './nitrogen.ts'

/** What gas does behind a shaft at one place of its travel. */
export interface GasFigures {
  /** Absolute, Pa. */
  readonly pressure: number
  /** K. */
  readonly temperature: number
  /** On the shaft, against the atmosphere, N. */
  readonly force: number
  /** The shaft has put in from full length, J. */
  readonly energy: number
}

export type RealGas =
  | ({ readonly ok: true } & GasFigures)
  | { readonly ok: false; readonly reason: Extract<NitrogenState, { ok: false }>['reason'] }

/**
 * Nitrogen behind a shaft: slow at the temperature it was charged at, fast without heat leaving (nitrogen.ts, with its bounds).
 * The work is exact: the rise of internal energy when fast, of Helmholtz energy when slow, less what the atmosphere did.
 * @param travel shaft in from full length, m, 0 or more, displacing less than the gas
 * @param temperature it was charged at and starts from, K
 */
export function realGas(chamber: GasChamber, travel: number, law: GasLaw, temperature: number): RealGas {
  const { area, charge, volume } = chamber
  const start = nitrogenAt(temperature, charge + ATMOSPHERE)
  if (!start.ok) return start
  const ratio = volume / (volume - area * travel)
  const end = law === 'fast' ? nitrogenSqueezed(start, ratio) : nitrogenAtDensity(temperature, start.density * ratio)
  if (!end.ok) return end
  const held = ({ temperature: t, density }: Extract<NitrogenState, { ok: true }>): number =>
    nitrogenEnergy(t, density) - (law === 'fast' ? 0 : t * nitrogenEntropy(t, density))
  return {
    ok: true,
    pressure: end.pressure,
    temperature: end.temperature,
    force: area * (end.pressure - ATMOSPHERE),
    energy: start.density * volume * (held(end) - held(start)) - ATMOSPHERE * area * travel,
  }
}

/** The same by the ideal gas the rest of the model uses: p·V or p·V^1.4 constant. */
function idealGas(chamber: GasChamber, travel: number, law: GasLaw, temperature: number): GasFigures {
  const pressure = gasPressure(chamber, travel, law)
  const volumeLeft = 1 - (chamber.area * travel) / chamber.volume
  return {
    pressure,
    temperature: (temperature * pressure * volumeLeft) / (chamber.charge + ATMOSPHERE),
    force: gasForce(chamber, travel, law).value,
    energy: gasEnergy(chamber, travel, law),
  }
}

export type GasComparison =
  | {
      readonly ok: true
      readonly ideal: GasFigures
      readonly real: GasFigures
      /** Real less ideal over ideal. */
      readonly difference: { readonly pressure: number; readonly force: number; readonly energy: number }
    }
  | Extract<RealGas, { ok: false }>

/** Ideal and real nitrogen side by side; arguments as for `realGas`. A share of nothing is 0. */
export function compareGas(chamber: GasChamber, travel: number, law: GasLaw, temperature: number): GasComparison {
  const real = realGas(chamber, travel, law, temperature)
  if (!real.ok) return real
  const ideal = idealGas(chamber, travel, law, temperature)
  const over = (of: 'pressure' | 'force' | 'energy'): number => (ideal[of] === 0 ? 0 : real[of] / ideal[of] - 1)
  return {
    ok: true,
    ideal,
    real,
    difference: { pressure: over('pressure'), force: over('force'), energy: over('energy') },
  }
}
