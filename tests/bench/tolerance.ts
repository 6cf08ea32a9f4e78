import { fileURLToPath } from 'node:url'
import { Worker } from 'node:worker_threads'
import { build } from 'vite'
import { axleBudget } from '../../core/budget/budget.ts'
import { unsaid } from '../../core/budget/findings/rule.ts'
import type { Axle } from '../../core/plan/schema.ts'
import { BLOCK, runBlock } from '../../core/tolerance/monte-carlo.ts'
import { USUAL_TRIALS } from '../../core/tolerance/steps.ts'
import { trialsOf, tryBlock } from '../../core/tolerance/trials.ts'
import type { Benchmark } from './benchmark.ts'
import { doubtful } from './doubtful-plan.ts'
import { timed } from './stopwatch.ts'

const axles = doubtful.setups[0]!.axles.map(axle => trialsOf(doubtful, axle))

/** The axles of the first block of trials, drawn beforehand, each a thing of its own. */
const drawn: readonly Axle[] = axles.flatMap(({ trial, seed }) => {
  const list: Axle[] = []
  runBlock(trial.variables, seed, 0, deviations => list.push(structuredClone(trial.put(deviations))))
  return list
})

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

/** All the usual trials, shared evenly; the best of a few rounds, for whatever else the machine does only ever makes one longer. */
async function trialsOn(workers: readonly Worker[]): Promise<number> {
  const blocks = Array.from({ length: USUAL_TRIALS / BLOCK }, (_, block) => block)
  const rounds: number[] = []
  for (let round = 0; round < 5; round += 1) {
    const started = process.hrtime.bigint()
    await Promise.all(
      workers.map((worker, i) =>
        finished(
          worker,
          blocks.filter(block => block % workers.length === i),
        ),
      ),
    )
    rounds.push(Number(process.hrtime.bigint() - started))
  }
  return Math.min(...rounds)
}

async function withTwoWorkers<T>(work: (workers: readonly [Worker, Worker]) => Promise<T>): Promise<T> {
  const program = await bundled()
  const workers = await Promise.all([ready(program), ready(program)])
  try {
    return await work(workers)
  } finally {
    await Promise.all(workers.map(worker => worker.terminate()))
  }
}

const usual = `${USUAL_TRIALS.toLocaleString('en-US')} trials of a two-axle plan`

/** How sure a plan is, against what it is worked out from. */
export const tolerance: readonly Benchmark[] = [
  {
    name: 'trials of a two-axle plan',
    reference: 'a bare loop of plain budgets, no sentences, over the same axles drawn beforehand',
    budget: 1.2,
    measure: () =>
      timed(
        () => axles.map(trials => tryBlock(trials, 0)),
        () => {
          for (const axle of drawn) axleBudget(axle, doubtful, undefined, unsaid)
        },
      ),
  },
  {
    name: `${usual} on two cores`,
    reference: 'one second',
    budget: 1,
    measure: () => withTwoWorkers(async workers => ({ unit: 'ns', value: await trialsOn(workers), reference: 1e9 })),
  },
  {
    name: `${usual}, two workers beside one`,
    reference: 'the time one worker takes; 1.8 times as fast is asked',
    budget: 1 / 1.8,
    measure: () =>
      withTwoWorkers(async ([one, other]) => ({
        unit: 'ns',
        value: await trialsOn([one, other]),
        reference: await trialsOn([one]),
      })),
  },
]
