import { formatPlan } from '../../core/plan/file-text.ts'
import type { Plan } from '../../core/plan/schema.ts'

const plan: Plan = {
  format: 'stopgap-plan',
  version: 1,
  title: '',
  notes: '',
  units: 'inch',
  vehicle: { name: '', wheelbase: 2.9, cgHeight: 0.75, rollAxisHeight: 0.3 },
  setups: [
    {
      id: 'as-found',
      name: 'As found',
      axles: [
        {
          id: 'rear',
          suspension: 'independent',
          track: 1.7,
          antiRollRate: 0,
          corner: {
            cornerMass: 420,
            unsprungMass: 60,
            linkage: { kind: 'ratio', shock: 0.7, stop: 0.6 },
            shock: { stroke: 0.3, showing: 0.16, shaftDiameter: 0.022, gas: null, compression: [], rebound: [] },
            springs: {
              springs: [{ name: 'Main', rate: 40_000, freeLength: 0.4, solidLength: 0.12 }],
              preload: 0,
              crossover: null,
            },
            stop: null,
            tire: { radius: 0.44, rate: 210_000, damping: 400 },
            clearance: { bump: null, droop: null },
          },
        },
      ],
    },
  ],
  loads: [],
  terrains: [],
}

/** The text of a small plan. Two titles make two different files. */
export const planText = (title: string): string => formatPlan({ ...plan, title })
