import { cornerModel } from '../corner/corner.ts'
import { circleArea } from '../forces/gas.ts'
import { findRoot } from '../numerics/roots.ts'
import { GRAVITY, INCH, POUND, POUND_FORCE, PSI } from '../units/constants.ts'
import { measurementPaths } from './measurements.ts'
import type { Axle, AxleId, Corner, Plan, Stop, UnitSystem } from './schema.ts'

/** What a guided start asks, SI. Everything else of the plan is assumed and marked so. */
export interface StartingAnswers {
  readonly title: string
  readonly units: UnitSystem
  readonly axle: AxleId
  readonly suspension: Axle['suspension']
  /** What one tire carries at ride height, kg; null: not weighed. */
  readonly cornerMass: number | null
  readonly shockStroke: number
  /** Shaft visible at ride height, m. */
  readonly shaftShowing: number
  /** Shock and stop travel over wheel travel, from lifting the wheel a known way. */
  readonly ratio: { readonly shock: number; readonly stop: number }
  /** N/m, from the chassis end; the last is the main. One or two; null: not known. */
  readonly springRates: readonly (number | null)[]
  readonly stop: { readonly stroke: number; readonly gap: number } | null
}

/** Answers with nothing left open. */
interface Complete extends StartingAnswers {
  readonly cornerMass: number
  readonly springRates: readonly number[]
}

/** Assumed until measured: sizes common in the trade ("common practice"), chosen to be plausible, not to be right. */
const ASSUMED = {
  cornerMass: { least: 100, usual: 450, most: 1500 },
  unsprungShare: 0.15,
  /** Main over tender, and the least and most of either, N/m. */
  mainOverTender: 1.4,
  rate: { least: 5_000, most: 500_000 },
  /** Preload that unknown springs are taken to have, m. */
  preload: INCH,
  shockShaft: (7 / 8) * INCH,
  stopShaft: 1.375 * INCH,
  charge: 150 * PSI,
  /** Gas volume at full length over what the shaft pushes aside. */
  shockGas: 3,
  stopGas: 1.5,
  /** Solid length over free length of a coilover spring. */
  solid: 0.35,
  tender: { freeLength: 8 * INCH, solidLength: 3 * INCH },
  track: 66 * INCH,
  spacing: 0.6,
  tire: { radius: 17.5 * INCH, rate: 210_000, damping: 400 },
  vehicle: { wheelbase: 114 * INCH, cgHeight: 30 * INCH, rollAxisHeight: 12 * INCH },
} as const

const TAKEN = [
  'corner.cornerMass',
  'corner.linkage.shock',
  'corner.linkage.stop',
  'corner.shock.stroke',
  'corner.shock.showing',
  'corner.springs.springs.0.rate',
  'corner.springs.springs.1.rate',
  'corner.stop.stroke',
  'corner.stop.gap',
]

/** Assumed lengths are whole steps of the tape, so that nobody takes them for measured: 1/16 in, or 1 mm. Never shorter than `length`, m. */
function tapeLength(length: number, units: UnitSystem): number {
  const step = units === 'inch' ? INCH / 16 : 1e-3
  // A length that is whole already stays what it is, whatever its last digit.
  return Math.ceil(length / step - 1e-6) * step
}

function startingStop({ stroke, gap }: NonNullable<StartingAnswers['stop']>): Stop {
  return {
    kind: 'hydraulic',
    stroke,
    gap,
    shaftDiameter: ASSUMED.stopShaft,
    charge: ASSUMED.charge,
    gasVolume: circleArea(ASSUMED.stopShaft) * stroke * ASSUMED.stopGas,
  }
}

function startingCorner(answers: Complete, preload: number): Corner {
  const { shockStroke, springRates } = answers
  const tape = (length: number) => tapeLength(length, answers.units)
  const mainFree = tape(Math.max(12 * INCH, (shockStroke + preload) * 1.25) / (1 - ASSUMED.solid))
  const dual = springRates.length > 1
  return {
    cornerMass: answers.cornerMass,
    unsprungMass: answers.cornerMass * ASSUMED.unsprungShare,
    linkage: { kind: 'ratio', ...answers.ratio },
    shock: {
      stroke: shockStroke,
      showing: answers.shaftShowing,
      shaftDiameter: ASSUMED.shockShaft,
      gas: { charge: ASSUMED.charge, volume: circleArea(ASSUMED.shockShaft) * shockStroke * ASSUMED.shockGas },
      compression: [],
      rebound: [],
    },
    springs: {
      springs: springRates.map((rate, i) =>
        i === springRates.length - 1
          ? { name: 'main', rate, freeLength: mainFree, solidLength: tape(mainFree * ASSUMED.solid) }
          : { name: 'tender', rate, ...ASSUMED.tender },
      ),
      preload,
      crossover: dual ? { gap: tape(Math.max(0, shockStroke - answers.shaftShowing) / 2) } : null,
    },
    stop: answers.stop === null ? null : startingStop(answers.stop),
    tire: ASSUMED.tire,
    clearance: { bump: null, droop: null },
  }
}

/** Preload at which the springs hold the car at the ride height it was measured at, m; 0 where no sensible one does. */
function holdingPreload(answers: Complete): number {
  const weight = answers.cornerMass * (1 - ASSUMED.unsprungShare) * GRAVITY
  const over = (preload: number): number =>
    cornerModel({ ...startingCorner(answers, preload), stop: null }).forces(0, 'slow').total - weight
  const root = findRoot(over, 0, 12 * INCH, 1e-7)
  return root.found ? root.at : 0
}

const between = (value: number, { least, most }: { least: number; most: number }): number =>
  Math.min(most, Math.max(least, value))

/** The rates of springs nobody has read off: of a usual proportion, and so stiff that they hold the car where it was measured. */
function assumedRates(answers: StartingAnswers, cornerMass: number): number[] {
  const { springRates, units } = answers
  const [tender, main] = springRates.length > 1 ? springRates : [null, springRates[0]!]
  const given = (last: number): number[] =>
    springRates.length > 1 ? [tender ?? last / ASSUMED.mainOverTender, last] : [last]
  if (main != null) return given(main)
  if (tender != null) return given(tender * ASSUMED.mainOverTender)
  // With a crossover set by lengths alone, what springs hold is in proportion to their rates.
  const model = cornerModel({
    ...startingCorner({ ...answers, cornerMass, springRates: given(1) }, ASSUMED.preload),
    stop: null,
  })
  const { springs, total } = model.forces(0, 'slow')
  const held = cornerMass * (1 - ASSUMED.unsprungShare) * GRAVITY - (total - springs)
  const step = units === 'inch' ? (5 * POUND_FORCE) / INCH : 1000
  return given(Math.round(between(springs > 0 ? held / springs : 0, ASSUMED.rate) / step) * step)
}

/** What stands for a weight nobody has taken: what the springs hold at ride height. */
function assumedMass(answers: StartingAnswers): number {
  const { usual } = ASSUMED.cornerMass
  if (answers.springRates.every(rate => rate === null)) return usual
  const springRates = assumedRates(answers, usual)
  const model = cornerModel({
    ...startingCorner({ ...answers, cornerMass: usual, springRates }, ASSUMED.preload),
    stop: null,
  })
  const mass = model.forces(0, 'slow').total / GRAVITY / (1 - ASSUMED.unsprungShare)
  return Number.isFinite(mass) ? between(mass, ASSUMED.cornerMass) : usual
}

/** The answers with what was left open filled in. */
function completed(answers: StartingAnswers): Complete {
  const step = answers.units === 'inch' ? 10 * POUND : 5
  const cornerMass = answers.cornerMass ?? Math.round(assumedMass(answers) / step) * step
  return { ...answers, cornerMass, springRates: assumedRates(answers, cornerMass) }
}

const marked = (axle: Axle, taken: readonly string[]): Axle => ({
  ...axle,
  assumed: measurementPaths(axle).filter(path => !taken.includes(path)),
})

/**
 * A first plan from a handful of measurements: one axle, one setup, all else assumed and marked, springs and weight too where they are left
 * open. Preload is assumed to be what holds the measured ride height. The result is for `parsePlan` to accept or refuse: answers may contradict each other.
 */
export function startingPlan(answers: StartingAnswers): Plan {
  const whole = completed(answers)
  const open = [
    ...(answers.cornerMass === null ? ['corner.cornerMass'] : []),
    ...answers.springRates.flatMap((rate, i) => (rate === null ? [`corner.springs.springs.${i}.rate`] : [])),
  ]
  const spacing = tapeLength(ASSUMED.track * ASSUMED.spacing, answers.units)
  const axle: Axle = {
    id: answers.axle,
    suspension: answers.suspension,
    track: ASSUMED.track,
    antiRollRate: 0,
    ...(answers.suspension === 'solid' ? { shockSpacing: spacing, stopSpacing: spacing } : {}),
    corner: startingCorner(whole, holdingPreload(whole)),
  }
  return {
    format: 'stopgap-plan',
    version: 1,
    title: answers.title,
    notes: '',
    units: answers.units,
    vehicle: { name: '', ...ASSUMED.vehicle, assumed: ['wheelbase', 'cgHeight', 'rollAxisHeight'] },
    setups: [
      {
        id: 'as-found',
        name: 'As found',
        axles: [
          marked(
            axle,
            TAKEN.filter(path => !open.includes(path)),
          ),
        ],
      },
    ],
    loads: [],
    terrains: [],
  }
}

/** The other axle of a plan that has only one: the same values, every one of them assumed. */
export const otherAxle = (axle: Axle): Axle => marked({ ...axle, id: axle.id === 'front' ? 'rear' : 'front' }, [])

/** Stands in where there is nothing to show: plausible values of a rear corner, every one of them assumed. */
export function blankPlan(): Plan {
  const plan = startingPlan({
    title: '',
    units: 'inch',
    axle: 'rear',
    suspension: 'independent',
    cornerMass: 500,
    shockStroke: 0.3048,
    shaftShowing: 0.16,
    ratio: { shock: 0.7, stop: 0.6 },
    springRates: [44_000, 61_000],
    stop: { stroke: 0.0762, gap: 0.06 },
  })
  return {
    ...plan,
    setups: plan.setups.map(setup => ({ ...setup, axles: setup.axles.map(axle => marked(axle, [])) })),
  }
}
