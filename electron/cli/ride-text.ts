import type { Axle, AxleId, Plan } from '../../core/plan/schema.ts'
import { ASSUMED_DAMPING } from '../../core/ride/corner-in-motion.ts'
import { rideFindings } from '../../core/ride/findings/findings.ts'
import type { AxleRide, SetupRide } from '../../core/ride/plan-ride.ts'
import type { ContactFigure, CornerRide, NoRide } from '../../core/ride/results.ts'
import type { Course } from '../../core/ride/terrain.ts'
import { formatMeasure } from '../../core/units/format.ts'
import type { Quantity, System } from '../../core/units/quantity.ts'
import { courseText } from './course-text.ts'
import { findingText } from './finding-text.ts'
import { AXLE_NAMES, planTitle, setupName } from './names.ts'
import { paragraph, underlined } from './paragraph.ts'
import { table } from './table.ts'
import { force, onTape } from './tape.ts'

/** Behind a figure that hangs on how stiff steel is, and behind a setup whose damping is assumed. */
const STEEL = '*'
const ASSUMED = '†'

const REASONS: Readonly<Record<NoRide['reason'], string>> = {
  'too many steps': 'something in it shakes too fast to be followed',
  'step too short': 'its forces jump in a way that cannot be followed',
}

interface Row {
  readonly name: string
  readonly show: (ride: CornerRide, system: System) => string
  /** The figure shown, where steel can have a say in it. */
  readonly figure?: ContactFigure
}

const measure =
  (quantity: Quantity, of: (ride: CornerRide) => number, digits?: number) =>
  (ride: CornerRide, system: System): string =>
    formatMeasure(of(ride), quantity, system, { unit: true, ...(digits === undefined ? {} : { digits }) })
const position =
  (of: (ride: CornerRide) => number) =>
  (ride: CornerRide, system: System): string =>
    formatMeasure(onTape(of(ride), system), 'length', system, { unit: true, sign: true })
const push =
  (of: (ride: CornerRide) => number) =>
  (ride: CornerRide, system: System): string =>
    force(of(ride), system)

const ROWS: readonly Row[] = [
  { name: 'time in droop', show: measure('share', ride => ride.share.droop, 1) },
  { name: 'time on the coilover alone', show: measure('share', ride => ride.share.coilover, 1) },
  { name: 'time past engagement', show: measure('share', ride => ride.share.engagement, 1) },
  { name: 'time on the stop', show: measure('share', ride => ride.share.onStop, 1) },
  { name: 'time off the ground', show: measure('share', ride => ride.share.air, 1) },
  { name: 'hits on the stop', show: measure('count', ride => ride.hits) },
  { name: 'hits a minute', show: measure('count', ride => (ride.hits / ride.duration) * 60) },
  { name: 'bottoms', show: measure('count', ride => ride.bottoms) },
  { name: 'highest wheel', show: position(ride => ride.wheelMax), figure: 'wheelMax' },
  { name: 'lowest wheel', show: position(ride => ride.wheelMin), figure: 'wheelMin' },
  { name: 'most force at the wheel', show: push(ride => ride.suspensionForceMax), figure: 'suspensionForceMax' },
  { name: 'most force along the stop', show: push(ride => ride.stopForceMax), figure: 'stopForceMax' },
  { name: 'fastest into the stop', show: measure('shaftSpeed', ride => ride.stopSpeedMax) },
  {
    name: 'most felt in the chassis',
    show: measure('acceleration', ride => ride.chassisAccelMax),
    figure: 'chassisAccelMax',
  },
  {
    name: 'felt on average (RMS)',
    show: measure('acceleration', ride => ride.chassisAccelRms),
    figure: 'chassisAccelRms',
  },
]

interface Column {
  readonly name: string
  /** The axle as the plan has it. */
  readonly plan: Axle
  readonly axle: AxleRide
}

function cell({ show, figure }: Row, { outcome }: AxleRide, system: System): string {
  if (!outcome.ok) return '–'
  const steel = figure !== undefined && outcome.contactDependent.includes(figure)
  return `${show(outcome, system)}${steel ? STEEL : ''}`
}

function axleText(id: AxleId, columns: readonly Column[], course: Course, plan: Plan): string {
  const system = plan.units
  const failed = columns.flatMap(({ name, axle: { outcome } }) =>
    outcome.ok
      ? []
      : [
          paragraph(
            `“${name}” could not be driven past ${formatMeasure(outcome.time, 'time', system, { unit: true })}: ${REASONS[outcome.reason]}.`,
            '  ',
          ),
        ],
  )
  const heads = columns.map(({ name, axle: { outcome } }) =>
    outcome.ok && outcome.dampingAssumed ? `${name} ${ASSUMED}` : name,
  )
  return [
    underlined(`${AXLE_NAMES[id]}, one wheel`, '═'),
    table([['', ...heads], ...ROWS.map(row => [row.name, ...columns.map(({ axle }) => cell(row, axle, system))])]),
    ...failed,
    findingsText(columns, course, plan),
  ].join('')
}

/** What is worth saying of each setup; one of whose axle nothing else is said than of the first's is not told twice. */
function findingsText(columns: readonly Column[], course: Course, plan: Plan): string {
  const told = columns.map(({ name, plan: axle, axle: { model, outcome } }) => ({
    name,
    text: outcome.ok ? rideFindings(axle, model, course, outcome, plan.units).map(findingText).join('') : '',
  }))
  const [first, ...others] = told
  const each = [first!, ...others].flatMap(({ name, text }, i) =>
    text === ''
      ? []
      : [
          i > 0 && text === first!.text
            ? paragraph(`Findings, ${name}: as of ${first!.name}.`, '  ')
            : `${paragraph(`Findings, ${name}`, '  ')}${text}`,
        ],
  )
  return each.length === 0 ? '' : `\n${each.join('\n')}`
}

/** What the marks mean, as far as they are there. */
function marks(rides: readonly AxleRide[]): string {
  const driven = rides.flatMap(({ outcome }) => (outcome.ok ? [outcome] : []))
  const percent = (share: number): string => `${share * 100} %`
  const steel = driven.some(({ contactDependent }) => contactDependent.length > 0)
  const assumed = driven.some(({ dampingAssumed }) => dampingAssumed)
  return [
    steel
      ? paragraph(
          `${STEEL} Taken while metal met metal: it hangs on how stiff that is, which nobody measured. Read it as “too much”.`,
        )
      : '',
    assumed
      ? paragraph(
          `${ASSUMED} This setup has no damper curves, so damping is assumed: ${percent(ASSUMED_DAMPING.compression)} of critical in compression, ${percent(ASSUMED_DAMPING.rebound)} in rebound.`,
        )
      : '',
  ].join('')
}

/** The rides of a plan for people: axle by axle, its setups side by side, in the plan's own units. */
export function rideText(plan: Plan, course: Course, setups: readonly SetupRide[]): string {
  const system = plan.units
  const rides = setups.flatMap(({ axles }) => axles)
  const duration = rides.reduce((most, { outcome }) => (outcome.ok ? Math.max(most, outcome.duration) : most), 0)
  const lasts = duration > 0 ? ` It lasts ${formatMeasure(duration, 'time', system, { unit: true })}.` : ''
  const axles = (['front', 'rear'] as const).flatMap(id => {
    const columns = setups.flatMap(({ axles }, i) =>
      axles.flatMap((axle, j) =>
        axle.id === id ? [{ name: setupName(plan.setups[i]!), plan: plan.setups[i]!.axles[j]!, axle }] : [],
      ),
    )
    return columns.length === 0 ? [] : [axleText(id, columns, course, plan)]
  })
  const note = marks(rides)
  return [
    paragraph(planTitle(plan)) +
      paragraph(courseText(course, system) + lasts) +
      paragraph('Positions are wheel travel from ride height; gas is fast; each axle moves by itself.'),
    ...axles,
    ...(note === '' ? [] : [note]),
  ].join('\n')
}
