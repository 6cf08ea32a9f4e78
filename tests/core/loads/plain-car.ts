import type { Axle, Corner, Load, Plan, Vehicle } from '../../../core/plan/schema.ts'

/** A car whose springs, motion ratios and sides are so plain that what loads do to it can be written down by hand. SI. */

export interface PlainAxle {
  readonly id?: Axle['id']
  readonly suspension?: Axle['suspension']
  /** Wheel rate, N/m. */
  readonly rate: number
  /** Sprung weight on one wheel, N. */
  readonly weight: number
  readonly unsprungMass?: number
  readonly track?: number
  readonly antiRollRate?: number
  readonly shockSpacing?: number
  readonly stopSpacing?: number
  readonly stop?: Corner['stop']
  readonly clearance?: Corner['clearance']
}

const GRAVITY = 9.80665

/** One straight spring at motion ratio 1, holding the weight exactly at ride height, in a metre of shock. */
export function plainAxle(given: PlainAxle): Axle {
  const { rate, weight, unsprungMass = 0 } = given
  return {
    id: given.id ?? 'front',
    suspension: given.suspension ?? 'independent',
    track: given.track ?? 1.5,
    antiRollRate: given.antiRollRate ?? 0,
    ...(given.suspension === 'solid'
      ? { shockSpacing: given.shockSpacing ?? 1, stopSpacing: given.stopSpacing ?? 0.9 }
      : {}),
    corner: {
      cornerMass: weight / GRAVITY + unsprungMass,
      unsprungMass,
      linkage: { kind: 'ratio', shock: 1, stop: 1 },
      shock: { stroke: 1, showing: 0.5, shaftDiameter: 0.02, gas: null, compression: [], rebound: [] },
      springs: {
        springs: [{ name: 'main', rate, freeLength: 6, solidLength: 0.5 }],
        preload: weight / rate - 0.5,
        crossover: null,
      },
      stop: given.stop ?? null,
      tire: { radius: 0.4, rate: 200_000, damping: 400 },
      clearance: given.clearance ?? { bump: null, droop: null },
    },
  }
}

export const plainPlan = (axles: Axle[], vehicle: Partial<Vehicle>, loads: Load[] = []): Plan => ({
  format: 'stopgap-plan',
  version: 1,
  title: 'Plain car',
  notes: '',
  units: 'metric',
  vehicle: { name: '', wheelbase: 2.5, cgHeight: 0.7, rollAxisHeight: 0.2, ...vehicle },
  setups: [{ id: 'found', name: 'As found', axles }],
  loads,
  terrains: [],
})

export const turn = (lateral: number): Load => ({ id: 'turn', name: '', kind: 'cornering', lateral })
export const stopHard = (deceleration: number): Load => ({ id: 'brake', name: '', kind: 'braking', deceleration })
export const carry = (masses: { front?: number; rear?: number }): Load => ({
  id: 'carry',
  name: '',
  kind: 'payload',
  masses,
})
export const bumpOf = (amplitude: number): Load => ({ id: 'bump', name: '', kind: 'terrain', amplitude })
