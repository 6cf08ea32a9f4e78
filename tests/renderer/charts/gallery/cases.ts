import { axleBudget } from '../../../../core/budget/budget.ts'
import type { AxleBudget, Finding } from '../../../../core/budget/results.ts'
import { cornerModel } from '../../../../core/corner/corner.ts'
import { setupLoads } from '../../../../core/loads/ledger.ts'
import type { Axle, Load, Plan } from '../../../../core/plan/schema.ts'
import { INCH, PSI } from '../../../../core/units/constants.ts'
import type { System } from '../../../../core/units/quantity.ts'
import { type DemandsView, demandsView } from '../../../../renderer/charts/plate/demands.ts'
import { hydraulicStop, proposedAxle, sampleAxle, sampleCorner, withCorner } from '../sample-axles.ts'

/** One state of the plate to look at. */
export interface PlateCase {
  readonly axle: Axle
  readonly other: Axle | null
  readonly otherName: string
  readonly system: System
  /** None leaves the demands column out. */
  readonly loads: Load[]
  readonly findings: readonly Finding[]
  readonly wheel: number
}

const crew: Load = { id: 'crew', name: 'Crew and fuel', kind: 'payload', masses: { front: 60, rear: 140 } }
const corner: Load = { id: 'corner', name: '', kind: 'cornering', lateral: 4 }
const braking: Load = { id: 'brake', name: '', kind: 'braking', deceleration: 5, assumed: true }
const few: Load[] = [crew, corner, braking]
const many: Load[] = [
  ...few,
  { id: 'whoops', name: 'Whoops at speed', kind: 'terrain', amplitude: 0.14 },
  { id: 'hard', name: 'Hard corner on the road', kind: 'cornering', lateral: 40 },
  { id: 'trailer', name: 'Trailer', kind: 'payload', masses: { rear: 60 }, assumed: true },
]

/** What loads do to the rear axle of a car with the same corner in front, beside another setup of it. */
function demandsOf(axle: Axle, other: Axle | null, loads: Load[]): DemandsView | null {
  const setups = [axle, ...(other === null ? [] : [other])].map((rear, index) => ({
    id: `setup-${index}`,
    name: 'Sample',
    axles: [{ ...sampleAxle, id: 'front' as const }, rear],
  }))
  const plan: Plan = {
    format: 'stopgap-plan',
    version: 1,
    title: 'Sample',
    notes: '',
    units: 'inch',
    vehicle: { name: 'Sample', wheelbase: 114 * INCH, cgHeight: 30 * INCH, rollAxisHeight: 12 * INCH },
    setups,
    loads,
    terrains: [],
  }
  const ledgers = setups.map(setup => setupLoads(plan, setup).ledger.find(({ id }) => id === 'rear') ?? null)
  const [own = null, beside = null] = ledgers
  return own === null ? null : demandsView(own, beside)
}

function finding(
  id: string,
  severity: Finding['severity'],
  where: Finding['where'],
  at: number,
  message: string,
): Finding {
  return { id, severity, where, at, message, values: {}, remedy: 'Measure again.', field: 'corner.stop.gap' }
}

/** One of each, and some that meet at the same place. */
export function sampleFindings(budget: AxleBudget): Finding[] {
  const engagement = budget.engagement?.wheel ?? budget.travel.bump
  return [
    finding(
      'pressure',
      'danger',
      'stop',
      budget.travel.bump,
      'Closed in a hit, the stop reaches more than its rating.',
    ),
    finding('share', 'caution', 'budget', engagement, 'The stop engages early.'),
    finding('static', 'note', 'forces', 0, 'The springs hold 10 lb too much.'),
    finding('droop', 'note', 'drawing', -budget.travel.droop, 'The strap is slack at full droop.'),
    finding('spread', 'caution', 'budget', engagement, 'The tolerance of the gap is half of what is left.'),
  ]
}

const base: PlateCase = {
  axle: sampleAxle,
  other: proposedAxle,
  otherName: 'Proposed',
  system: 'inch',
  loads: few,
  findings: [],
  wheel: 6.5 * INCH,
}

const touching = withCorner({ stop: { ...hydraulicStop, gap: -0.375 * INCH } })
const noStop = withCorner({ stop: null })
const notMet = withCorner({ stop: { ...hydraulicStop, gap: 8 * INCH } })
const metal = withCorner({ clearance: { bump: 0, droop: 9.25 * INCH } })
const noDroop = withCorner({ clearance: { bump: null, droop: 0 } })
const tinyZone = withCorner({ stop: { ...hydraulicStop, stroke: 0.0625 * INCH } })
const lateZone = withCorner({ stop: { ...hydraulicStop, gap: 0.09 * INCH } })
const huge = withCorner({
  linkage: { kind: 'ratio', shock: 0.35, stop: 0.3 },
  shock: { ...sampleCorner.shock, stroke: 0.8, showing: 0.45 },
  springs: {
    springs: [{ name: 'main', rate: 20_000, freeLength: 1.4, solidLength: 0.3 }],
    preload: 0.05,
    crossover: null,
  },
  stop: { ...hydraulicStop, stroke: 0.12, gap: 0.15, gasVolume: 40 * INCH ** 3 },
  clearance: { bump: 1, droop: 1 },
})
const strong = withCorner({
  cornerMass: 30_000,
  stop: { ...hydraulicStop, charge: 20_000 * PSI, gasVolume: 7.4 * INCH ** 3 },
})

export const cases: Readonly<Record<string, PlateCase>> = {
  sample: base,
  metric: { ...base, system: 'metric', wheel: 0.165 },
  gap: { ...base, wheel: -1.5 * INCH },
  droop: { ...base, wheel: -9.25 * INCH },
  bump: { ...base, wheel: 9.4168 * INCH },
  alone: { ...base, other: null, loads: [], wheel: 2 * INCH },
  many: { ...base, loads: many, otherName: 'A longer stop with a shorter spacer', wheel: 4 * INCH },
  touching: { ...base, axle: touching, wheel: 1 * INCH },
  'no-stop': { ...base, axle: noStop, loads: few },
  'not-met': { ...base, axle: notMet, other: null, loads: [], wheel: 3 * INCH },
  metal: { ...base, axle: metal, other: null, wheel: 0 },
  'no-droop': { ...base, axle: noDroop, wheel: 3 * INCH },
  tiny: { ...base, axle: tinyZone, other: null, wheel: 3.5 * INCH },
  late: { ...base, axle: lateZone, wheel: 0.3 * INCH },
  huge: { ...base, axle: huge, other: null, loads: [], wheel: 0.4 },
  strong: { ...base, axle: strong, other: null, wheel: 8 * INCH },
}

export function compiled({ axle, other, otherName, system, findings, loads }: PlateCase) {
  const model = cornerModel(axle.corner)
  const budget = axleBudget(axle, { units: system }, model)
  const otherModel = other === null ? null : cornerModel(other.corner)
  return {
    model,
    budget,
    demands: demandsOf(axle, other, loads),
    findings: findings.length > 0 ? findings : budget.findings.length > 2 ? budget.findings : sampleFindings(budget),
    other:
      other === null || otherModel === null
        ? null
        : { name: otherName, model: otherModel, budget: axleBudget(other, { units: system }, otherModel) },
  }
}
