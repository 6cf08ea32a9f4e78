import { describe, expect, it } from 'vitest'
import { keepAnswer, sameAsk, sameCar, type WhyAsk } from '../../../renderer/state/why.ts'
import { aPlan } from '../a-plan.ts'

const plan = aPlan()
const off: readonly string[] = []
const inch: WhyAsk = { plan, axle: 'rear', off }
const metric: WhyAsk = { ...inch, plan: { ...plan, units: 'metric' } }
const edited: WhyAsk = { ...inch, plan: { ...plan, setups: [{ ...plan.setups[0]! }] } }

describe('answers to why', () => {
  it('are of the same car in other units, and of another after an edit', () => {
    expect([sameCar(inch, metric), sameAsk(inch, metric)]).toEqual([true, false])
    expect([sameCar(inch, edited), sameAsk(inch, edited)]).toEqual([false, false])
    expect(sameCar(inch, { ...inch, axle: 'front' })).toBe(false)
    expect(sameCar(inch, { ...inch, off: ['crew'] })).toBe(false)
    expect(sameAsk(inch, { ...inch, plan: { ...plan } })).toBe(true)
  })

  it('are kept in both units until the car is another', () => {
    const both = keepAnswer(keepAnswer([], { ask: inch, why: null }), { ask: metric, why: null })
    expect(both.map(({ ask }) => ask.plan.units)).toEqual(['metric', 'inch'])
    expect(keepAnswer(both, { ask: inch, why: null }).map(({ ask }) => ask.plan.units)).toEqual(['inch', 'metric'])
    expect(keepAnswer(both, { ask: edited, why: null }).map(({ ask }) => ask)).toEqual([edited])
  })
})
