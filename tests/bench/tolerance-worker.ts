import { parentPort } from 'node:worker_threads'
import { trialsOf, tryBlock } from '../../core/tolerance/trials.ts'
import { doubtful } from './doubtful-plan.ts'

const axles = doubtful.setups[0]!.axles.map(axle => trialsOf(doubtful, axle))

parentPort!.on('message', (blocks: readonly number[]) => {
  const tried = blocks.flatMap(block => axles.map(trials => tryBlock(trials, block)))
  const lists = tried.flatMap(({ figures, regimes }) => [...figures, ...regimes.map(({ of }) => of)])
  parentPort!.postMessage(tried, [...new Set(lists.map(({ buffer }) => buffer as ArrayBuffer))])
})
