import type { Answer, Ask } from './messages.ts'
import { WorkerPool } from './pool.ts'

/** A worker for each core the machine says it has. */
export const ridePool = (): WorkerPool<Ask, Answer> =>
  new WorkerPool(
    () => new Worker(new URL('./ride-worker.ts', import.meta.url), { type: 'module', name: 'ride' }),
    Math.max(1, navigator.hardwareConcurrency),
  )
