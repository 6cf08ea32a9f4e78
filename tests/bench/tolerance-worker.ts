import { parentPort } from 'node:worker_threads'
import { trialsOf, tryBlock } from '../../core/tolerance/trials.ts'
import { doubtful } from './doubtful-plan.ts'

const axles = doubtful.setups[0]!.axles.map(axle => trialsOf(doubtful, axle))

parentPort!.on('message', (blocks: readonly number[]) => {
  parentPort!.postMessage(blocks.flatMap(block => axles.map(trials => tryBlock(trials, block))))
})
