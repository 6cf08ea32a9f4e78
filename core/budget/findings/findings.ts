import type { CornerModel } from '../../corner/corner-model.ts'
import type { Axle, Plan } from '../../plan/schema.ts'
import { type Say, sayIn } from '../../units/saying.ts'
import type { AxleFigures, Finding } from '../results.ts'
import { worstFirst } from '../severity.ts'
import { offRideHeight, ridesOnStop } from './at-rest.ts'
import { twoRateChanges } from './crossover.ts'
import { factsOf, type Rule } from './rule.ts'
import { assumedShockVolume, coilBinds, looseAtDroop, ratioFalls, shockCloses } from './shock.ts'
import { leavesAgain, littleCoilover, neverMet, openAtContact } from './stop.ts'
import { assumedVolume, overRatedPressure } from './stop-gas.ts'
import { noBumpTravel, worksBackwards } from './travel.ts'

/** Every rule, in the order findings of one severity are shown. */
const RULES: readonly Rule[] = [
  worksBackwards,
  noBumpTravel,
  overRatedPressure,
  shockCloses,
  coilBinds,
  openAtContact,
  neverMet,
  leavesAgain,
  ridesOnStop,
  littleCoilover,
  twoRateChanges,
  looseAtDroop,
  offRideHeight,
  ratioFalls,
  assumedVolume,
  assumedShockVolume,
]

/** What is worth saying of an axle, the worst first: each a sentence with its number, and what would change it. */
export function findings(
  axle: Axle,
  model: CornerModel,
  figures: AxleFigures,
  plan: Pick<Plan, 'units' | 'targets'>,
  say: Say = sayIn(plan.units),
): Finding[] {
  const facts = factsOf(axle, model, figures, plan, say)
  return RULES.flatMap(rule => rule(facts) ?? []).sort(worstFirst)
}
