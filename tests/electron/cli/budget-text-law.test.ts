import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { budgetText } from '../../../electron/cli/budget-text.ts'
import { WIDTH } from '../../../electron/cli/paragraph.ts'
import { arbitraryPlan } from '../../laws/arbitrary-plan.ts'

describe('the budget for people, of any plan', () => {
  it('has no line too wide, no number that is none, and every setup', () =>
    fc.assert(
      fc.property(arbitraryPlan('ratio', 'table', 'arm', 'axle'), plan => {
        const text = budgetText(plan)
        const lines = text.split('\n')
        expect(lines.filter(line => [...line].length > WIDTH)).toEqual([])
        expect(lines.filter(line => /NaN|undefined|Infinity|∞/.test(line))).toEqual([])
        expect(text.match(/^═+$/gm)).toHaveLength(2 * plan.setups.length - 1)
      }),
      { seed: 19, numRuns: 40 },
    ))
})
