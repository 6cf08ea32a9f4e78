import { isRunning } from '../services/is-running.ts'

const everySecond = 1000

export interface Interruption {
  /** Settles when the person or the system asks the program to end, or whoever started it is gone. */
  promise: Promise<void>
  happened(): boolean
}

/**
 * Input that is closed is no interruption. A starter that was killed is one: npm and its shell pass no signal on when they are,
 * and a program nobody sees any more would stay.
 */
export function interruption(): Interruption {
  let happened = false
  const parent = process.ppid
  const promise = new Promise<void>(resolve => {
    const end = () => {
      happened = true
      clearInterval(watch)
      resolve()
    }
    const watch = setInterval(() => {
      if (process.ppid !== parent || !isRunning(parent)) end()
    }, everySecond)
    watch.unref()
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, end)
  })
  return { promise, happened: () => happened }
}
