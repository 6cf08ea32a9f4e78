import type { Diagnosis } from '../../core/loads/diagnosis.ts'
import type { WhyAsk } from '../state/why.ts'
import { WorkerPool } from './pool.ts'

let known: WorkerPool<WhyAsk, Diagnosis | null> | null = null

/** One worker for the whole window, started at the first question. */
export function whyPool(): WorkerPool<WhyAsk, Diagnosis | null> {
  known ??= new WorkerPool(
    () => new Worker(new URL('./sure-worker.ts', import.meta.url), { type: 'module', name: 'why' }),
    1,
  )
  return known
}
