import { expect, it } from 'vitest'
import { axleBudget } from '../../../core/budget/budget.ts'
import { INCH } from '../../../core/units/constants.ts'
import { close } from '../../close.ts'
import { LB_IN, plainCorner } from '../plain-corner.ts'

/**
 * By hand: 200 lb/in binds after 6 in, at 1200 lb; the 400 lb/in above it has then gone 3 in. That is 9 in of pack, 3 in above ride height,
 * and the upper one goes on alone for the 3 in that are left of the shock: to 1200 + 3 × 400 lb.
 */
it('a main spring that binds under a stiffer one does not end the travel, and is said to bind before full bump', () => {
  const corner = plainCorner({
    springs: {
      springs: [
        { name: 'upper', rate: 400 * LB_IN, freeLength: 20 * INCH, solidLength: 4 * INCH },
        { name: 'main', rate: 200 * LB_IN, freeLength: 20 * INCH, solidLength: 14 * INCH },
      ],
      preload: 0,
      crossover: null,
    },
  })
  const budget = axleBudget(
    { id: 'front', suspension: 'independent', track: 1.5, antiRollRate: 0, corner },
    { units: 'inch' },
  )
  expect(budget.travel.bumpLimitedBy).toBe('shock closed')
  close(budget.bump.forceSlow / (LB_IN * INCH), 2400, { rel: 1e-9 })
  expect(budget.mainSpring.leftAtBump).toBe(0)
  const said = budget.findings.find(({ id }) => id === 'coil-nearly-binds')
  expect(said?.message).toMatch(/^The main spring binds before full bump: from there only the springs above it give/)
})
