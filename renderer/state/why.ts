import { type Diagnosis, diagnose } from '../../core/loads/diagnosis.ts'
import { setupLoads } from '../../core/loads/ledger.ts'
import type { AxleId, Plan } from '../../core/plan/schema.ts'

/** Asked of the worker: one axle, in a plan that holds its setup alone. */
export interface WhyAsk {
  readonly plan: Plan
  readonly axle: AxleId
  /** Loads not counted, by id. */
  readonly off: readonly string[]
}

/** Why the axle rests on or near its stop; null where there is nothing to explain. */
export function answerWhy({ plan, axle, off }: WhyAsk): Diagnosis | null {
  const chosen = plan.loads.map(({ id }) => id).filter(id => !off.includes(id))
  const diagnosis = diagnose(plan, setupLoads(plan, plan.setups[0]!, chosen), axle)
  return diagnosis === null || diagnosis.causes.length === 0 ? null : diagnosis
}

/** An answer, with what it was asked of. */
export interface Answered {
  readonly ask: WhyAsk
  readonly why: Diagnosis | null
}

/** Whether two questions are about the same things, whatever units they are to be answered in. */
export const sameCar = (a: WhyAsk, b: WhyAsk): boolean =>
  a.plan.setups[0] === b.plan.setups[0] &&
  a.plan.loads === b.plan.loads &&
  a.plan.vehicle === b.plan.vehicle &&
  a.plan.targets === b.plan.targets &&
  a.axle === b.axle &&
  a.off === b.off

export const sameAsk = (a: WhyAsk, b: WhyAsk): boolean => sameCar(a, b) && a.plan.units === b.plan.units

/** The answers kept once there is a new one, the newest first: of the same things, one in each units. */
export const keepAnswer = (kept: readonly Answered[], found: Answered): readonly Answered[] => [
  found,
  ...kept.filter(({ ask }) => sameCar(ask, found.ask) && ask.plan.units !== found.ask.plan.units),
]
