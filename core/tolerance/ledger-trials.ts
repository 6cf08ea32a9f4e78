import { unsaid } from '../budget/findings/rule.ts'
import { type LoadFinding, loadFindings } from '../loads/findings.ts'
import { type AxleLedger, type SetupLoads, setupLoads } from '../loads/ledger.ts'
import type { Axle, AxleId, Plan, Setup } from '../plan/schema.ts'
import { carMeasuredOf, type TrialCar } from './car-measured.ts'
import type { Measured } from './measured.ts'
import { BLOCK, deviationsOf } from './monte-carlo.ts'
import type { Trials } from './trials.ts'

/** All that is drawn in the trials of a ledger. */
export interface CarTrials {
  readonly trials: readonly Trials[]
  readonly car: TrialCar
  readonly seed: number
}

/** Variables and measurements of the whole car, each by its path in the plan's tolerances. */
export function drawnOf(plan: Plan, setup: Setup, { trials, car, seed }: CarTrials, blocks: number) {
  const named = <T extends { readonly path: string }>(id: AxleId, list: readonly T[]): T[] =>
    list.map(each => ({ ...each, path: `${id}.${each.path}` }))
  const measured: Measured[] = trials.flatMap(({ axle, measured }) => named(axle.id, measured))
  return {
    variables: [...trials.flatMap(({ axle, trial }) => named(axle.id, trial.variables)), ...car.variables],
    measured: [...measured, ...carMeasuredOf(plan, setup)],
    seed,
    blocks: Array.from({ length: blocks }, (_, block) => block),
  }
}

/** Trials of both axles at once, each measurement with the luck it has in the trials of its own axle. */
export function* trialLedgers(
  setup: Setup,
  chosen: readonly string[] | undefined,
  { trials, car, seed }: CarTrials,
  blocks: number,
): Generator<{ readonly ledger: readonly AxleLedger[]; readonly findings: readonly LoadFinding[] }> {
  const axles = trials.map(({ trial }) => trial)
  for (let block = 0; block < blocks; block += 1) {
    const columns = axles.map(({ variables }) => variables.map(variable => deviationsOf(variable, seed, block)))
    const ofCar = car.variables.map(variable => deviationsOf(variable, seed, block))
    for (let number = 0; number < BLOCK; number += 1) {
      const corners = axles.map((trial, i): Axle => trial.put(columns[i]!.map(column => column[number]!)))
      const put = car.put(
        ofCar.map(column => column[number]!),
        corners,
      )
      const loads = setupLoads(put.plan, { ...setup, axles: [...put.axles] }, chosen)
      // Past the touch a stop whose gas runs out before its stroke does would be held by gas nobody measured.
      const ledger = loads.ledger.map((axle, i) =>
        axles[i]!.gasLasts || axle.together.to === null || axle.together.to <= (axle.engagement ?? Infinity)
          ? axle
          : { ...axle, together: { ...axle.together, to: null, takes: null }, balance: NOWHERE },
      )
      yield { ledger, findings: loadFindings(put.plan, counted(loads), unsaid) }
    }
  }
}

/** A load that is not counted is not found to do anything either. */
const counted = (loads: SetupLoads): SetupLoads => {
  const { chosen, leftOut } = loads.ledger[0]!.together
  return { ...loads, loads: loads.loads.filter(({ id }) => chosen.includes(id) || leftOut.includes(id)) }
}

const NOWHERE: AxleLedger['balance'] = { beforeStop: null, beforeBump: null }
