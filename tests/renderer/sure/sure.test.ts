import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { planBudget } from '../../../core/budget/budget.ts'
import { setupLoads } from '../../../core/loads/ledger.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { ledgerSureness } from '../../../core/tolerance/ledger-sureness.ts'
import { setupSureness } from '../../../core/tolerance/steps.ts'
import { lineBands } from '../../../renderer/charts/sure/bands.ts'
import { createSure, type SureAsk, type SureCall, type SureHand, type SureWord } from '../../../renderer/state/sure.ts'
import { seed } from '../../seeds/seed.ts'

const NONE: readonly string[] = []
const plan = seed('before-and-after.stopgap')

/** A worker that does nothing by itself: the test speaks for it. */
class Hand implements SureHand {
  onmessage: SureHand['onmessage'] = null
  onerror: SureHand['onerror'] = null
  calls: Extract<SureCall, { kind: 'trials' }>[] = []
  ended = false
  /** What was asked for, called off or not. */
  get asked(): SureAsk[] {
    return this.calls.flatMap(({ ask }) => (ask === null ? [] : [ask]))
  }
  get calledOff(): boolean {
    return this.calls.at(-1)?.ask === null
  }
  /** How often it was told that hands move. */
  hands = 0
  postMessage(call: SureCall) {
    if (call.kind === 'hands') this.hands += 1
    else this.calls.push(call)
  }
  terminate() {
    this.ended = true
  }
  say(word: SureWord, id = this.calls.at(-1)!.id) {
    this.onmessage?.({ data: { id, word } } as MessageEvent)
  }
}

function trials() {
  const hands: Hand[] = []
  const sure = createSure(() => {
    const hand = new Hand()
    hands.push(hand)
    return hand
  })
  const ask = (from: Plan, axle: number, off = NONE) =>
    sure.ask(from, from.setups[0]!, from.setups[0]!.axles[axle]!, off)
  return { sure, hands, ask }
}

const ledgerOf = (axle: number) => ledgerSureness(plan, plan.setups[0]!, undefined, { trials: 250 })[axle]!
const found = (axle: number) => setupSureness(plan, plan.setups[0]!, { trials: 250 }).axles[axle]!

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

test('nothing runs while hands type; then one worker is asked for the axle shown alone', () => {
  const { hands, ask } = trials()
  ask(plan, 0)
  vi.advanceTimersByTime(300)
  ask(plan, 1)
  vi.advanceTimersByTime(300)
  expect(hands).toHaveLength(0)
  vi.advanceTimersByTime(300)
  expect(hands.map(({ asked }) => asked.map(each => each.axle))).toEqual([[plan.setups[0]!.axles[1]!.id]])
  expect(hands[0]!.asked[0]!.plan.setups).toEqual([plan.setups[0]])
  expect(hands[0]!.asked[0]!.chosen).toEqual(plan.loads.map(({ id }) => id))
})

test('the latest question wins: the one before is called off at once, the worker stays, and what it still says of it is not heard', () => {
  const { sure, hands, ask } = trials()
  ask(plan, 0)
  vi.advanceTimersByTime(600)
  const first = hands[0]!.calls[0]!.id
  ask(plan, 1)
  expect(hands[0]!.calledOff).toBe(true)
  hands[0]!.say({ kind: 'done', sureness: found(0) }, first)
  expect(sure.read().sureness).toBeNull()
  vi.advanceTimersByTime(600)
  hands[0]!.say({ kind: 'progress', share: 0.5 }, first)
  expect(sure.read().share).toBe(0)
  const second = found(1)
  hands[0]!.say({ kind: 'done', sureness: second })
  expect(sure.read().sureness).toBe(second)
  expect([hands.length, hands[0]!.ended]).toEqual([1, false])
  sure.close()
  expect(hands[0]!.ended).toBe(true)
})

test('trials under way are told that hands move, and only those', () => {
  const { sure, hands, ask } = trials()
  sure.hands()
  ask(plan, 0)
  sure.hands()
  vi.advanceTimersByTime(600)
  expect(hands[0]!.hands).toBe(0)
  sure.hands()
  expect([hands[0]!.hands, hands[0]!.calledOff]).toEqual([1, false])
  sure.stop()
  sure.hands()
  expect(hands[0]!.hands).toBe(1)
})

test('tells how far it is, stops when told, and begins again', () => {
  const { sure, hands, ask } = trials()
  const shares: (number | null)[] = []
  sure.subscribe(() => shares.push(sure.read().share))
  ask(plan, 0)
  vi.advanceTimersByTime(600)
  hands[0]!.say({ kind: 'progress', share: 0.25 })
  sure.stop()
  expect(shares).toEqual([0, 0.25, null])
  expect(sure.read()).toEqual({ sureness: null, ledger: null, share: null, stopped: true, fault: null })
  expect(hands[0]!.calledOff).toBe(true)
  sure.again()
  expect([hands.length, hands[0]!.asked.length]).toEqual([1, 2])
})

test('the ledger comes after the axle, and is asked anew when other loads are counted', () => {
  const { sure, hands, ask } = trials()
  ask(plan, 1)
  vi.advanceTimersByTime(600)
  const sureness = found(1)
  hands[0]!.say({ kind: 'done', sureness })
  expect([hands[0]!.ended, sure.read().ledger]).toEqual([false, null])
  hands[0]!.say({ kind: 'progress', share: 0.5 })
  expect(sure.read()).toMatchObject({ sureness, share: 0.5 })
  const ledger = ledgerOf(1)
  hands[0]!.say({ kind: 'ledger', ledger })
  expect(sure.read()).toEqual({ sureness, ledger, share: null, stopped: false, fault: null })
  ask(plan, 1, [plan.loads[0]!.id])
  vi.advanceTimersByTime(600)
  expect(hands[0]!.asked[1]!.chosen).toEqual(plan.loads.slice(1).map(({ id }) => id))
})

test('stopped among the trials of the loads, what is known of the axle stays', () => {
  const { sure, hands, ask } = trials()
  ask(plan, 1)
  vi.advanceTimersByTime(600)
  const sureness = found(1)
  hands[0]!.say({ kind: 'done', sureness })
  sure.stop()
  expect(hands[0]!.calledOff).toBe(true)
  expect(sure.read()).toEqual({ sureness, ledger: null, share: null, stopped: true, fault: null })
})

test('a worker that breaks is said, not hidden', () => {
  const { sure, hands, ask } = trials()
  ask(plan, 0)
  vi.advanceTimersByTime(600)
  hands[0]!.say({ kind: 'fault', fault: 'out of room' })
  expect([sure.read().fault, hands[0]!.ended]).toEqual(['out of room', true])
  sure.again()
  expect(hands).toHaveLength(2)
})

test('a change elsewhere in the plan asks nothing again', () => {
  const { hands, ask } = trials()
  ask(plan, 0)
  vi.advanceTimersByTime(600)
  ask({ ...plan, notes: 'other' }, 0)
  vi.advanceTimersByTime(600)
  expect(hands[0]!.calls).toHaveLength(1)
})

test('bands of the lines hold the lines of the budget', () => {
  const axle = planBudget(plan).setups[0]!.axles[1]!
  const bands = lineBands(found(1))
  expect(bands.map(({ id }) => id)).toEqual(['bump', 'droop', 'engagement', 'static'])
  const stands = [axle.travel.bump, -axle.travel.droop, axle.engagement!.wheel, axle.static.position]
  const loaded = lineBands(found(1), ledgerOf(1)).at(-1)!
  const { to } = setupLoads(plan, plan.setups[0]!).ledger[1]!.together
  expect([loaded.id, loaded.low <= to!, loaded.high >= to!]).toEqual(['loaded', true, true])
  for (const [i, { low, high }] of bands.entries()) {
    expect(low).toBeLessThan(stands[i]!)
    expect(high).toBeGreaterThan(stands[i]!)
  }
})
