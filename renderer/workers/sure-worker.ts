import type { Diagnosis } from '../../core/loads/diagnosis.ts'
import { setupSurenessSteps } from '../../core/tolerance/steps.ts'
import type { SureAsk, SureWord } from '../state/sure.ts'
import { answerWhy, type WhyAsk } from '../state/why.ts'
import type { Question, Reply } from './messages.ts'

/** Blocks of trials between two words on how far it is. */
const EVERY = 4

const faultOf = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault))

const say = (word: SureWord): void => postMessage(word)

/** The trials of one axle. They are ended from outside when nobody waits for them any more. */
function trials({ plan, axle }: SureAsk): void {
  try {
    const steps = setupSurenessSteps(plan, plan.setups[0]!, { axle })
    for (let n = 1; ; n += 1) {
      const { done, value } = steps.next()
      if (done) {
        say({ kind: 'done', sureness: value.axles[0]! })
        return
      }
      if (n % EVERY === 0) say({ kind: 'progress', share: value.done / value.of })
    }
  } catch (fault) {
    say({ kind: 'fault', fault: faultOf(fault) })
  }
}

function why({ id, ask }: Question<WhyAsk>): void {
  try {
    postMessage({ id, answer: answerWhy(ask) } satisfies Reply<Diagnosis | null>)
  } catch (fault) {
    postMessage({ id, fault: faultOf(fault) } satisfies Reply<Diagnosis | null>)
  }
}

/** What runs beside the page: how sure an axle is, and why it is on its stop. */
addEventListener('message', ({ data }: MessageEvent<SureAsk | Question<WhyAsk>>) => {
  if ('id' in data) why(data)
  else trials(data)
})
