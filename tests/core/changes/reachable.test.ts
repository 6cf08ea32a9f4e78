import { expect, test } from 'vitest'
import { evaluator } from '../../../core/changes/evaluate.ts'
import { combinations } from '../../../core/changes/ranges.ts'
import { GENERIC_SHELF } from '../../../core/changes/shelf.ts'
import { usualRanges } from '../../../core/changes/usual-ranges.ts'
import { INCH, PSI } from '../../../core/units/constants.ts'
import { seed } from '../../seeds/seed.ts'

test('the demo plan of the rear stops has targets that its usual ranges reach, and that it misses as found', () => {
  const plan = seed('before-and-after.stopgap')
  const axle = plan.setups[0]!.axles.find(({ id }) => id === 'rear')!
  const usual = usualRanges(axle.corner, GENERIC_SHELF, plan.units)
  const near = {
    ...usual,
    spacers: usual.spacers.filter(length => length > 1.3 * INCH && length < 1.95 * INCH),
    charges: usual.charges.filter(charge => charge > 235 * PSI),
  }
  const evaluate = evaluator({ axle, units: plan.units, targets: plan.targets! })
  const [present, ...others] = combinations(axle.corner, near).map(evaluate)
  expect(present).toMatchObject({ ok: true, feasible: false })
  expect(others.some(each => each.ok && each.feasible)).toBe(true)
})
