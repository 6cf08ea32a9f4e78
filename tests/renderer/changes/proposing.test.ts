import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { evaluator } from '../../../core/changes/evaluate.ts'
import { propose, proposed, work } from '../../../core/changes/propose.ts'
import { usualRanges } from '../../../core/changes/usual-ranges.ts'
import { PSI } from '../../../core/units/constants.ts'
import { createProposing, type ProposeAsk, type ProposeHand } from '../../../renderer/state/proposing.ts'
import { seed } from '../../seeds/seed.ts'

const plan = seed('before-and-after.stopgap')
const axle = plan.setups[0]!.axles.find(({ id }) => id === 'rear')!
const ranges = (charges: number[]) => ({
  ...usualRanges(axle.corner, { stops: [], springs: [], tubes: [] }, 'inch'),
  charges,
})
const how = { landing: 'energy' } as const

class SomeHand implements ProposeHand {
  static all: SomeHand[] = []
  asked: ProposeAsk | null = null
  ended = false
  onmessage: ProposeHand['onmessage'] = null
  onerror: ProposeHand['onerror'] = null
  constructor() {
    SomeHand.all.push(this)
  }
  postMessage(ask: ProposeAsk): void {
    this.asked = ask
  }
  terminate(): void {
    this.ended = true
  }
  answer(): void {
    const evaluate = evaluator(this.asked!.question)
    const candidates = this.asked!.list.map(({ at, changes }) => ({ at, candidate: evaluate(changes) }))
    this.onmessage?.({ data: { kind: 'candidates', candidates } } as MessageEvent)
  }
}

beforeEach(() => {
  SomeHand.all = []
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

test('workers share the list, and together they say what one alone says', () => {
  const charges = [100, 160, 220, 280].map(psi => psi * PSI)
  const proposing = createProposing(() => new SomeHand(), 2)
  proposing.ask(work(axle, plan, ranges(charges), how), true)
  vi.runAllTimers()
  const [first, second] = SomeHand.all as [SomeHand, SomeHand]
  expect(SomeHand.all.map(({ asked }) => asked!.list.map(({ at }) => at))).toEqual([
    [0, 2, 4],
    [1, 3],
  ])
  second.answer()
  expect(proposing.read()).toMatchObject({ done: 2, of: 5, running: true, proposals: null })
  first.answer()
  const view = proposing.read()
  expect(view).toMatchObject({ running: false, fault: null })
  expect(view.proposals).toEqual(proposed(propose(axle, plan, ranges(charges), how)))
  expect(SomeHand.all.every(({ ended }) => ended)).toBe(true)
})

test('the latest question wins: who works for an older one is ended, and never heard', () => {
  const proposing = createProposing(() => new SomeHand(), 1)
  proposing.ask(work(axle, plan, ranges([100 * PSI]), how), true)
  vi.runAllTimers()
  proposing.ask(work(axle, plan, ranges([100 * PSI, 200 * PSI]), how), true)
  vi.runAllTimers()
  const [old, latest] = SomeHand.all as [SomeHand, SomeHand]
  expect(old.ended).toBe(true)
  old.answer()
  expect(proposing.read()).toMatchObject({ done: 0, of: 3, running: true })
  latest.answer()
  expect(proposing.read().proposals?.order).toHaveLength(2)
})

test('work that is stopped says how far it came, and can be taken up; a worker that breaks is told', () => {
  const proposing = createProposing(() => new SomeHand(), 1)
  proposing.ask(work(axle, plan, ranges([100 * PSI]), how), true)
  vi.runAllTimers()
  proposing.stop()
  expect(proposing.read()).toMatchObject({ running: false, stopped: true, of: 2 })
  expect(SomeHand.all[0]!.ended).toBe(true)
  proposing.again()
  expect(proposing.read()).toMatchObject({ running: true, stopped: false })
  SomeHand.all[1]!.onmessage?.({ data: { kind: 'fault', fault: 'out of memory' } } as MessageEvent)
  expect(proposing.read()).toMatchObject({ running: false, fault: 'out of memory' })
})
