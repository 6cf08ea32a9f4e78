import type { Axle, AxleId, Plan } from '../../core/plan/schema.ts'
import { ASSUMED_DAMPING } from '../../core/ride/corner-in-motion.ts'
import { rideFindings } from '../../core/ride/findings/findings.ts'
import type { AxleOutcome, AxleRide, SetupRide } from '../../core/ride/plan-ride.ts'
import type { Course } from '../../core/ride/terrain.ts'
import { DYNAMIC_INDEX } from '../../core/ride/whole-car.ts'
import { formatMeasure } from '../../core/units/format.ts'
import { courseText } from './course-text.ts'
import { findingText } from './finding-text.ts'
import { AXLE_NAMES, planTitle, setupName } from './names.ts'
import { paragraph, underlined } from './paragraph.ts'
import { rideRows, STEEL } from './ride-rows.ts'
import { table } from './table.ts'

/** Behind a setup whose damping is assumed. */
const ASSUMED = '†'

const REASONS: Readonly<Record<Exclude<AxleOutcome, { ok: true }>['reason'], string>> = {
  'too many steps': 'something in it shakes too fast to be followed',
  'step too short': 'its forces jump in a way that cannot be followed',
  'needs two axles': 'a car pitches on two axles, and this setup has only one',
}

interface Column {
  readonly name: string
  /** The axle as the plan has it. */
  readonly plan: Axle
  readonly axle: AxleRide
}

function axleText(id: AxleId, columns: readonly Column[], course: Course, plan: Plan): string {
  const system = plan.units
  const failed = columns.flatMap(({ name, axle: { outcome } }) =>
    outcome.ok
      ? []
      : [
          paragraph(
            `“${name}” could not be driven${outcome.time > 0 ? ` past ${formatMeasure(outcome.time, 'time', system, { unit: true })}` : ''}: ${REASONS[outcome.reason]}.`,
            '  ',
          ),
        ],
  )
  const heads = columns.map(({ name, axle: { outcome } }) =>
    outcome.ok && outcome.dampingAssumed ? `${name} ${ASSUMED}` : name,
  )
  return [
    underlined(`${AXLE_NAMES[id]}, one wheel`, '═'),
    table([
      ['', ...heads],
      ...rideRows(
        columns.map(({ axle }) => axle),
        system,
      ),
    ]),
    ...failed,
    findingsText(columns, course, plan),
  ].join('')
}

/** What is worth saying of each setup; one of whose axle nothing else is said than of the first's is not told twice. */
function findingsText(columns: readonly Column[], course: Course, plan: Plan): string {
  const told = columns.map(({ name, plan: axle, axle: { model, outcome, again } }) => ({
    name,
    text: outcome.ok ? rideFindings(axle, model, course, outcome, plan.units, again).map(findingText).join('') : '',
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

const carText = `the axles are under one body that heaves and pitches, its radius of gyration assumed (dynamic index ${DYNAMIC_INDEX})`

/** How far the body turned, setup by setup. */
function pitchText(plan: Plan, setups: readonly SetupRide[]): string {
  const angle = (value: number): string => formatMeasure(Math.abs(value), 'angle', plan.units, { unit: true })
  return setups
    .map(({ pitch }, i) => {
      const turned = pitch === null ? 'none to tell' : `nose up ${angle(pitch.least)}, nose down ${angle(pitch.most)}`
      return paragraph(`Pitch, ${setupName(plan.setups[i]!)}: ${turned}.`)
    })
    .join('')
}

/** The rides of a plan for people: axle by axle, its setups side by side, in the plan's own units. */
export function rideText(plan: Plan, course: Course, setups: readonly SetupRide[], car: boolean): string {
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
      paragraph(
        `Positions are wheel travel from ride height; gas is fast; ${car ? carText : 'each axle moves by itself'}.`,
      ),
    ...axles,
    ...(car ? [pitchText(plan, setups)] : []),
    ...(note === '' ? [] : [note]),
  ].join('\n')
}
