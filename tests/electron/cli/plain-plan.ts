import type { Axle, Plan } from '../../../core/plan/schema.ts'
import { INCH, POUND, POUND_FORCE } from '../../../core/units/constants.ts'

const RATE = POUND_FORCE / INCH

/**
 * An axle whose budget is worked out on paper: half an inch of shock and of stop an inch of wheel; one spring of 200 lb/in with 4 in of
 * shaft and 1 in of preload, so 500 lb at the wheel, which is the sprung weight; an elastomer of 500 lb/in met after 2 in.
 */
export const plainAxle: Axle = {
  id: 'front',
  suspension: 'independent',
  track: 60 * INCH,
  antiRollRate: 0,
  corner: {
    cornerMass: 600 * POUND,
    unsprungMass: 100 * POUND,
    linkage: { kind: 'ratio', shock: 0.5, stop: 0.5 },
    shock: {
      stroke: 10 * INCH,
      showing: 6 * INCH,
      shaftDiameter: 0.875 * INCH,
      gas: null,
      compression: [],
      rebound: [],
    },
    springs: {
      springs: [{ name: 'main', rate: 200 * RATE, freeLength: 14 * INCH, solidLength: 4 * INCH }],
      preload: INCH,
      crossover: null,
    },
    stop: {
      kind: 'elastomer',
      gap: 2 * INCH,
      curve: [0, 1, 2].map(inches => ({ deflection: inches * INCH, force: inches * 500 * POUND_FORCE })),
    },
    tire: { radius: 17 * INCH, rate: 1000 * RATE, damping: 400 },
    clearance: { bump: null, droop: 5 * INCH },
  },
}

export const plainPlan: Plan = {
  format: 'stopgap-plan',
  version: 1,
  title: 'Worked out on paper',
  notes: '',
  units: 'inch',
  vehicle: { name: '', wheelbase: 110 * INCH, cgHeight: 30 * INCH, rollAxisHeight: 10 * INCH },
  setups: [{ id: 'as-found', name: 'As found', axles: [plainAxle] }],
  loads: [],
  terrains: [],
}

/** The plan with one setup for each axle given, named in order. */
export const plainSetups = (...axles: readonly Axle[]): Plan => ({
  ...plainPlan,
  setups: axles.map((axle, i) => ({ id: `setup-${i + 1}`, name: ['First', 'Second', 'Third'][i]!, axles: [axle] })),
})

export const withCorner = (corner: Partial<Axle['corner']>): Axle => ({
  ...plainAxle,
  corner: { ...plainAxle.corner, ...corner },
})
