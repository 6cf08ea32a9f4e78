import { worstFirst } from '../../budget/severity.ts'
import { cornerModel } from '../../corner/corner.ts'
import type { CornerModel } from '../../corner/corner-model.ts'
import type { Axle, Plan } from '../../plan/schema.ts'
import { sayIn } from '../../units/saying.ts'
import type { CornerRide } from '../results.ts'
import { ride as rideAgain } from '../ride.ts'
import type { Course } from '../terrain.ts'
import { bottoms, leavesGround } from './ends.ts'
import { packsDown } from './packing.ts'
import type { Ridden, RideFinding, RideRule } from './rule.ts'
import { kicks, stillIn } from './stop.ts'

const rules: readonly RideRule[] = [bottoms, packsDown, kicks, stillIn, leavesGround]

/**
 * What is worth saying of one axle's ride, worst first. Where a finding says what another setting would do, that was tried: the course is
 * driven again with it, so this takes up to half a dozen rides.
 * @param again how it is driven again; by itself, as a quarter car, when not given
 */
export function rideFindings(
  axle: Axle,
  model: CornerModel,
  course: Course,
  ride: CornerRide,
  units: Plan['units'],
  again: Ridden['again'] = corner => rideAgain(cornerModel(corner), course),
): RideFinding[] {
  const ridden = {
    axle,
    model,
    course,
    ride,
    say: sayIn(units),
    again,
  }
  return rules
    .flatMap(rule => {
      const found = rule(ridden)
      return found === null ? [] : [{ ...found, axle: axle.id, course: course.id }]
    })
    .sort(worstFirst)
}
