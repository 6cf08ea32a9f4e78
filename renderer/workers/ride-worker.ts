import { answerTo, handedOver } from './answer.ts'
import type { Answer, Ask, Question, Reply } from './messages.ts'

/** What runs beside the page: takes a question about a ride, works it out, sends the answer back. */
addEventListener('message', ({ data }: MessageEvent<Question<Ask>>) => {
  const { id, ask } = data
  try {
    const answer = answerTo(ask)
    postMessage({ id, answer } satisfies Reply<Answer>, { transfer: handedOver(answer) })
  } catch (fault) {
    postMessage({ id, fault: fault instanceof Error ? fault.message : String(fault) } satisfies Reply<Answer>)
  }
})
