import type { Plan } from '../../core/plan/schema.ts'
import { otherAxle, startingPlan } from '../../core/plan/starting.ts'
import { INCH, POUND, POUND_FORCE } from '../../core/units/constants.ts'

/** A plan of two axles and two setups, rear measured, front all assumed. */
export function aPlan(change: (plan: Plan) => void = () => undefined): Plan {
  const plan = startingPlan({
    title: 'Test mule',
    units: 'inch',
    axle: 'rear',
    suspension: 'independent',
    cornerMass: 1200 * POUND,
    shockStroke: 14 * INCH,
    shaftShowing: 7 * INCH,
    ratio: { shock: 0.7, stop: 0.55 },
    springRates: [(250 * POUND_FORCE) / INCH, (350 * POUND_FORCE) / INCH],
    stop: { stroke: 3 * INCH, gap: 2 * INCH },
  })
  const found = plan.setups[0]!
  found.axles.unshift(otherAxle(found.axles[0]!))
  plan.setups.push({ ...structuredClone(found), id: 'proposed', name: 'Proposed' })
  change(plan)
  return plan
}
