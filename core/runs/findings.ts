import type { Finding } from '../budget/results.ts'
import { worstFirst } from '../budget/severity.ts'
import type { CornerModel } from '../corner/corner-model.ts'
import type { Say } from '../units/saying.ts'
import type { RunFigures } from './figures.ts'

/** What a rule looks at: a corner, what it did in the run, and what its sensor did. */
export interface RunFacts {
  readonly model: CornerModel
  /** Static position by the plan, m. */
  readonly rest: number
  readonly figures: RunFigures
  /** Share of the rows at the end of what the sensor can tell, by the way the wheel went. */
  readonly saturated: { readonly droop: number; readonly bump: number }
  /** Where the wheel stood at the moment picked as full droop, m; null where none was picked. */
  readonly hung: number | null
  readonly say: Say
}

export type RunFinding = Pick<Finding, 'id' | 'severity' | 'message' | 'remedy' | 'values'>

/** The car stands this far from where the plan has it, m: friction alone holds a car within about so much (common practice). */
export const STATIC_OFF = 8e-3
/** A stop met for more than a tenth of a run works as a spring (common practice). */
export const RIDES_ON_STOP = 0.1
/** One row in two hundred. */
export const SATURATED = 5e-3
/** Bushings and links give a little at full load; a sensor further out than this past an end is not right, m. */
export const PAST_END = 1e-2

const percent = (share: number): string => `${Math.round(share * 100)} %`

function staticOff({ figures, rest, say }: RunFacts): RunFinding | null {
  const { still } = figures
  if (still === null || Math.abs(still - rest) <= STATIC_OFF) return null
  const off = still - rest
  return {
    id: 'run-static-off',
    severity: 'caution',
    message: `At rest the car stood ${say(Math.abs(off), 'length')} of wheel travel ${off > 0 ? 'higher in its travel' : 'lower in its travel'} than the plan says: at ${say(still, 'length', { sign: true })}, not ${say(rest, 'length', { sign: true })}.`,
    remedy: 'Check that the sensor was zeroed at ride height; then weigh the corner and measure ride height again.',
    values: { still, rest },
  }
}

function onStop({ figures, model, say }: RunFacts): RunFinding | null {
  const { onStop } = figures.share
  if (model.engagement === null || onStop <= RIDES_ON_STOP) return null
  return {
    id: 'run-on-stop',
    severity: 'caution',
    message: `The car was on its stop for ${percent(onStop)} of the run: ${figures.hits === 1 ? 'it met it once' : `it met it ${figures.hits} times`}, at ${say(model.engagement, 'length', { sign: true })} of wheel travel.`,
    remedy: 'A stop that is met later, or more force from the springs before it.',
    values: { share: onStop, hits: figures.hits, engagement: model.engagement },
  }
}

function saturates({ saturated, figures, model }: RunFacts): RunFinding | null {
  // At the end of the travel it is the car that stays where it is.
  const bump = model.bump - figures.wheelMax < PAST_END ? 0 : saturated.bump
  const droop = figures.wheelMin - model.droop < PAST_END ? 0 : saturated.droop
  if (Math.max(droop, bump) <= SATURATED) return null
  return {
    id: 'run-sensor-saturates',
    severity: 'caution',
    message: `The sensor stood at its last reading in ${bump > droop ? 'bump' : 'droop'} for ${(100 * Math.max(droop, bump)).toFixed(1)} % of the rows, several in a row, short of the end of the travel: that is its own end, and the wheel went further than it shows.`,
    remedy: 'Mount the sensor so that its range covers the travel with some to spare at both ends.',
    values: { droop, bump },
  }
}

function pastTheEnds({ figures, model, say }: RunFacts): RunFinding | null {
  const [above, below] = [figures.wheelMax - model.bump, model.droop - figures.wheelMin]
  if (Math.max(above, below) <= PAST_END) return null
  const [by, end, at] = above > below ? [above, 'full bump', model.bump] : [below, 'full droop', model.droop]
  return {
    id: 'run-past-travel',
    severity: 'caution',
    message: `The recorded wheel went ${say(by, 'length')} past ${end}, which the plan has at ${say(at, 'length', { sign: true })}. Calibration and stroke do not agree.`,
    remedy: 'Check the two points of the calibration, the zero and the sign; or measure the travel again.',
    values: { past: by, end: at },
  }
}

function hungElsewhere({ hung, model, say }: RunFacts): RunFinding | null {
  if (hung === null || Math.abs(hung - model.droop) <= PAST_END) return null
  return {
    id: 'run-droop-off',
    severity: 'caution',
    message: `At the moment picked as full droop the wheel stood at ${say(hung, 'length', { sign: true })} by the calibration; the plan has full droop at ${say(model.droop, 'length', { sign: true })}. Calibration and stroke do not agree, or it did not hang all the way.`,
    remedy: 'Check the two points of the calibration; or measure the travel to full droop again.',
    values: { hung, droop: model.droop },
  }
}

/** What is worth saying of a recorded run, worst first. */
export const runFindings = (facts: RunFacts): RunFinding[] =>
  [pastTheEnds, hungElsewhere, saturates, staticOff, onStop].flatMap(rule => rule(facts) ?? []).sort(worstFirst)
