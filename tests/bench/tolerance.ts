import { fileURLToPath } from 'node:url'
import { Worker } from 'node:worker_threads'
import { build } from 'vite'
import { planBudget } from '../../core/budget/budget.ts'
import { BLOCK } from '../../core/tolerance/monte-carlo.ts'
import { USUAL_TRIALS } from '../../core/tolerance/steps.ts'
import { trialsOf, tryBlock } from '../../core/tolerance/trials.ts'
import type { Benchmark } from './benchmark.ts'
import { doubtful } from './doubtful-plan.ts'
import { timed } from './stopwatch.ts'

const axles = doubtful.setups[0]!.axles.map(axle => trialsOf(doubtful, axle))

/** The worker's program as it would be shipped: one file. */
async function bundled(): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      minify: false,
      target: 'node20',
      ssr: fileURLToPath(new URL('./tolerance-worker.ts', import.meta.url)),
      rollupOptions: { output: { format: 'cjs' } },
    },
  })
  if (!('output' in built)) throw new Error('The worker of the trials was not built as one file.')
  return built.output[0].code
}

/** A worker that is up and has warmed to the work. */
async function ready(program: string): Promise<Worker> {
  const worker = new Worker(program, { eval: true })
  await finished(worker, [0, 1, 2, 3])
  return worker
}

const finished = (worker: Worker, blocks: readonly number[]): Promise<void> =>
  new Promise((resolve, reject) => {
    worker.once('error', reject)
    worker.once('message', () => {
      worker.off('error', reject)
      resolve()
    })
    worker.postMessage(blocks)
  })

/** How sure a plan is, against what it is worked out from. */
export const tolerance: readonly Benchmark[] = [
  {
    name: 'trials of a two-axle plan',
    reference: 'as many plain travel budgets in a loop',
    budget: 1.2,
    measure: () =>
      timed(
        () => axles.map(trials => tryBlock(trials, 0)),
        () => {
          for (let i = 0; i < BLOCK; i += 1) planBudget(doubtful)
        },
      ),
  },
  {
    name: `${USUAL_TRIALS.toLocaleString('en-US')} trials of a two-axle plan on two cores`,
    reference: 'one second',
    budget: 1,
    measure: async () => {
      const program = await bundled()
      const workers = await Promise.all([ready(program), ready(program)])
      const blocks = Array.from({ length: USUAL_TRIALS / BLOCK }, (_, block) => block)
      const share = (i: number): number[] => blocks.filter(block => block % workers.length === i)
      const rounds: number[] = []
      // The best of a few: whatever else the machine does only ever makes a round longer.
      for (let round = 0; round < 5; round += 1) {
        const started = process.hrtime.bigint()
        await Promise.all(workers.map((worker, i) => finished(worker, share(i))))
        rounds.push(Number(process.hrtime.bigint() - started))
      }
      await Promise.all(workers.map(worker => worker.terminate()))
      return { unit: 'ns', value: Math.min(...rounds), reference: 1e9 }
    },
  },
]
