import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { type Hearer, WorkerPool } from '../../../renderer/workers/pool.ts'
import { someHands } from './some-hands.ts'

/** What was heard of a job, in order. */
function hearer() {
  const heard: string[] = []
  const hear: Hearer<string> = {
    done: answer => heard.push(answer),
    failed: fault => heard.push(`fault: ${fault}`),
  }
  return { heard, hear }
}

function aPool(most: number) {
  const { hands, hire } = someHands<string, string>()
  return { hands, pool: new WorkerPool<string, string>(hire, most) }
}

describe('the pool of workers', () => {
  beforeEach(() => vi.useFakeTimers())
  afterEach(() => vi.useRealTimers())

  it('hires no more workers than it may, and gives the next job to whoever is free', () => {
    const { hands, pool } = aPool(2)
    const { heard, hear } = hearer()
    for (const ask of ['a', 'b', 'c']) pool.run(ask, 0, hear)
    expect(hands.map(({ asked }) => asked.map(({ ask }) => ask))).toEqual([['a'], ['b']])
    hands[1]!.answer(2, 'B')
    expect(hands.map(({ asked }) => asked.map(({ ask }) => ask))).toEqual([['a'], ['b', 'c']])
    hands[0]!.answer(1, 'A')
    hands[1]!.answer(3, 'C')
    expect(heard).toEqual(['B', 'A', 'C'])
  })

  it('takes the lowest rank first, then the oldest', () => {
    const { hands, pool } = aPool(1)
    const { hear } = hearer()
    pool.run('first', 1, hear)
    pool.run('later', 1, hear)
    pool.run('urgent', 0, hear)
    pool.run('latest', 1, hear)
    for (const id of [1, 3, 2, 4]) hands[0]!.answer(id, '')
    expect(hands[0]!.asked.map(({ ask }) => ask)).toEqual(['first', 'urgent', 'later', 'latest'])
  })

  it('drops the answer to a job that was called off, and never asks one that still waited', () => {
    const { hands, pool } = aPool(1)
    const old = hearer()
    const fresh = hearer()
    const callOff = pool.run('old', 0, old.hear)
    const waiting = pool.run('never asked', 0, old.hear)
    callOff()
    waiting()
    pool.run('new', 0, fresh.hear)
    hands[0]!.answer(1, 'answer to the old question')
    hands[0]!.answer(3, 'answer to the new one')
    expect([old.heard, fresh.heard]).toEqual([[], ['answer to the new one']])
    expect(hands[0]!.asked.map(({ ask }) => ask)).toEqual(['old', 'new'])
  })

  it('drops an answer to a question that is not the one asked last of that worker', () => {
    const { hands, pool } = aPool(1)
    const { heard, hear } = hearer()
    pool.run('a', 0, hear)
    hands[0]!.answer(1, 'A')
    pool.run('b', 0, hear)
    hands[0]!.answer(1, 'A again')
    hands[0]!.answer(2, 'B')
    expect(heard).toEqual(['A', 'B'])
  })

  it('ends a worker that does not come back from a job called off, and asks another', () => {
    const { hands, pool } = aPool(1)
    const { heard, hear } = hearer()
    pool.run('endless', 0, hear)()
    pool.run('next', 0, hear)
    expect(hands[0]!.ended).toBe(false)
    vi.advanceTimersByTime(1000)
    expect(hands.map(({ ended }) => ended)).toEqual([true, false])
    hands[0]!.answer(1, 'too late')
    hands[1]!.answer(2, 'next')
    expect(heard).toEqual(['next'])
  })

  it('keeps a worker that came back in time', () => {
    const { hands, pool } = aPool(1)
    const { hear } = hearer()
    pool.run('short', 0, hear)()
    hands[0]!.answer(1, '')
    vi.advanceTimersByTime(1000)
    expect([hands[0]!.ended, hands.length]).toEqual([false, 1])
  })

  it('tells a job of the fault of its worker, and goes on with another worker', () => {
    const { hands, pool } = aPool(1)
    const { heard, hear } = hearer()
    pool.run('a', 0, hear)
    pool.run('b', 0, hear)
    hands[0]!.breakDown('out of memory')
    hands[1]!.say({ id: 2, fault: 'no such thing' })
    expect(heard).toEqual(['fault: out of memory', 'fault: no such thing'])
    expect(hands[0]!.ended).toBe(true)
  })

  it('says something where a worker breaks without a word', () => {
    const { hands, pool } = aPool(1)
    const { heard, hear } = hearer()
    pool.run('a', 0, hear)
    hands[0]!.breakDown('')
    expect(heard).toEqual(['fault: its helper program did not start'])
  })

  it('has workers started before there is work, no more than it may', () => {
    const { hands, pool } = aPool(3)
    pool.warm(2)
    expect(hands.length).toBe(2)
    pool.warm(9)
    pool.run('a', 0, hearer().hear)
    expect([hands.length, hands[0]!.asked.map(({ ask }) => ask)]).toEqual([3, ['a']])
  })
})
