import type { AxleId, Load } from '../plan/schema.ts'

/** What several loads ask of the car at once. */
export interface Demand {
  /** Mass added to each axle, kg, both wheels together; negative when taken off. */
  readonly masses: Readonly<Record<AxleId, number>>
  /** m/s², positive throws the weight onto the wheels the turn leaves behind. */
  readonly lateral: number
  /** m/s², positive throws the weight forward. */
  readonly deceleration: number
  /** Wheel travel asked for above where all else leaves the wheel, m, 0 or more. */
  readonly amplitude: number
}

export const NO_DEMAND: Demand = { masses: { front: 0, rear: 0 }, lateral: 0, deceleration: 0, amplitude: 0 }

function plus(sum: Demand, load: Load): Demand {
  switch (load.kind) {
    case 'payload':
      return {
        ...sum,
        masses: {
          front: sum.masses.front + (load.masses.front ?? 0),
          rear: sum.masses.rear + (load.masses.rear ?? 0),
        },
      }
    case 'cornering':
      return { ...sum, lateral: sum.lateral + load.lateral }
    case 'braking':
      return { ...sum, deceleration: sum.deceleration + load.deceleration }
    case 'terrain':
      return { ...sum, amplitude: sum.amplitude + load.amplitude }
  }
}

/** Loads taken at once: masses, accelerations and amplitudes of one kind add; what comes of them is solved together. */
export const demandOf = (loads: readonly Load[]): Demand => loads.reduce(plus, NO_DEMAND)
