import type { Corner, Curve } from '../../../core/plan/schema.ts'
import { plainCorner, plainStop } from '../plain-corner.ts'

/** A damper straight in speed, N·s/m. */
export const straight = (rate: number): Curve => [0, 1, 4].map(velocity => ({ velocity, force: rate * velocity }))

/** The plain corner with a stop and dampers, N·s/m at the shaft. */
export const dampedCorner = (other: Partial<Corner> = {}, compression = 1500, rebound = 2500): Corner => {
  const plain = plainCorner({ stop: plainStop() })
  return {
    ...plain,
    shock: { ...plain.shock, compression: straight(compression), rebound: straight(rebound) },
    ...other,
  }
}

/** What a linear quarter car is: kg, N/m, N·s/m. */
export interface Linear {
  readonly sprung: number
  readonly unsprung: number
  readonly spring: number
  readonly damper: number
  readonly tire: number
  /** From ride height to either end, m. */
  readonly travel?: number
}

const GRAVITY = 9.80665

/** A corner that is nothing but a linear quarter car at rest at ride height, its ends far away. */
export const linearCorner = ({ sprung, unsprung, spring, damper, tire, travel = 0.9 }: Linear): Corner => {
  const held = (sprung * GRAVITY) / spring
  return {
    cornerMass: sprung + unsprung,
    unsprungMass: unsprung,
    linkage: { kind: 'ratio', shock: 1, stop: 1 },
    shock: {
      stroke: 2 * travel,
      showing: travel,
      shaftDiameter: 0.02,
      gas: null,
      compression: straight(damper),
      rebound: straight(damper),
    },
    springs: {
      springs: [{ name: '', rate: spring, freeLength: held + 2 * travel + 1, solidLength: 0.5 }],
      preload: held - travel,
      crossover: null,
    },
    stop: null,
    tire: { radius: 0.3, rate: tire, damping: 0 },
    clearance: { bump: null, droop: null },
  }
}
