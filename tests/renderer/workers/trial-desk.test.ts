import { expect, test } from 'vitest'
import { BLOCK } from '../../../core/tolerance/monte-carlo.ts'
import { setupSureness, USUAL_TRIALS } from '../../../core/tolerance/steps.ts'
import type { SureAsk, SureReply } from '../../../renderer/state/sure.ts'
import { TrialDesk } from '../../../renderer/workers/trial-desk.ts'
import { seed } from '../../seeds/seed.ts'

const plan = { ...seed('before-and-after.stopgap'), loads: [] }
const setup = plan.setups[0]!
const axle = setup.axles[0]!.id
const ask: SureAsk = { plan: { ...plan, setups: [setup] }, axle, chosen: [] }

/** A desk whose pauses end when the test says so. */
function aDesk() {
  const said: SureReply[] = []
  const pauses: { ms: number; end: () => void }[] = []
  let now = 0
  const desk = new TrialDesk(
    reply => said.push(reply),
    ms => new Promise<void>(resolve => pauses.push({ ms, end: resolve })),
    () => now,
  )
  /** Ends the pause under way: time goes on by as much as it was asked to last, or by so much. */
  const goOn = async (ms = pauses.at(-1)!.ms): Promise<void> => {
    now += ms
    pauses.at(-1)!.end()
    await new Promise(resolve => setTimeout(resolve))
  }
  const ended = () => said.some(({ word }) => word.kind === 'done')
  return { desk, said, pauses, goOn, ended }
}

test('a pause follows each block of trials, and what is found is what a single run finds', {
  timeout: 60_000,
}, async () => {
  const { desk, said, pauses, goOn, ended } = aDesk()
  desk.take({ kind: 'trials', id: 1, ask })
  while (!ended()) await goOn()
  expect(pauses.length).toBe(USUAL_TRIALS / BLOCK)
  expect(said.at(-1)).toEqual({ id: 1, word: { kind: 'done', sureness: setupSureness(ask.plan, setup).axles[0] } })
})

test('another call, or none, takes the place of the one before after no more than the block under way', async () => {
  const { desk, said, pauses, goOn } = aDesk()
  desk.take({ kind: 'trials', id: 1, ask })
  expect(pauses.length).toBe(1)
  desk.take({ kind: 'trials', id: 2, ask: null })
  await goOn()
  expect([pauses.length, said]).toEqual([1, []])
})

test('while hands move it takes no block more, and goes on from there once they rest', async () => {
  const { desk, pauses, goOn } = aDesk()
  desk.take({ kind: 'trials', id: 1, ask })
  desk.take({ kind: 'hands' })
  await goOn()
  expect(pauses.map(({ ms }) => ms)).toEqual([0, 500])
  desk.take({ kind: 'hands' })
  await goOn(300)
  expect(pauses.map(({ ms }) => ms)).toEqual([0, 500, 200])
  await goOn()
  expect(pauses.map(({ ms }) => ms)).toEqual([0, 500, 200, 0])
})
