import type { Diagnosis } from '../../core/loads/diagnosis.ts'
import { ledgerSurenessSteps } from '../../core/tolerance/ledger-sureness.ts'
import { setupSurenessSteps, type TrialProgress } from '../../core/tolerance/steps.ts'
import type { SureAsk, SureCall, SureReply, SureWord } from '../state/sure.ts'
import { answerWhy, type WhyAsk } from '../state/why.ts'
import type { Question, Reply } from './messages.ts'

/** Steps between two words on how far it is. */
const EVERY = 4

const faultOf = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault))

/** The call worked on: another that comes in between two steps takes its place. */
let latest = 0

/** Lets whatever was posted meanwhile be heard. */
const heard = (): Promise<void> => new Promise(resolve => setTimeout(resolve))

/** Goes through all steps, telling how far it is; null when another call came in between. */
async function through<T>(steps: Generator<TrialProgress, T>, id: number): Promise<T | null> {
  for (let n = 1; latest === id; n += 1) {
    const { done, value } = steps.next()
    if (done) return value
    // A pause costs a few ms, so there is one for every two steps.
    if (n % 2 === 0) await heard()
    if (n % EVERY === 0 && latest === id) say(id, { kind: 'progress', share: value.done / value.of })
  }
  return null
}

const say = (id: number, word: SureWord): void => postMessage({ id, word } satisfies SureReply)

/** The trials of one axle, then of its ledger. */
async function trials({ plan, axle, chosen }: SureAsk, id: number): Promise<void> {
  try {
    const setup = plan.setups[0]!
    const found = await through(setupSurenessSteps(plan, setup, { axle }), id)
    if (found === null) return
    say(id, { kind: 'done', sureness: found.axles[0]! })
    if (plan.loads.length === 0) return
    const ledger = await through(ledgerSurenessSteps(plan, setup, chosen, { axle }), id)
    if (ledger !== null) say(id, { kind: 'ledger', ledger: ledger[0]! })
  } catch (fault) {
    say(id, { kind: 'fault', fault: faultOf(fault) })
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
addEventListener('message', ({ data }: MessageEvent<SureCall | Question<WhyAsk>>) => {
  if (!('kind' in data)) {
    why(data)
    return
  }
  latest = data.id
  if (data.ask !== null) void trials(data.ask, data.id)
})
