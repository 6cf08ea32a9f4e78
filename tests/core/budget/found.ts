import { axleBudget } from '../../../core/budget/budget.ts'
import type { Finding } from '../../../core/budget/results.ts'
import type { Axle, Corner, UnitSystem } from '../../../core/plan/schema.ts'
import { POUND } from '../../../core/units/constants.ts'
import { plainCorner } from '../plain-corner.ts'

/** A motion ratio of 1; 200 lb/in with 6 in of its 12 in of shaft in at ride height holds the 1200 lb it should: it sits where it was measured. */
const settled = { cornerMass: 1300 * POUND, unsprungMass: 100 * POUND }

/** Findings of a front axle that is plain but for what is given. */
export const found = (
  corner: Partial<Corner>,
  axle: Partial<Axle> = {},
  units: UnitSystem = 'inch',
): readonly Finding[] =>
  axleBudget(
    {
      id: 'front',
      suspension: 'independent',
      track: 1.5,
      antiRollRate: 0,
      corner: plainCorner({ ...settled, ...corner }),
      ...axle,
    },
    { units },
  ).findings
