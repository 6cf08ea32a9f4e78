// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { TAPE_AGAIN } from '../../../core/loads/diagnosis.ts'
import type { Plan } from '../../../core/plan/schema.ts'
import { Findings } from '../../../renderer/panels/findings/Findings.tsx'
import { put } from '../../../renderer/state/edit.ts'
import { showAxle } from '../../../renderer/state/view.ts'
import { answerWhy, type WhyAsk } from '../../../renderer/state/why.ts'
import type { Question } from '../../../renderer/workers/messages.ts'
import { seed } from '../../seeds/seed.ts'
import { type Shown, show } from '../a-page.tsx'

/** Hands the questions to the test, which answers them when it likes. */
class Hand {
  static readonly asked: { hand: Hand; question: Question<WhyAsk> }[] = []
  static broken = false
  onmessage: ((event: MessageEvent) => void) | null = null
  onerror: ((event: ErrorEvent) => void) | null = null
  constructor() {
    if (Hand.broken) throw new Error('no workers here')
  }
  postMessage(question: Question<WhyAsk>) {
    Hand.asked.push({ hand: this, question })
  }
  terminate() {
    this.onmessage = null
  }
}

const answer = () =>
  act(() => {
    const { hand, question } = Hand.asked.at(-1)!
    const said = structuredClone(answerWhy(structuredClone(question.ask)))
    hand.onmessage?.({ data: { id: question.id, answer: said } } as MessageEvent)
  })

let shown: Shown
beforeEach(() => {
  Hand.asked.length = 0
  Hand.broken = false
  vi.useFakeTimers()
  vi.stubGlobal('Worker', Hand)
})
afterEach(() => {
  shown.close()
  vi.useRealTimers()
  vi.unstubAllGlobals()
})

const line = () => shown.page.querySelector('.why')
const rest = () => {
  for (let waited = 0; waited < 600; waited += 20) act(() => void vi.advanceTimersByTime(20))
}
const onItsStops = (): Plan => seed('on-its-stops.stopgap')

test('why it is on its stop is asked once the hands rest, and told with what would mend it and how it drives', () => {
  shown = show(<Findings />, onItsStops())
  expect([Hand.asked.length, line()]).toEqual([0, null])
  rest()
  expect(Hand.asked).toHaveLength(1)
  answer()
  const plain = (found: Iterable<Element> = []) =>
    [...found].map(each => each.textContent?.replaceAll('\u00a0', ' ') ?? '')
  expect(plain(line()?.querySelectorAll('h3'))).toEqual([
    'What puts it on its stop',
    'Any one of these puts 40 % of the travel on the coilover, counted from where it then rests',
    'How it drives',
  ])
  const { causes, changes, feel } = answerWhy(Hand.asked[0]!.question.ask)!
  const able = changes.filter(({ to }) => to !== null)
  expect([causes.length, able.length]).toEqual([6, 2])
  expect(line()?.querySelectorAll('ol li')).toHaveLength(3)
  const more = [...(line()?.querySelectorAll<HTMLElement>('[aria-expanded]') ?? [])]
  expect(more.map(each => each.textContent)).toEqual(['3 more causes'])
  act(() => more[0]!.click())
  expect([more[0]!.textContent, more[0]!.getAttribute('aria-expanded')]).toEqual(['Fewer causes', 'true'])
  const told = plain(line()?.querySelectorAll('ol li'))
  expect(told).toHaveLength(causes.length)
  for (const [i, { label }] of causes.entries()) expect(told[i]!.toLowerCase()).toContain(label.toLowerCase())
  expect(told).toContain('“Ruts and rocks” 1 1/2 in asked for.')
  const mends = plain(line()?.querySelectorAll('ul li'))
  expect(mends).toHaveLength(able.length)
  for (const [i, { name }] of able.entries()) expect(mends[i]!.toLowerCase()).toContain(name)
  expect(plain(line()?.querySelectorAll('p'))).toEqual([
    `Not enough alone: preload, main spring, shock charge. ${TAPE_AGAIN}`,
    feel.join(' '),
  ])
})

test('after an edit the old words stay, marked as late, until the new ones come; the latest question wins', () => {
  shown = show(<Findings />, onItsStops())
  const { store } = shown.files
  rest()
  answer()
  const before = line()?.textContent
  act(() => void put(store, 'gap', 'corner.stop.gap', 0.001))
  act(() => void vi.advanceTimersByTime(100))
  expect([line()?.textContent, line()?.getAttribute('aria-busy')]).toEqual([before, 'true'])
  expect(Hand.asked).toHaveLength(1)
  rest()
  act(() => void put(store, 'gap', 'corner.stop.gap', 0.002))
  const stale = Hand.asked.at(-1)!
  rest()
  act(() => stale.hand.onmessage?.({ data: { id: stale.question.id, answer: null } } as MessageEvent))
  expect(line()).not.toBeNull()
  expect(Hand.asked.at(-1)!.question.ask.plan.setups[0]!.axles[1]!.corner.stop?.gap).toBe(0.002)
  answer()
  expect(line()?.getAttribute('aria-busy')).toBe('false')
  expect(line()?.textContent).not.toBe(before)
})

test('of another axle nothing is told', () => {
  shown = show(<Findings />, onItsStops())
  rest()
  answer()
  act(() => showAxle(shown.files.store, 'front'))
  expect(line()).toBeNull()
})

test('where the worker breaks, or none can be had, the page works it out', () => {
  shown = show(<Findings />, onItsStops())
  rest()
  act(() => Hand.asked.at(-1)!.hand.onerror?.({ message: 'out of memory' } as ErrorEvent))
  const before = line()?.textContent
  expect(before).toContain('What puts it on its stop')
  Hand.broken = true
  act(() => void put(shown.files.store, 'gap', 'corner.stop.gap', 0.001))
  rest()
  expect(Hand.asked).toHaveLength(1)
  expect(line()?.getAttribute('aria-busy')).toBe('false')
  expect(line()?.textContent).not.toBe(before)
})
