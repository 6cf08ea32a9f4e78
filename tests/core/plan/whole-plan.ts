import type { Plan } from '../../../core/plan/schema.ts'
import { INCH } from '../../../core/units/constants.ts'
import { plainCorner, plainStop } from '../plain-corner.ts'

/** A valid plan with something in every place a plan can have something: both axles, every linkage between its two setups, both stops. */
export function wholePlan(): Plan {
  const curve = () => [
    { velocity: 0, force: 0 },
    { velocity: 0.5, force: 800 },
    { velocity: 2, force: 2400 },
  ]
  const springs = {
    springs: [
      { name: 'tender', rate: 40_000, freeLength: 0.25, solidLength: 0.08 },
      { name: 'main', rate: 70_000, freeLength: 0.35, solidLength: 0.1 },
    ],
    preload: 0.02,
    crossover: { gap: 0.08 },
  }
  const shock = {
    stroke: 12 * INCH,
    showing: 6 * INCH,
    shaftDiameter: 0.022,
    gas: { charge: 1e6, volume: 5e-4 },
    compression: curve(),
    rebound: curve(),
  }
  const stop = plainStop({
    compression: curve(),
    rebound: curve(),
    body: { bore: 0.06, ratedPressure: 7e6 },
    spacer: { length: 0.02, outerDiameter: 0.04, wall: 0.003 },
  })
  const foam = {
    kind: 'elastomer' as const,
    gap: 0.04,
    curve: [
      { deflection: 0, force: 0 },
      { deflection: 0.02, force: 900 },
      { deflection: 0.05, force: 9000 },
    ],
  }
  const arm = {
    kind: 'arm' as const,
    pivot: [
      [0.2, 0.2, 0.4],
      [-0.2, 0.2, 0.4],
    ] satisfies [number[], number[]],
    wheel: [0, 0.8, 0.36],
    shockLower: [0, 0.6, 0.42],
    shockUpper: [0, 0.4, 1],
    stopPad: [0.05, 0.5, 0.42],
    stopAxis: [0, 0, 1],
  } as Plan['setups'][number]['axles'][number]['corner']['linkage']
  const table = {
    kind: 'table' as const,
    rows: [
      { wheel: -0.2, shock: -0.12, stop: -0.15 },
      { wheel: 0, shock: 0, stop: 0 },
      { wheel: 0.1, shock: 0.06, stop: 0.08 },
      { wheel: 0.2, shock: 0.13, stop: 0.17 },
    ],
  }
  const axle = {
    kind: 'axle' as const,
    shockLower: [0, 0.5, 0.3],
    shockUpper: [0.1, 0.4, 1],
    stopPad: [0, 0.4, 0.4],
    stopAxis: [0, 0, 1],
  } as Plan['setups'][number]['axles'][number]['corner']['linkage']
  return {
    format: 'stopgap-plan',
    version: 1,
    title: 'Whole plan',
    notes: 'Something everywhere.',
    units: 'inch',
    vehicle: { name: 'Car', wheelbase: 2.9, cgHeight: 0.8, rollAxisHeight: 0.3, assumed: ['cgHeight'] },
    setups: [
      {
        id: 'found',
        name: 'As found',
        axles: [
          {
            id: 'front',
            suspension: 'independent',
            track: 1.7,
            antiRollRate: 10_000,
            corner: plainCorner({ linkage: arm, shock, springs, stop, clearance: { bump: 0.2, droop: 0.2 } }),
            assumed: ['corner.unsprungMass'],
          },
          {
            id: 'rear',
            suspension: 'solid',
            track: 1.7,
            antiRollRate: 0,
            shockSpacing: 1,
            stopSpacing: 0.9,
            corner: plainCorner({ linkage: table, stop: foam }),
          },
        ],
      },
      {
        id: 'proposed',
        name: 'Proposed',
        axles: [
          {
            id: 'rear',
            suspension: 'solid',
            track: 1.7,
            antiRollRate: 0,
            shockSpacing: 1,
            stopSpacing: 0.9,
            corner: plainCorner({ linkage: axle, stop: plainStop(), clearance: { bump: 0.3, droop: 0.3 } }),
          },
        ],
      },
    ],
    loads: [
      { id: 'crew', name: 'Crew', kind: 'payload', masses: { front: 50, rear: 80 } },
      { id: 'turn', name: 'Turn', kind: 'cornering', lateral: 4 },
      { id: 'brake', name: 'Braking', kind: 'braking', deceleration: 4 },
      { id: 'bump', name: 'Bump', kind: 'terrain', amplitude: 0.1 },
    ],
    terrains: [
      { id: 'whoops', name: 'Whoops', kind: 'whoops', spacing: 6, height: 0.2, speed: 10, count: 6 },
      { id: 'drop', name: 'Landing', kind: 'landing', drop: 0.3 },
      { id: 'rough', name: 'Rough', kind: 'rough', isoClass: 'E', speed: 10, duration: 10, seed: 1 },
      { id: 'ledge', name: 'Ledge', kind: 'ledge', height: 0.2, length: 2, speed: 5 },
    ],
    targets: { coiloverShare: 0.5, coiloverTravel: 0.1, landingDrop: 0.5, shockLeft: 0.01, stopPressure: 5e6 },
    ranges: {
      front: {
        spacers: { from: 0.01, to: 0.05, step: 0.005 },
        charges: { from: 7e5, to: 2e6, step: 5e4 },
        oils: null,
        shims: null,
        stops: ['stop-2'],
        springs: [],
        preload: true,
      },
    },
    tolerances: {
      version: 1,
      values: {
        'front.corner.stop.gap': 0.002,
        'rear.track': 0.003,
        'vehicle.cgHeight': 0.05,
        'loads.crew.masses.rear': 4,
        'loads.turn.lateral': 0.5,
      },
    },
    runs: [{ id: 'before', name: 'Before', setup: 'found', file: 'Plan, before.stopgap-run', digest: '0f'.repeat(32) }],
  }
}
