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
