import type { Diagnosis } from '../../core/loads/diagnosis.ts'
import type { SureCall } from '../state/sure.ts'
import { answerWhy, type WhyAsk } from '../state/why.ts'
import type { Question, Reply } from './messages.ts'
import { faultOf, TrialDesk } from './trial-desk.ts'

const desk = new TrialDesk(
  reply => postMessage(reply),
  ms => new Promise(resolve => setTimeout(resolve, ms)),
  () => performance.now(),
)

function why({ id, ask }: Question<WhyAsk>): void {
  try {
    postMessage({ id, answer: answerWhy(ask) } satisfies Reply<Diagnosis | null>)
  } catch (fault) {
    postMessage({ id, fault: faultOf(fault) } satisfies Reply<Diagnosis | null>)
  }
}

/** What runs beside the page: how sure an axle is, and why it is on its stop. */
addEventListener('message', ({ data }: MessageEvent<SureCall | Question<WhyAsk>>) => {
  if ('kind' in data) desk.take(data)
  else why(data)
})
