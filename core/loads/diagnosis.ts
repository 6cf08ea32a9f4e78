import { LEAST_COILOVER_SHARE } from '../budget/findings/stop.ts'
import type { AxleId, Plan } from '../plan/schema.ts'
import { INCH } from '../units/constants.ts'
import { type Say, sayIn } from '../units/saying.ts'
import { type CauseFinding, causesOf } from './causes.ts'
import { feelOf } from './feel.ts'
import { LITTLE_LEFT } from './findings.ts'
import type { AxleLedger, SetupLoads } from './ledger.ts'
import { type OneChange, oneChangeEach, type Standing, standing } from './one-change.ts'

/** Why an axle rests on or near its stops, what one change of each kind would mend it, and what the driver feels. */
export interface Diagnosis {
  readonly axle: AxleId
  /** The share of the travel, from where the car rests, that the changes aim for. */
  readonly share: number
  readonly now: Standing
  /** What put it there, largest first. */
  readonly causes: readonly CauseFinding[]
  /** Empty when the share is there already and only loads use it up. */
  readonly changes: readonly OneChange[]
  /** Sentences. */
  readonly feel: readonly string[]
}

/** Whether there is anything to explain: it rests on its stop or near it, or the chosen loads take it there. */
function nearItsStop({ engagement, from, balance }: AxleLedger): boolean {
  if (engagement === null) return false
  return engagement - from < LITTLE_LEFT || (balance.beforeStop !== null && balance.beforeStop < LITTLE_LEFT)
}

/** A change after its name: `1 1/4 in to 2 5/16 in, then sits 2 in lower.`, and what else its budget then says. */
export function changeWords({ quantity, now, to, after, dangers }: OneChange, rest: number, say: Say): string {
  if (to === null) return 'alone cannot.'
  const lifts = rest - after.rest
  const height =
    Math.abs(lifts) < INCH / 32 ? '' : `, then sits ${say(Math.abs(lifts), 'length')} ${lifts > 0 ? 'higher' : 'lower'}`
  const then = dangers.map(said => `But then: ${said.charAt(0).toLowerCase()}${said.slice(1)}`)
  return [`${say(now, quantity)} to ${say(to, quantity)}${height}.`, ...then].join(' ')
}

/** What the changes are good for, in a sentence to its colon. */
export const changesHead = ({ share }: Diagnosis, say: Say): string =>
  `Any one of these puts ${say(share, 'share')} of the travel on the coilover, counted from where it then rests`

/** What is to be done once one of them is made: where the car sits, all else is taped from. */
export const TAPE_AGAIN = 'Values are as taped at the present ride height; once it is done, tape it all again.'

/**
 * The diagnosis of one axle; null when it stands clear of its stop with the loads chosen.
 * @param share of bump travel to aim for; the plan's target, or what is usual, when not given
 */
export function diagnose(
  plan: Plan,
  { model, ledger, loads }: SetupLoads,
  id: AxleId,
  share = plan.targets?.coiloverShare ?? LEAST_COILOVER_SHARE,
): Diagnosis | null {
  const axle = model.axles.find(each => each.axle.id === id)
  const book = ledger.find(each => each.id === id)
  if (axle === undefined || book === undefined || !nearItsStop(book)) return null
  const say = sayIn(plan.units)
  const changes = oneChangeEach(axle.axle, share, say)
  return {
    axle: id,
    share,
    now: standing(axle.axle.corner),
    causes: causesOf(axle, book, loads, share, changes, say),
    changes,
    feel: feelOf(axle, book, loads, say),
  }
}
