import type { Answer, Ask } from './messages.ts'
import { WorkerPool } from './pool.ts'

let known: WorkerPool<Ask, Answer> | null = null

/** The window's own: a worker for each core the machine says it has. */
export function ridePool(): WorkerPool<Ask, Answer> {
  known ??= new WorkerPool(
    () => new Worker(new URL('./ride-worker.ts', import.meta.url), { type: 'module', name: 'ride' }),
    Math.max(1, navigator.hardwareConcurrency),
  )
  return known
}

/** Has workers up before anybody asks for a ride, for a window that has nothing to do; one that cannot start is told of when it is asked. */
export function readyRides(): void {
  try {
    ridePool().warm(2)
  } catch {
    known = null
  }
}
