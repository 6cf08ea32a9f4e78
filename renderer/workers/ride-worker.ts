import type { Question, Reply, Ridden, RideAsk } from './messages.ts'
import { handedOver, ridden } from './ridden.ts'

/** What runs beside the page: takes a ride, works it out, sends it back. */
addEventListener('message', ({ data }: MessageEvent<Question<RideAsk>>) => {
  const { id, ask } = data
  try {
    const answer = ridden(ask)
    postMessage({ id, answer } satisfies Reply<Ridden>, { transfer: handedOver(answer) })
  } catch (fault) {
    postMessage({ id, fault: fault instanceof Error ? fault.message : String(fault) } satisfies Reply<Ridden>)
  }
})
