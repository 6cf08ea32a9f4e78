import { fileURLToPath } from 'node:url'
import { Worker } from 'node:worker_threads'
import { build } from 'vite'
import type { Sample } from './benchmark.ts'

/** A worker's program as it would be shipped: one file. */
async function bundled(source: URL): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    build: {
      write: false,
      minify: false,
      target: 'node20',
      ssr: fileURLToPath(source),
      rollupOptions: { output: { format: 'cjs' } },
    },
  })
  if (!('output' in built)) throw new Error(`${source.pathname} was not built as one file.`)
  return built.output[0].code
}

const done = (worker: Worker, job: unknown): Promise<void> =>
  new Promise((resolve, reject) => {
    worker.once('error', reject)
    worker.once('message', () => {
      worker.off('error', reject)
      resolve()
    })
    worker.postMessage(job)
  })

const ROUNDS = 7

/** All jobs, each worker taking the next one when it has done its last, ns. */
async function once(workers: readonly Worker[], jobs: readonly unknown[]): Promise<number> {
  const waiting = [...jobs]
  const started = process.hrtime.bigint()
  await Promise.all(
    workers.map(async worker => {
      for (let job = waiting.shift(); job !== undefined; job = waiting.shift()) await done(worker, job)
    }),
  )
  return Number(process.hrtime.bigint() - started)
}

/** The best of a few rounds, for whatever else the machine does only adds. */
export async function sharedAmong(workers: readonly Worker[], jobs: readonly unknown[]): Promise<number> {
  let best = Infinity
  for (let round = 0; round < ROUNDS; round += 1) best = Math.min(best, await once(workers, jobs))
  return best
}

/** Two workers that are up and have warmed to the work. @param source of their program; @param jobs to warm to */
export async function withTwoWorkers<T>(
  source: URL,
  jobs: readonly unknown[],
  work: (workers: readonly [Worker, Worker]) => Promise<T>,
): Promise<T> {
  const program = await bundled(source)
  const ready = async (): Promise<Worker> => {
    const worker = new Worker(program, { eval: true })
    for (const job of jobs) await done(worker, job)
    return worker
  }
  const workers = await Promise.all([ready(), ready()])
  try {
    return await work(workers)
  } finally {
    await Promise.all(workers.map(worker => worker.terminate()))
  }
}

/** The same jobs by two workers and by one of them, in turn, so that whatever else the machine does falls on both. */
export const twoBesideOne = (source: URL, warming: readonly unknown[], jobs: readonly unknown[]): Promise<Sample> =>
  withTwoWorkers(source, warming, async ([one, other]) => {
    let [value, reference] = [Infinity, Infinity]
    for (let round = 0; round < ROUNDS; round += 1) {
      value = Math.min(value, await once([one, other], jobs))
      reference = Math.min(reference, await once([one], jobs))
    }
    return { unit: 'ns', value, reference }
  })
