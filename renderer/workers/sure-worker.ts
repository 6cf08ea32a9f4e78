import type { Diagnosis } from '../../core/loads/diagnosis.ts'
import { ledgerSurenessSteps } from '../../core/tolerance/ledger-sureness.ts'
import { setupSurenessSteps, type TrialProgress } from '../../core/tolerance/steps.ts'
import type { SureAsk, SureWord } from '../state/sure.ts'
import { answerWhy, type WhyAsk } from '../state/why.ts'
import type { Question, Reply } from './messages.ts'

/** Blocks of trials between two words on how far it is. */
const EVERY = 4

const faultOf = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault))

const say = (word: SureWord): void => postMessage(word)

/** Goes through all steps, telling how far it is. */
function through<T>(steps: Generator<TrialProgress, T>, every: number): T {
  for (let n = 1; ; n += 1) {
    const { done, value } = steps.next()
    if (done) return value
    if (n % every === 0) say({ kind: 'progress', share: value.done / value.of })
  }
}

/** The trials of one axle, then of its ledger. They are ended from outside when nobody waits for them any more. */
function trials({ plan, axle, chosen }: SureAsk): void {
  try {
    const setup = plan.setups[0]!
    say({ kind: 'done', sureness: through(setupSurenessSteps(plan, setup, { axle }), EVERY).axles[0]! })
    if (plan.loads.length === 0) return
    say({ kind: 'ledger', ledger: through(ledgerSurenessSteps(plan, setup, chosen, { axle }), 1)[0]! })
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
