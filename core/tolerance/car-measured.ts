import type { Axle, Load, Plan, Setup } from '../plan/schema.ts'
import { type Measured, measured } from './measured.ts'
import type { Variable } from './trial-axle.ts'
import type { Kind } from './usual.ts'

/**
 * What the ledger rests on beside the corners: the whole car and what its loads ask for. Paths are those of the plan's tolerances:
 * `vehicle.cgHeight`, `front.track`, `loads.turn.lateral`.
 */

type Draft<T> = { -readonly [K in keyof T]: T[K] }

/** One value of the car: how large, and how a trial changes it. */
interface CarValue {
  readonly path: string
  readonly kind: Kind
  readonly size: number
  readonly assumed: boolean
  /** Least it can be drawn as, SI. */
  readonly least: number
  readonly set: (value: number, car: Car) => void
}

/** What of a plan a trial of its ledger changes. */
interface Car {
  readonly vehicle: Draft<Plan['vehicle']>
  readonly axles: readonly Draft<Omit<Axle, 'corner'>>[]
  readonly loads: Draft<Load>[]
}

/** Of each: how it is measured (what that is good for is in usual.ts), and the least it is drawn as, which the plan file still takes. */
const VEHICLE = [
  ['wheelbase', 'tape', 0.01],
  ['cgHeight', 'height', 0],
  ['rollAxisHeight', 'height', -Infinity],
] as const

const AXLE = [
  ['track', 'tape', 0.01],
  ['antiRollRate', 'rollRate', 0],
  ['shockSpacing', 'tape', 0.01],
  ['stopSpacing', 'tape', 0.01],
] as const

const ofVehicle = ({ vehicle }: Plan): CarValue[] =>
  VEHICLE.map(([key, kind, least]) => ({
    path: `vehicle.${key}`,
    kind,
    size: vehicle[key],
    assumed: vehicle.assumed?.includes(key) ?? false,
    least,
    set: (value, car) => {
      car.vehicle[key] = value
    },
  }))

/** Without an anti-roll bar there is none to be wrong about; only a solid axle rolls on its spacings. */
const ofAxle = (axle: Axle, i: number): CarValue[] =>
  AXLE.flatMap(([key, kind, least]): CarValue[] => {
    const size = axle[key]
    if (size === undefined || size === 0) return []
    if (key.endsWith('Spacing') && axle.suspension !== 'solid') return []
    const set = (value: number, car: Car): void => {
      car.axles[i]![key] = value
    }
    const assumed = axle.assumed?.includes(key) ?? false
    return [{ path: `${axle.id}.${key}`, kind, size, assumed, least, set }]
  })

function ofLoad(load: Load, i: number): CarValue[] {
  const value = (path: string, kind: Kind, size: number, change: (value: number, old: Load) => Load): CarValue => ({
    path: `loads.${load.id}.${path}`,
    kind,
    size,
    assumed: load.assumed ?? false,
    least: kind === 'amplitude' ? 0 : -Infinity,
    set: (drawn, car) => {
      car.loads[i] = change(drawn, car.loads[i]!)
    },
  })
  switch (load.kind) {
    case 'payload':
      return (['front', 'rear'] as const).flatMap(axle => {
        const size = load.masses[axle]
        if (size === undefined) return []
        return [
          value(`masses.${axle}`, 'scale', size, (mass, old) =>
            old.kind === 'payload' ? { ...old, masses: { ...old.masses, [axle]: mass } } : old,
          ),
        ]
      })
    case 'cornering':
      return [value('lateral', 'acceleration', load.lateral, lateral => ({ ...load, lateral }))]
    case 'braking':
      return [value('deceleration', 'acceleration', load.deceleration, deceleration => ({ ...load, deceleration }))]
    case 'terrain':
      return [value('amplitude', 'amplitude', load.amplitude, amplitude => ({ ...load, amplitude }))]
  }
}

const valuesOf = (plan: Plan, setup: Setup): CarValue[] => [
  ...ofVehicle(plan),
  ...setup.axles.flatMap(ofAxle),
  ...plan.loads.flatMap(ofLoad),
]

const measuredValue = ({ path, kind, size, assumed }: CarValue, plan: Plan): Measured =>
  measured(path, kind, size, assumed, plan.tolerances?.values[path])

/** Every value of the car and its loads that the ledger of a setup rests on beside the corners, none without loads. */
export const carMeasuredOf = (plan: Plan, setup: Setup): Measured[] =>
  plan.loads.length === 0 ? [] : valuesOf(plan, setup).map(value => measuredValue(value, plan))

/** A car that can be put off its stated values. */
export interface TrialCar {
  readonly variables: readonly Variable[]
  /** @param axles of the trial, whose corners are kept */
  put(deviations: ArrayLike<number>, axles: readonly Axle[]): { readonly plan: Plan; readonly axles: readonly Axle[] }
}

/** Those without a tolerance stay as they are; no value at all when none has one. */
export function trialCar(plan: Plan, setup: Setup): TrialCar {
  const values = (plan.loads.length === 0 ? [] : valuesOf(plan, setup)).flatMap(value => {
    const { halfWidth } = measuredValue(value, plan)
    return halfWidth > 0 ? [{ ...value, halfWidth }] : []
  })
  return {
    variables: values.map(({ path, halfWidth }) => ({
      key: path,
      path,
      halfWidth,
      distribution: { kind: 'rectangular', halfWidth },
    })),
    put: (deviations, axles) => {
      if (values.length === 0) return { plan, axles }
      const car = { vehicle: { ...plan.vehicle }, axles: axles.map(axle => ({ ...axle })), loads: [...plan.loads] }
      values.forEach(({ size, least, set }, i) => {
        set(Math.max(least, size + deviations[i]!), car)
      })
      return { plan: { ...plan, vehicle: car.vehicle, loads: car.loads }, axles: car.axles }
    },
  }
}
